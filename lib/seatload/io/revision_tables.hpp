// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/demand/requirement.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/toml_writer.hpp>

namespace seatload::io {

/// The tables [[revision]] in the order of the file, the earliest first. Wrong: an index given twice or too long, dates
/// that fall or lie after the date of issue, and a last index that is not the identity's.
std::vector<demand::Revision> read_revisions(Reader& root, const demand::Identity& identity);

void write_revisions(TomlWriter& writer, const std::vector<demand::Revision>& revisions);

}  // namespace seatload::io
