// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/record/quotation.hpp>

namespace seatload::cli {

/// For people, in lines of at most `width` columns.
std::string quotes_text(const record::Comparison& all, int width);

/// For programs: amounts are texts, rounded as they are shown; what is not known is null.
nlohmann::ordered_json quotes_json(const record::Comparison& all, const std::string& file);

}  // namespace seatload::cli
