// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/demand/requirement.hpp>
#include <seatload/record/measured.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::record {

/// A spring as a person describes it, to be evaluated against a requirement or alone.
struct SpringFile {
    std::string name;                      ///< empty when the file gives none
    std::string wire_grade;                ///< id in the catalogue, or of own_grade
    std::optional<wire::Grade> own_grade;  ///< the wire itself, when it is not in the catalogue
    spring::Spring spring;
    std::optional<Length> seated_height;       ///< L1
    std::optional<Length> full_travel_height;  ///< L2
    demand::Surroundings surroundings;
    bool is_temperature_stated = true;  ///< false: nobody said how hot it gets, and 20 °C stands for it
    std::optional<Measured> measured;   ///< what the bench found of it
    std::optional<demand::Requirement>
        requirement;           ///< what a spec file says the spring is for; a spring file has none
    std::optional<Spec> spec;  ///< the whole spec, when the file is one
};

}  // namespace seatload::record
