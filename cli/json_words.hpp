// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <string>

#include <nlohmann/json.hpp>

namespace seatload::cli {

/// The number; null when it is no number or has no bound.
inline nlohmann::ordered_json finite_or_null(double value) {
    return std::isfinite(value) ? nlohmann::ordered_json(value) : nlohmann::ordered_json();
}

/// The text; null when nothing is said.
inline nlohmann::ordered_json text_or_null(const std::string& words) {
    return words.empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(words);
}

}  // namespace seatload::cli
