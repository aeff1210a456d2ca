// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/sizing/shortfall.hpp>

namespace seatload::cli {

/// Why nothing fits, for people: the limits that contradict each other, and the changes that let a spring in, each with
/// that spring. Paragraphs of lines of at most `width` columns, each with an empty line before it.
std::string shortfall_text(const demand::Requirement& requirement, const sizing::Shortfall& shortfall, int width);

/// The same for programs.
nlohmann::ordered_json shortfall_json(const sizing::Shortfall& shortfall);

}  // namespace seatload::cli
