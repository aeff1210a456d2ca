// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <elements/helix_mesh.hpp>

namespace seatload::test::elements {

/// A demo requirement's best spring, as active coils, and where it stands.
struct DemoSpring {
    std::string requirement;
    ActiveCoils coils;
    double full_deflection_mm = 0.0;
};

/// The best alternatives of the demo requirements of both latches and of the relief valve, found anew.
const std::vector<DemoSpring>& demo_springs();

/// The same wire wound to the same diameter and pitch, with other active coils.
ActiveCoils with_coils(ActiveCoils coils, double n);

}  // namespace seatload::test::elements
