// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace seatload::spring {

/// How the ends of a cold-coiled compression spring are made.
enum class Ends { open, open_ground, closed, closed_ground };

/// Which way the coil winds, seen from either end.
enum class Hand { right, left };

/// Which rules are followed where the schools differ.
enum class School { en_13906, handbook };

inline constexpr std::array kAllEnds{Ends::open, Ends::open_ground, Ends::closed, Ends::closed_ground};

/// The trade's words, as in files and on sheets.
constexpr std::string_view word(Ends ends) {
    switch (ends) {
        case Ends::open:
            return "open";
        case Ends::open_ground:
            return "open and ground";
        case Ends::closed:
            return "closed";
        case Ends::closed_ground:
            return "closed and ground";
    }
    return "open";
}
constexpr std::string_view word(Hand hand) { return hand == Hand::right ? "right" : "left"; }
constexpr std::string_view word(School school) { return school == School::en_13906 ? "EN 13906-1" : "handbook"; }

constexpr bool are_ground(Ends ends) { return ends == Ends::open_ground || ends == Ends::closed_ground; }
constexpr bool are_closed(Ends ends) { return ends == Ends::closed || ends == Ends::closed_ground; }

}  // namespace seatload::spring
