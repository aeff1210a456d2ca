// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/check/lean_bounds.hpp>
#include <seatload/check/tips.hpp>
#include <seatload/check/verdict.hpp>
#include <seatload/core/result.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::check {

/// A spring at one length.
struct AtLength {
    Length length;
    Length deflection;
    Force load;                      ///< cold and new
    Force load_in_service;           ///< at temperature, after load loss
    Stress stress;                   ///< uncorrected, cold
    Stress corrected_stress;         ///< with the Bergstraesser factor k
    double share_of_strength = 0.0;  ///< uncorrected stress over Rm
};

/// Transverse stiffness at full travel on seats that slide.
struct Sideways {
    Length play;                    ///< s_Q looked at
    std::optional<Rate> stiffness;  ///< R_Q; nothing once the spring pushes itself sideways
    Stress combined_stress;  ///< at full travel with the play taken up; the plain stress when there is no stiffness
};

/// Everything worked out for one spring.
struct Evaluation {
    spring::Spring spring;
    wire::StrengthAt strength;
    wire::Moduli moduli;
    double index = 0.0;
    double active_coils = 0.0;
    double stress_factor = 0.0;  ///< k, Bergstraesser
    Rate rate;                   ///< cold
    Rate rate_hot;
    Length pitch;
    Angle helix_angle;
    Length wire_length;
    Mass mass;
    Length solid_length;
    Length smallest_gaps;    ///< Sa, by EN 13906-1 whatever the limits' rule
    Length smallest_length;  ///< Ln, by that rule
    AtLength at_smallest_length;
    AtLength at_solid;  ///< theoretical
    std::optional<AtLength> seated;
    std::optional<AtLength> full_travel;
    Length growth_ends_free;  ///< of the outside diameter, at solid length
    Length growth_ends_held;
    double seating_coefficient = 0.0;
    double stable_slenderness = 0.0;            ///< L0/D below which it never buckles
    std::optional<Length> buckling_deflection;  ///< nothing: it never buckles
    std::optional<Sideways> sideways;           ///< on sliding seats
    std::optional<Tips> tips;                   ///< of a spring half a turn over, on sliding seats
    std::optional<LeanBounds> lean_bounds;      ///< on sliding seats: how long it may be
    Frequency natural_frequency;
    double load_loss = 0.0;  ///< share counted on
    std::vector<Verdict> verdicts;

    bool fits() const { return all_pass(verdicts); }
};

/// Evaluates a spring against a requirement (its loads, space and limits; `has_heights` false leaves out what needs the
/// two heights). Errors: the grade has no strength at that wire diameter (the range is named), or the load loss at the
/// required temperature is not known.
Result<Evaluation> evaluate(const spring::Spring& spring, const wire::Grade& grade,
                            const demand::Requirement& requirement, const tolerance::Tables& tables,
                            bool has_heights = true);

}  // namespace seatload::check
