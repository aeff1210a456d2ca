// SPDX-License-Identifier: MIT
#include <seatload/check/inertia_measures.hpp>

#include <seatload/check/free_pitch.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/surge.hpp>

namespace seatload::check::detail {

Measure surge(const Coil& c, double) {
    const double natural =
        spring::surge_frequency(c.wire.shear_modulus_mpa, c.wire.density_t_mm3, c.wire.d_mm, c.D_mm, c.active_coils);
    return {natural / *c.demand.frequency_hz, c.demand.limits.smallest_surge_ratio};
}

Measure mass(const Coil& c, double L0) {
    const double length = spring::wire_length(free_pitch(c, L0), c.wire.d_mm, c.D_mm, c.active_coils, c.total_coils);
    return {spring::wire_mass(c.wire.density_t_mm3, c.wire.d_mm, length) * 1e6, in_gram(*c.demand.limits.largest_mass)};
}

}  // namespace seatload::check::detail
