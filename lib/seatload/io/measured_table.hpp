// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/fields.hpp>
#include <seatload/record/measured.hpp>

namespace seatload::io {

/// What the table [measured] of a spring file states.
record::Measured read_measured(Reader& table);

/// The table read_measured() reads.
void write_measured(TomlWriter& writer, const record::Measured& measured);

}  // namespace seatload::io
