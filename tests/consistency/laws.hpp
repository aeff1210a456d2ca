// SPDX-License-Identifier: MIT
#pragma once

#include "consistency/designs.hpp"
#include "support/check.hpp"

namespace seatload::consistency {

constexpr double kRounding = 1e-12;  ///< a dozen operations on doubles

/// Runs a law on every design of the grid; a failure names the design.
template <class Law>
void for_each_design(Law law) {
    REQUIRE(designs().size() == 4 * 5 * 5 * 3 * 4);
    for (const Design& x : designs()) {
        INFO("d " << x.d_mm << " D " << x.D_mm << " n " << x.n << " pitch " << x.pitch_mm << " G " << x.G_mpa << " E "
                  << x.E_mpa);
        law(x);
    }
}

}  // namespace seatload::consistency
