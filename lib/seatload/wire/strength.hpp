// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/wire/grade.hpp>

namespace seatload::wire {

/// Tensile strength of a wire as its standard or its owner states it.
struct StrengthAt {
    Stress minimum;
    std::optional<Stress> maximum;
    Evidence evidence = Evidence::standard;
};

/// Tensile strength Rm [MPa] of the grade at a diameter, read as the grade's table says; nothing outside its range
/// (strengths are never extrapolated; a diameter within 1e-9 mm of an end is inside). A strength between two rows rests
/// on the weaker evidence of the two.
std::optional<StrengthAt> strength_at(const Grade& grade, Length diameter);

/// The diameters between which strength_at() answers [mm].
struct DiameterRange {
    Length smallest;
    Length largest;
};
DiameterRange strength_range(const Grade& grade);

/// The weakest evidence of the rows of a grade's strength; a law or a single strength counts as given.
Evidence strength_evidence(const Grade& grade);

/// Moduli G, E [MPa] at 20 deg C for a diameter.
struct Moduli {
    Stress shear;
    Stress young;
};
Moduli moduli_at(const Grade& grade, Length diameter);

/// Plus-minus tolerance of the wire diameter [mm], or nothing when the grade has no table for that size.
std::optional<Length> diameter_tolerance_at(const Grade& grade, Length diameter);

/// The expected share of load lost at a temperature after the guidance's basis (about 100 h), straight lines between
/// its points and from no loss at 20 deg C; no answer beyond the last known point. An estimate, never a promise.
std::optional<Share> load_loss_at(const Grade& grade, Celsius temperature);

/// Share of Rm at which the wire yields in torsion before set removal, with the curvature factor in the stress.
/// Shigley, Mechanical Engineering Design, Table 10-6: only the row of music and cold-drawn carbon wire (0.45) was
/// seen, in a solution manual; the rest is memory. The table has no row for precipitation-hardening steel: 0.45 there
/// is the design share of 17-7PH in US spring makers' tables, on the safe side of the elastic limit of 0.55 to 0.60 Rm
/// recalled from Table 10-5, and counts as an estimate.
struct TorsionalYield {
    Share share;
    Evidence evidence;
};
TorsionalYield torsional_yield(Family family);

}  // namespace seatload::wire
