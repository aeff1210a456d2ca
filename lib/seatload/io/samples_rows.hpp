// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <seatload/inspection/samples.hpp>
#include <seatload/io/csv.hpp>
#include <seatload/io/node.hpp>
#include <seatload/io/samples_columns.hpp>

namespace seatload::io {

/// Takes a complaint of something at a place.
using Complain = std::function<void(Position, DiagnosticId id, std::string message, std::string hint)>;

/// The columns of samples by their names; nothing when one is unknown or stands twice, or when none says the piece or
/// a value (then complained of).
std::optional<std::vector<SampleColumn>> sample_columns(const std::vector<std::pair<std::string, Position>>& names,
                                                        Position at, const Complain& complain);

/// A piece from the cells of its row, as many as there are columns; empty texts are not measured. Each cell is a node
/// as a TOML file would hold it.
inspection::Piece piece_of(const std::vector<SampleColumn>& columns, const std::vector<Node>& cells,
                           const Complain& complain);

/// The pieces of a CSV table, whose heading names columns and units ("seated_load [N]"), and where each stands. What is
/// wrong is complained of there.
std::vector<inspection::Piece> csv_pieces(CsvText& csv, std::vector<SampleColumn>& columns,
                                          std::vector<Position>& places);

}  // namespace seatload::io
