// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/io/fields.hpp>
#include <seatload/io/spring_forms.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// What the tables [spring] and [own_wire] of a spring or spec file state.
struct SpringTable {
    std::string wire_grade;
    std::optional<wire::Grade> own_grade;
    spring::Spring spring;
};

/// The spring of a file. Exactly one of mean_diameter, outside_diameter and inside_diameter must be given; the wire
/// must be known and have a strength at its diameter.
SpringTable read_spring_table(Reader& root, const wire::Catalogue& catalogue);

/// The tables read_spring_table() reads, with the mean diameter.
void write_spring_table(TomlWriter& writer, const SpringTable& table);

}  // namespace seatload::io
