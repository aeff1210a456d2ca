// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/reader.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The strength a table states: rows of a standard ({lookup, rows, smallest}), a law ({A, m, range}) or one value
/// ({Rm, range}). What is wrong goes to the reader's document; the value is then of no use.
wire::Strength read_strength(Reader& table);

/// A [[grade]] of a wire file. Tolerance tables, load-loss rows and stress-relief rows it names are looked up in
/// `known`. What is wrong goes to the reader's document; the value is then of no use.
wire::Grade read_grade(Reader& table, const wire::Catalogue& known);

}  // namespace seatload::io
