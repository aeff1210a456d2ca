// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/bench/readings.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {

// What a readings file says of the bench itself: one function a table.

/// [scale]: its step, what it may be off by, its tare, where it was adjusted.
void read_scale(Reader& table, bench::Scale& scale);

/// [indicator]: its step, and how the force of its plunger comes onto the pan.
void read_indicator(Reader& table, bench::Indicator& indicator);

/// [heights]: those at which the load is asked for; "seated", "full_travel" and names of the user's own.
std::vector<bench::AskedHeight> read_heights(Reader& table);

}  // namespace seatload::io
