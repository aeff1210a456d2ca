// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/check/rule.hpp>
#include <seatload/sizing/shortfall.hpp>

namespace seatload::cli {

/// Why nothing fits, for people: the limits that contradict each other, and the changes that let a spring in, each with
/// that spring. Paragraphs of lines of at most `width` columns, each with an empty line before it.
std::string shortfall_text(const demand::Requirement& requirement, const sizing::Shortfall& shortfall, int width);

/// A limit in a few words, with its number when the mechanism sets it: "seated load at least 4.8 N".
std::string limit_words(const check::Rule& rule, const demand::Requirement& requirement);

/// The text with a capital first letter.
std::string capitalized(std::string words);

/// The same for programs.
nlohmann::ordered_json shortfall_json(const sizing::Shortfall& shortfall);

}  // namespace seatload::cli
