// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/reader.hpp>
#include <seatload/wire/catalogue.hpp>

// Readers of the tables of a wire file other than grades. What is wrong goes to the reader's document; the value is
// then of no use.
namespace seatload::io {

/// A [[tolerance_table]]: id, source, rows [up to, plus-minus, evidence].
wire::ToleranceTable read_tolerance_table(Reader& table);

/// A [[load_loss]] row: row, basis, source, evidence, points [temperature, share].
wire::LoadLossGuide read_load_loss(Reader& table);

/// A [[stress_relief]] row: row, temperature, time, source, evidence, hardens.
wire::StressRelief read_stress_relief(Reader& table);

/// A [[series]] of stock sizes: id, title, source, evidence, sizes, from_memory.
wire::StockSeries read_series(Reader& table);

/// An [[entry]] of the bibliography: key, kind, title.
wire::Source read_source(Reader& table);

/// A [[holding]]: grade, which must be in `known`, and diameters inside its range.
wire::StockHolding read_holding(Reader& table, const wire::Catalogue& known);

}  // namespace seatload::io
