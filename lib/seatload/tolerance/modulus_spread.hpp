// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/wire/grade.hpp>

namespace seatload::tolerance {

/// How far the shear modulus of a coil of wire may lie from the value of its kind, plus-minus, as a share: half of the
/// range of the values published for the kind. No standard states a tolerance of G, so that this is an estimate; the
/// values (GPa) are those gathered with the wire data:
/// cold-drawn carbon 80.0 to 82.7 (ASTM A228 by size, Shigley Table 10-5; EN 10270-1 has 81.5 for all);
/// oil-tempered 77.2 (ASTM A229 to A401, Shigley) to 79.5 (EN 13906-1, memory);
/// austenitic stainless 69 (302, Machinery's Handbook) to 73 (1.4310 heat-treated, a spring maker's page);
/// precipitation hardening stainless 72.4 (Machinery's Handbook) to 78 (1.4568 aged, wire mill);
/// tin bronze, Young's modulus 103 (Machinery's Handbook) to 110 (mills), G taken to follow it;
/// nickel alloy X-750 72.4 to 82.7.
constexpr double modulus_spread(wire::Family family) {
    const auto half_range = [](double low, double high) { return (high - low) / (high + low); };
    switch (family) {
        case wire::Family::cold_drawn_carbon:
            return half_range(80.0, 82.7);
        case wire::Family::oil_tempered:
            return half_range(77.2, 79.5);
        case wire::Family::austenitic_stainless:
            return half_range(69.0, 73.0);
        case wire::Family::precipitation_stainless:
            return half_range(72.4, 78.0);
        case wire::Family::copper_alloy:
            return half_range(103.0, 110.0);
        case wire::Family::nickel_alloy:
            return half_range(72.4, 82.7);
    }
    return half_range(72.4, 82.7);
}

}  // namespace seatload::tolerance
