// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/bench/estimate.hpp>
#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// How much the load path gives way [mm/N] and its standard uncertainty; zero when it is taken as rigid.
struct Compliance {
    double value = 0.0;
    double standard = 0.0;
};

/// From the stated stiffness, or from the line through the run on a rigid block; never negative. The uncertainty of a
/// run holds the scatter of its points, enlarged where that is more than the instruments explain, and the scale's span.
Compliance compliance_of(const Readings& session);

/// Stiffness of the load path [N/mm] as corrections use it; nothing when it is taken as rigid, or gives way so little
/// that the run cannot tell it from rigid.
std::optional<Estimate<Rate>> load_path_stiffness(const Readings& session);

}  // namespace seatload::bench
