// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/plunger.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {

/// The plunger of a table [plunger] with its tables pressures, leak, side_load, back, drain, margins, trust. `travel`
/// is the difference of the spring's heights when they are known: the stroke may then be left out, and must not differ.
/// What contradicts itself is complained of.
demand::Plunger read_plunger_table(Reader& table, const std::optional<Length>& travel);

}  // namespace seatload::io
