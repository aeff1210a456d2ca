// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/bench/readings.hpp>

namespace seatload::inspection {

/// A load that is looked for on pieces of a lot.
struct AskedLoad {
    double height_mm = 0.0;
    double load_n = 0.0;     ///< about what is expected
    double rate_n_mm = 0.0;  ///< of the springs: it turns a wrong height into a wrong load
};

/// The load [N] at the height asked for, from one reading of a bench's scale with the plates set to that height: for
/// tare, gravity and plunger as bench::corrected() has it, and carried from the spring's real height, as scale and
/// frame give way, to the one asked for. Nothing when the bench does not tell what it needs.
std::optional<double> load_from_scale(const bench::Readings& bench, const bench::ScaleReading& shown,
                                      const AskedLoad& asked);

/// The expanded uncertainty U [N] (k = 2) of one such reading: steps, linearity and setting of this reading, all errors
/// that the readings of the bench share, and the scatter it showed when its springs were read repeatedly. Nothing as
/// above.
std::optional<double> expanded_of_one_reading(const bench::Readings& bench, const AskedLoad& asked);

}  // namespace seatload::inspection
