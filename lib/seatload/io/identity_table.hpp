// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {

/// The identity a table states, held against the lengths ISO 7200 gives to its fields (title blocks: number at most 16
/// characters, revision at most 2; from memory).
demand::Identity read_identity(Reader& reader);

}  // namespace seatload::io
