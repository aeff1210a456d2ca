// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/numbers.hpp>
#include <seatload/tolerance/made_influence.hpp>
#include <seatload/tolerance/made_springs.hpp>

namespace seatload::sizing {

/// EN 15800 grades a spring is ordered to.
struct ToleranceGrades {
    int load = 2;      ///< of the loads and, with them, free length and coils
    int diameter = 2;  ///< of De or Di
    /// A load is ordered tighter than grade 1, which they are then counted at: the maker sorts out the rest.
    bool is_load_tighter = false;

    bool operator==(const ToleranceGrades&) const = default;
};

// Nothing states how much of a tolerance a lot's pieces use up, nor a tolerance of the coils where loads are ordered;
// these are estimates. So chosen, coil diameter, coils and free length together come to about nine tenths of the load
// tolerance EN 15800 gives the same grade, which is what a maker is held to; a test looks at it.

/// Share of the coil diameter's tolerance used up from piece to piece; the rest is the lot's mean.
inline constexpr double kWithinLotDiameter = 0.5;
/// Coils that springs of many lots may be off, plus-minus: JIS B 2707 where no load is ordered (seen). For other grades
/// than 2 scaled as EN 15800 scales its load tolerance.
inline constexpr double kCoilsOff = 0.25;
/// Share of it from piece to piece within a lot.
inline constexpr double kWithinLotCoils = 0.5;

/// Share of what the end tips may be off half a turn that is used up from piece to piece; the rest is the lot's, whose
/// coils the maker sets to bring its loads in.
inline constexpr double kWithinLotTips = 0.5;

/// Tolerance of the coils of springs of many lots, plus-minus.
double coils_tolerance(double active_coils, int load_grade);

/// How far springs of a coil stray when made to grades. Free length: EN 15800's tolerance of it, all of it from piece
/// to piece, since the part of a load tolerance that does not grow with the load is this one times the rate. Modulus:
/// tolerance::modulus_spread(). Wire: its own tolerance.
tolerance::MadeAllowance made_allowance(const check::Coil& coil, wire::Family family, const tolerance::Tables& tables,
                                        ToleranceGrades grades);

/// The same for each dimension of springs of many lots that nobody has brought in.
tolerance::InfluenceAllowance unadjusted_allowance(double active_coils, const tolerance::MadeAllowance& made,
                                                   ToleranceGrades grades);

/// The order a maker gets for a coil: loads he brings the lot's means to [N], and on a sliding seat the coils he must
/// keep half a turn over a whole number, as nearly as the sheet has the end tips.
tolerance::MadeOrder made_order(const check::Coil& coil, double free_length_mm, bool outside_rules,
                                const std::array<double, 2>& loads_n);

}  // namespace seatload::sizing
