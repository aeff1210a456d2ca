// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/numbers.hpp>
#include <seatload/spring/helix.hpp>

namespace seatload::check::detail {

/// Pitch of the active coils of a spring that nothing presses [mm].
inline double free_pitch(const Coil& c, double L0) { return spring::pitch(c.ends, L0, c.wire.d_mm, c.active_coils); }

}  // namespace seatload::check::detail
