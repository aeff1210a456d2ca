// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/bench/readings.hpp>
#include <seatload/core/result.hpp>
#include <seatload/io/readings_table.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The bench session a TOML text states: the tables run, scale, gauge, indicator, load_path, heights and the springs,
/// whose readings may lie in CSV files beside it. Errors: everything wrong in the text and the tables, each where it
/// stands; readings that make no line are errors too. Doubtful readings are warnings.
Result<bench::Readings> read_readings(std::string_view text, const std::string& file_name,
                                      const wire::Catalogue& catalogue, const FileOpener& open);

/// The same, with tables opened from the disk: nothing is read that lies outside the folder of the file, not by way of
/// a link either.
Result<bench::Readings> read_readings(std::string_view text, const std::string& file_name,
                                      const wire::Catalogue& catalogue);

}  // namespace seatload::io
