// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/reader.hpp>
#include <seatload/io/toml_writer.hpp>
#include <seatload/record/history.hpp>

namespace seatload::io {

/// The tables [[state]] in the order of the file, the earliest first. Wrong: none at all, a first one that is no draft,
/// a state that cannot follow the one before it, falling dates, SHA-256s that are none.
record::History read_history(Reader& root);

void write_history(TomlWriter& writer, const record::History& history);

}  // namespace seatload::io
