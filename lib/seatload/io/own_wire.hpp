// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/reader.hpp>
#include <seatload/io/toml_writer.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::io {

/// A wire a user states by its own figures, as a grade whose every value counts as given.
/// Keys: id, shear_modulus, young_modulus, density, diameters ("0.20 mm .. 4 mm", the range the figures hold for),
/// service_limit, and the strength as tensile_strength or as strength_at_1_mm with strength_exponent (Rm = A / d^m);
/// optional: designation, standard, family, diameter_tolerance, shear_modulus_loss_per_100_kelvin, relative_cost, note.
wire::Grade read_own_wire(Reader& reader);

/// The keys read_own_wire() reads, into the table begun last. Only for grades that came from it.
void write_own_wire(TomlWriter& writer, const wire::Grade& grade);

}  // namespace seatload::io
