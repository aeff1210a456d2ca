// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <seatload/bench/readings.hpp>
#include <seatload/core/result.hpp>
#include <seatload/inspection/samples.hpp>
#include <seatload/io/beside.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// Samples of a lot, and the bench they were measured on, when a file of its readings is named.
struct SamplesFile {
    inspection::Samples samples;
    std::optional<bench::Readings> bench;
    std::string bench_file;  ///< as named; empty: none is
};

/// The samples a TOML text states; pieces may stand in a CSV table beside it. Errors: everything wrong in text, table
/// and readings, each where it stands; a value measured whose uncertainty nobody states; an AQL that is none of the
/// tables'.
Result<SamplesFile> read_samples(std::string_view text, const std::string& file_name,
                                 const inspection::SamplingTables& tables, const wire::Catalogue& catalogue,
                                 const FileOpener& open);

/// The same, with tables and readings opened from the disk: nothing is read that lies outside the folder of the file.
Result<SamplesFile> read_samples(std::string_view text, const std::string& file_name,
                                 const inspection::SamplingTables& tables, const wire::Catalogue& catalogue);

}  // namespace seatload::io
