// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/check/rule.hpp>

namespace seatload::check {

/// What one rule says of one spring.
struct Verdict {
    const Rule* rule = nullptr;
    Measure measure;
    double margin = 0.0;  ///< share of the limit left, negative when it is broken
    bool passed = false;
    std::string source;  ///< of the limit: the rule's, or the maker who sets it
    std::string reason;  ///< "seated load, cold and new: 6.61 N, at most 6.50 N"
};

/// The verdict of every rule in play, in the order of the table.
std::vector<Verdict> verdicts(const Coil& coil, double free_length_mm);

bool all_pass(const std::vector<Verdict>& verdicts);

/// Where a rule's limit is from: the maker who sets it, or what the rule itself names.
std::string source_of(const Rule& rule, const demand::Limits& limits);

/// What a rule holds its value to: "at most 6.5 N", "no".
std::string bound_in_words(const Rule& rule, double limit);

/// A value and its unit to four significant digits, "beyond reach" when nothing can bring it about; "yes" or
/// "no" of what is so or not.
std::string shown(double value, std::string_view unit);

}  // namespace seatload::check
