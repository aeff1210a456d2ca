// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace seatload::wire {

/// How far a value can be trusted; it travels with the value to every report.
enum class Evidence {
    standard,  ///< seen on an openly readable page that reproduces the standard or handbook
    fit,       ///< a law fitted to rows that were seen
    memory,    ///< recalled, not seen
    estimate,  ///< recalled only in outline and filled in by judgement
    given,     ///< stated by the user
};

/// The word used in files and reports.
constexpr std::string_view word(Evidence evidence) {
    switch (evidence) {
        case Evidence::standard:
            return "standard seen";
        case Evidence::fit:
            return "fit";
        case Evidence::memory:
            return "memory";
        case Evidence::estimate:
            return "estimate";
        case Evidence::given:
            return "given";
    }
    return "given";
}

/// The less trustworthy of two (given counts as trustworthy: it is the user's own).
constexpr Evidence weaker(Evidence a, Evidence b) {
    const auto rank = [](Evidence e) { return e == Evidence::given ? 0 : 1 + static_cast<int>(e); };
    return rank(a) < rank(b) ? b : a;
}

}  // namespace seatload::wire
