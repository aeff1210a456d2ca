// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/bench/groups.hpp>
#include <seatload/bench/measured.hpp>
#include <seatload/bench/straight_stretch.hpp>

namespace seatload::bench {

/// Share of its rate that spring steel loses a kelvin [1/K]; memory: 0.25e-3 for unalloyed steel.
inline constexpr double kRateLossPerKelvin = 0.25e-3;

/// What is needed to say how sure the line is.
struct LineBasis {
    const Readings& session;
    const SpringRun& run;
    const std::vector<Group>& groups;  ///< loading, all
    const Stretch& stretch;
    std::optional<Repeatability> repeatability;
};

/// The line with every source of doubt: errors of single readings as variances, errors they share as shifts. Where
/// chi-square is too large for chance, the scatter beyond what was stated is a source of its own.
Line line_with_doubt(const LineBasis& basis, Straightness straightness);

/// Whether the scatter about the line is what the uncertainties let one expect. Judged at 1 % each side.
ChiSquare judge(const LineFit& fit);

}  // namespace seatload::bench
