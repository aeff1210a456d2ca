// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include <seatload/wire/evidence.hpp>

namespace seatload::sheet {

/// How far a line of a calculation can be trusted, from firm to weak.
enum class Trust {
    given,     ///< stated by the user
    derived,   ///< follows from geometry or statics, and anyone can check it
    seen,      ///< seen on an openly readable page that reproduces the standard or handbook
    fit,       ///< a law fitted to rows that were seen
    memory,    ///< recalled, not seen
    estimate,  ///< recalled only in outline and filled in by judgement
};

/// The word printed.
constexpr std::string_view word(Trust trust) {
    switch (trust) {
        case Trust::given:
            return "given";
        case Trust::derived:
            return "derived";
        case Trust::seen:
            return "seen";
        case Trust::fit:
            return "fit";
        case Trust::memory:
            return "memory";
        case Trust::estimate:
            return "estimate";
    }
    return "estimate";
}

constexpr Trust weaker(Trust a, Trust b) { return a < b ? b : a; }

constexpr Trust trust(wire::Evidence evidence) {
    switch (evidence) {
        case wire::Evidence::standard:
            return Trust::seen;
        case wire::Evidence::fit:
            return Trust::fit;
        case wire::Evidence::memory:
            return Trust::memory;
        case wire::Evidence::estimate:
            return Trust::estimate;
        case wire::Evidence::given:
            return Trust::given;
    }
    return Trust::estimate;
}

}  // namespace seatload::sheet
