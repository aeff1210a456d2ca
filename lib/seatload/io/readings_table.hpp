// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <vector>

#include <seatload/bench/readings.hpp>
#include <seatload/io/beside.hpp>
#include <seatload/io/csv.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/readings_csv.hpp>

namespace seatload::io {

/// Readings with the places where they stand: in the TOML file, or in a CSV table beside it.
struct PlacedReadings {
    std::vector<bench::Reading> readings;
    std::vector<Position> places;  ///< one a reading
    std::shared_ptr<CsvText> csv;  ///< the table they stand in; null: the TOML file
    Position at;                   ///< of the whole
    bool is_sound = true;          ///< false when something of it could not be read
};

/// The readings that a table of a readings file holds: under `rows_key`, each row a list of texts in the order of the
/// key `columns` (`usual` when it says nothing), with an optional last word on the direction; or in the CSV file
/// named under `table`, whose header names columns and units ("height [mm]"). What is wrong is complained of where it
/// stands.
PlacedReadings read_readings_table(Reader& table, std::string_view rows_key, const std::vector<Column>& usual,
                                   const FileOpener& open);

}  // namespace seatload::io
