// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/requirement.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/lean.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

// The plain numbers the rules run on: mm, N, MPa, t, s. Worked out once for a requirement, once for a wire, once for a
// coil; what is left depends on the free length alone, which is what lets the search solve for it.

namespace seatload::check {

/// A requirement in plain numbers.
struct DemandNumbers {
    demand::Limits limits;
    bool has_heights = true;
    double seated_height_mm = 0.0;
    double full_travel_height_mm = 0.0;
    std::optional<double> bore_smallest_mm, bore_largest_mm, rod_largest_mm;
    std::optional<double> shortest_mm, longest_mm;
    std::optional<double> seated_at_least_n, seated_at_most_n, full_at_least_n, full_at_most_n;
    double temperature_c = 20.0;
    bool guided = false;
    bool slides = false;
    double seating_coefficient = 0.5;
    std::optional<double> sideways_play_mm;
    bool dynamic = false;
    std::optional<double> frequency_hz;
    spring::EnduranceStress<double> endurance_mpa{};
    int load_grade = 2;
    bool release_counts = false;  ///< something must push the spring back: the less it gives at full travel the better
    demand::Preference preference;  ///< by which springs that fit are ranked
};

DemandNumbers numbers(const demand::Requirement& requirement);

/// The seating coefficient nu of a way of holding the ends (EN 13906-1 cl. 9.14; the pairing from memory).
double seating_coefficient(demand::Seats seats);

/// A grade at a diameter in plain numbers, under a requirement's temperature and limits.
struct WireNumbers {
    double d_mm = 0.0;
    double d_tolerance_mm = 0.0;
    double shear_modulus_mpa = 0.0;
    double young_modulus_mpa = 0.0;
    double density_t_mm3 = 0.0;
    double tensile_strength_mpa = 0.0;
    double hot_share = 1.0;  ///< G at temperature over G at 20 deg C
    double load_kept = 1.0;  ///< share of the load left after load loss
    double permissible_stress_mpa = 0.0;
    double service_limit_c = 0.0;
    double modulus_spread = 0.0;  ///< plus-minus, a share of G, from coil of wire to coil of wire (an estimate)
    bool has_endurance = true;    ///< the endurance values hold for this wire (steel, below 10 mm)
    bool static_duty_only = false;
    std::optional<double> relative_cost;
};

/// Nothing when the grade has no strength at that diameter, or its load loss at the temperature is not known.
std::optional<WireNumbers> numbers(const wire::Grade& grade, Length diameter, const demand::Requirement& requirement);

/// Whether the endurance values hold for wire so thick: for steel below 10 mm (Zimmerli).
bool has_endurance(const wire::Grade& grade, double wire_diameter_mm);

/// The share of Rm permitted as static stress, before the safety is divided out.
double permissible_share(const wire::Grade& grade, const demand::Limits& limits);

/// A number of coils with one kind of ends: what can be worked out before the wire is chosen.
struct Turns {
    Turns(const DemandNumbers& demand, spring::Ends ends, double total_coils);

    double total;
    double active;
    spring::TurnsLean lean{};  ///< where a seat slides
};

/// A coil body before its free length is chosen.
struct Coil {
    Coil(const DemandNumbers& demand, const WireNumbers& wire, const tolerance::Tables& tables, double mean_diameter_mm,
         spring::Ends ends, double total_coils);
    Coil(const DemandNumbers& demand, const WireNumbers& wire, const tolerance::Tables& tables, double mean_diameter_mm,
         spring::Ends ends, const Turns& turns);
    /// The same coil with another number of coils; what depends on the diameters alone is kept.
    void set_total_coils(double total_coils);
    void set_turns(const Turns& turns);

    const DemandNumbers& demand;
    const WireNumbers& wire;
    spring::Ends ends;
    double D_mm;
    double index;
    double diameter_tolerance_mm;  ///< plus-minus on De or Di (EN 15800), 0 outside the table
    double stress_per_newton_mpa;  ///< uncorrected
    double stress_factor;          ///< of the static check
    double total_coils = 0.0;
    double active_coils = 0.0;
    double rate_n_mm = 0.0;  ///< cold
    double solid_length_mm = 0.0;
    double gap_mm = 0.0;           ///< Sa, with its dynamic factor
    spring::TurnsLean turns_lean;  ///< where a seat slides

    double outside_mm() const { return D_mm + wire.d_mm; }
    double cold_load_n(double free_length_mm, double length_mm) const {
        return rate_n_mm * (free_length_mm - length_mm);
    }
    double hot_load_n(double free_length_mm, double length_mm) const {
        return cold_load_n(free_length_mm, length_mm) * wire.hot_share * wire.load_kept;
    }
};

}  // namespace seatload::check
