// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/comparison.hpp>
#include <seatload/bench/measured.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::bench {

/// A catalogue grade beside the modulus found.
struct GradeMatch {
    std::string grade;                                   ///< id
    Stress shear_modulus;                                ///< of the catalogue, at the temperature of the session
    double expanded_away = 0.0;                          ///< (found - catalogue) / U
    bool consistent = false;                             ///< at most one U away
    bool in_range = true;                                ///< the grade is drawn in this diameter
    wire::Evidence evidence = wire::Evidence::standard;  ///< of the grade's modulus
};

/// What wire a spring seems to be made of.
struct WireInference {
    Estimate<Stress> shear_modulus;   ///< G = 8 D^3 n R / d^4, at the temperature of the session
    std::vector<GradeMatch> matches;  ///< all grades; those drawn in this diameter first, of them the nearest
    bool any_consistent = false;
    std::string verdict;  ///< which kinds of wire fit and which do not, in sentences
};

/// Shear modulus G [MPa] of a grade for a wire diameter, at a temperature [deg C].
Stress modulus_of(const wire::Grade& grade, Length wire_diameter, double temperature);

/// The shear modulus that rate and dimensions give, and the grades it fits. Empty, with `missing` filled, when d, De,
/// nt or the ends are not stated.
struct WireAnswer {
    std::optional<WireInference> wire;
    std::string missing;  ///< "the wire diameter d and the ends"
};
WireAnswer infer_wire(const Readings& session, const SpringRun& run, const MeasuredSpring& spring,
                      const wire::Catalogue& catalogue);

/// What could have made a spring weaker than it was.
struct Weakening {
    std::optional<Difference<Length>> set;        ///< free length lost
    std::string set_against;                      ///< "the good spring "..."", "the stated free length"
    std::optional<Difference<Length>> worn_wire;  ///< thickness of wire that wear would have to take for the lower rate
    std::string worn_against;
};

/// What set and what wear would explain, against another spring.
Weakening explain(const SpringRun& run, const MeasuredSpring& spring, const SpringRun& good_run,
                  const MeasuredSpring& good);

/// The same against what is stated of the spring: its free length when new, the grade of its wire.
Weakening explain(const Readings& session, const SpringRun& run, const MeasuredSpring& spring,
                  const wire::Catalogue& catalogue);

}  // namespace seatload::bench
