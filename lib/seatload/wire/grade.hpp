// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include <seatload/units/quantities.hpp>
#include <seatload/wire/evidence.hpp>

namespace seatload::wire {

/// One row of a strength table: tensile strength of wire of a diameter.
struct StrengthRow {
    Length diameter;
    Stress minimum;
    std::optional<Stress> maximum;
    Evidence evidence = Evidence::standard;
};

/// How a diameter between two rows is read from a strength table.
enum class StrengthLookup {
    next_larger,  ///< row of the next larger nominal size
    step,         ///< row holds above the previous row's diameter, up to its own
    interpolate,  ///< straight line between the two rows
};

struct StrengthTable {
    StrengthLookup lookup = StrengthLookup::next_larger;
    std::vector<StrengthRow> rows;  ///< by rising diameter; never empty
    Length smallest;                ///< end of the range below; under the first row only where that row says "up to"
};

/// Rm = A / d^m with A in MPa mm^m and d in mm, valid from `smallest` to `largest`.
/// Shigley, Mechanical Engineering Design, Eq. 10-14.
struct StrengthLaw {
    double a_mpa = 0.0;
    double exponent = 0.0;
    Length smallest;
    Length largest;
};

/// One strength for a range of sizes, as a user may state it from a certificate.
struct StrengthGiven {
    Stress minimum;
    Length smallest;
    Length largest;
};

using Strength = std::variant<StrengthTable, StrengthLaw, StrengthGiven>;

/// Elastic moduli of wire up to a diameter.
struct ModuliRow {
    Length up_to;
    Stress shear;  ///< G at 20 deg C
    Stress young;  ///< E at 20 deg C
};

struct ToleranceRow {
    Length up_to;
    Length plus_minus;
    Evidence evidence = Evidence::standard;
};

/// Kind of steel or alloy, which decides torsional yield shares and finish notes.
enum class Family {
    cold_drawn_carbon,  ///< patented, music and hard-drawn wire
    oil_tempered,       ///< hardened and tempered carbon and low-alloy wire
    austenitic_stainless,
    precipitation_stainless,
    copper_alloy,
    nickel_alloy,
};

/// Expected loss of load, a guide for ranking and warnings only [share of the load at a temperature].
struct LoadLossGuide {
    std::string material;                                          ///< the row of the guidance used
    std::vector<std::pair<Celsius, std::optional<Share>>> points;  ///< by rising temperature
    Evidence evidence = Evidence::estimate;
    std::string basis;  ///< time and stress the points stand for
    std::string source;
    std::string analogy;  ///< why a row for another wire is used; empty when the row is for this one
};

struct StressRelief {
    std::string temperature;  ///< as on a work order, "260 °C" or "200 °C to 300 °C"
    std::string time;         ///< "30 min"
    Evidence evidence = Evidence::standard;
    std::string material;  ///< the row used
    std::string source;
    std::string analogy;   ///< why a row for another wire is used, or what else to know; may be empty
    bool hardens = false;  ///< ageing that the strength of the grade rests on, not a relief of stress
};

/// Where a property of a grade comes from.
struct Provenance {
    std::string property;  ///< "tensile", "shear modulus", ...
    std::string source;
    Evidence evidence = Evidence::standard;
};

/// A wire grade with everything a spring needs to know of it.
struct Grade {
    std::string id;           ///< "EN10270-1-SH"
    std::string standard;     ///< "EN 10270-1:2011+A1:2017"
    std::string designation;  ///< "SH"
    std::string family_text;  ///< "patented cold-drawn unalloyed steel"
    std::string supplied_as;  ///< the condition in which wire that is aged after coiling is bought; else empty
    /// Least Rm of wire as bought that is aged after coiling, with how far it can be trusted; nothing when not known.
    std::optional<std::pair<Stress, Evidence>> supplied_strength;
    std::string material_number;  ///< a number or a remark; empty when nothing is known
    Family family = Family::cold_drawn_carbon;
    Strength strength;
    std::vector<ModuliRow> moduli;  ///< by rising diameter; the last row covers all larger sizes
    Density density;
    double shear_modulus_loss_per_kelvin = 0.0;    ///< r in G(t) = G20 (1 - r (t - 20)) [1/K]
    Celsius service_limit{};                       ///< highest service temperature
    std::vector<ToleranceRow> diameter_tolerance;  ///< by rising diameter; may be empty when none is established
    bool static_duty_only = false;                 ///< its standard makes it for loads that hardly change
    std::optional<double> relative_cost;           ///< by mass, hard-drawn wire = 1
    std::optional<LoadLossGuide> load_loss;
    std::optional<StressRelief> stress_relief;
    std::vector<Provenance> provenance;
    std::string note;
};

}  // namespace seatload::wire
