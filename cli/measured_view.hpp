// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/check/evaluation.hpp>
#include <seatload/record/measured.hpp>

namespace seatload::cli {

/// What the bench found beside what is reckoned from the dimensions, in lines of at most `width` columns.
std::string measured_text(const record::Measured& measured, const check::Evaluation& evaluation, int width);

/// The same for programs.
nlohmann::ordered_json measured_json(const record::Measured& measured, const check::Evaluation& evaluation);

}  // namespace seatload::cli
