// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/check/evaluation.hpp>
#include <seatload/demand/requirement.hpp>
#include <seatload/record/measured.hpp>

namespace seatload::record {

/// What a measurement says of a limit, its uncertainty counted.
enum class Proof {
    kept,    ///< the value lies inside by its uncertainty or more
    unsure,  ///< it lies nearer to the limit than its uncertainty
    broken,  ///< it lies beyond by more than its uncertainty
};

/// A measured load held against one end of a wanted band.
struct MeasuredVerdict {
    std::string name;           ///< "seated load as measured, cold"
    bench::Stated<Force> load;  ///< for a lower end: with the share taken off that heat and load loss cost
    Force limit;
    check::Sense sense = check::Sense::at_least;
    Proof proof = Proof::unsure;
};

/// The measured loads against the bands of a requirement, as far as loads were measured there, or at another height and
/// with a rate (uncertainties of both then added up). What heat and load loss cost is taken from the evaluation, as a
/// share of the load. The guard band is the expanded uncertainty, on both sides of the limit (in the style of ISO
/// 14253-1; that edition's own factor is known from memory only).
std::vector<MeasuredVerdict> judge_measured(const Measured& measured, const check::Evaluation& evaluation,
                                            const demand::Requirement& requirement);

}  // namespace seatload::record
