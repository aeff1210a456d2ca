// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>

#include <seatload/spring/ends.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::demand {

/// Length at which a static stress is judged.
enum class StressLength { solid, smallest_permissible, full_travel };

/// Curvature factor in a static stress.
enum class StressFactor { none, bergstraesser, wahl };

/// How the room left above solid length is asked for.
enum class GapRule { en_sa, share_of_travel };

/// How solid length is worked out from the coils.
enum class SolidForm { en, textbook };

/// How far the coil is taken to widen when compressed.
enum class GrowthForm { ends_free, ends_held };

/// Which line joins the Zimmerli points.
enum class FatigueLine { goodman, gerber, sines };

/// Every limit a spring is judged by. A school sets the defaults; each may be overridden alone.
/// Bounds are inclusive.
struct Limits {
    spring::School school = spring::School::en_13906;

    std::optional<double>
        stress_share;  ///< of Rm; absent in the handbook school: the torsional yield share of the wire's family
    double stress_safety = 1.0;  ///< the permissible stress is divided by it
    StressLength stress_length = StressLength::solid;
    StressFactor stress_factor = StressFactor::none;

    GapRule gap_rule = GapRule::en_sa;
    double gap_share = 0.15;  ///< of the deflection at full travel, for share_of_travel
    SolidForm solid_form = SolidForm::en;
    GrowthForm growth_form = GrowthForm::ends_free;

    std::optional<double> seating_coefficient;  ///< nu; absent: the value of the seats
    double buckling_margin = 1.0;               ///< buckling deflection over working deflection, at least

    double smallest_index = 4.0;  ///< w
    double largest_index = 20.0;
    double fewest_active_coils = 2.0;  ///< n
    double most_active_coils = 1000.0;

    double half_turn_slack = 0.5;  ///< on a sliding seat: how far n may be from k + 1/2; 0.5 allows any
    /// How near half a turn apart the end tips are ordered [degrees, plus-minus]; absent: as check::tips() has it.
    std::optional<double> tips_degrees;
    double lean_share = 0.05;      ///< of D: sideways lean on a sliding seat, where neither bore nor rod sets a bound

    Length bore_clearance = 0.0 * mm;  ///< diametral play left at the largest spring in the smallest bore
    Length rod_clearance = 0.0 * mm;   ///< diametral play left at the smallest spring on the largest rod
    int diameter_grade = 2;            ///< EN 15800 grade of the coil diameter used in the clearances

    double smallest_surge_ratio = 13.0;  ///< natural frequency over the frequency of the motion
    double fatigue_factor = 1.2;
    FatigueLine fatigue_line = FatigueLine::goodman;

    Length smallest_ground_wire = 0.5 * mm;  ///< thinner wire is not ground (maker's practice; EN practice names 1 mm)
    double largest_ground_index = 15.0;
    std::optional<double> coil_step;            ///< turns: total coils are multiples of it; absent: any
    std::optional<Length> longest_free_length;  ///< that can be made; absent: any

    std::optional<Share> load_loss;  ///< at temperature; absent: the wire's guidance (an estimate)
    std::optional<Mass> largest_mass;
    bool heed_service_limit = true;  ///< whether a grade's service temperature is a limit

    std::map<std::string, std::string> origins;  ///< by key: what stands behind a limit that a maker sets
};

/// The defaults of a school.
/// EN 13906-1: stress at solid length without curvature factor against 0.56 Rm, gap Sa, growth with ends free
/// (clauses 6.2, 9.9 to 9.11; values from memory). Handbook: Shigley ch. 10: curvature factor, torsional yield at solid
/// with a safety of 1.2 (Eq. 10-21), gap 0.15 (Eq. 10-20), 4 <= C <= 12, 3 <= Na <= 15 (Eq. 10-18, 10-19). Both count
/// the growth with ends free to turn, the larger form.
Limits school_defaults(spring::School school);

}  // namespace seatload::demand
