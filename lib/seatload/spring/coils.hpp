// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/spring/ends.hpp>

namespace seatload::spring {

/// Coils that do not deflect, of a cold-coiled spring: 2 with closed ends (EN 13906-1 cl. 9.8), 0 open and 1 open and
/// ground (Shigley Table 10-1; some textbooks count 0.5 for the last).
constexpr double dead_coils(Ends ends) {
    switch (ends) {
        case Ends::open:
            return 0.0;
        case Ends::open_ground:
            return 1.0;
        case Ends::closed:
        case Ends::closed_ground:
            return 2.0;
    }
    return 2.0;
}

/// Active coils n out of total coils nt.
constexpr double active_coils(Ends ends, double total_coils) { return total_coils - dead_coils(ends); }

/// Solid length as a multiple of the wire diameter, textbook form (Shigley Table 10-1): nt ground, nt + 1 not ground.
constexpr double textbook_solid_wires(Ends ends, double total_coils) {
    return are_ground(ends) ? total_coils : total_coils + 1.0;
}

/// Largest solid length as a multiple of dmax, EN 13906-1 cl. 9.10: nt closed and ground, nt + 1.5 closed.
/// The standard has no open ends; those follow the textbook form.
constexpr double en_solid_wires(Ends ends, double total_coils) {
    return ends == Ends::closed ? total_coils + 1.5 : textbook_solid_wires(ends, total_coils);
}

/// Largest solid length of a hot-coiled spring as a multiple of dmax, EN 13906-1 cl. 9.10 (1.5 dead coils).
constexpr double hot_coiled_solid_wires(bool ground, double total_coils) {
    return ground ? total_coils - 0.3 : total_coils + 1.1;
}

/// Length taken by the ends beyond n pitches, as a multiple of d: L0 = p n + this d (Shigley Table 10-1).
/// With open and ground ends the dead coil has the pitch too, so that L0 = p (n + 1).
constexpr double end_wires(Ends ends) {
    switch (ends) {
        case Ends::open:
            return 1.0;
        case Ends::open_ground:
            return 0.0;
        case Ends::closed:
            return 3.0;
        case Ends::closed_ground:
            return 2.0;
    }
    return 2.0;
}

}  // namespace seatload::spring
