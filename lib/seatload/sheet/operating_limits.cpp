// SPDX-License-Identifier: MIT
#include <seatload/sheet/operating_limits.hpp>

#include <seatload/spring/stress.hpp>

namespace seatload::sheet {
namespace {

double stress_factor(const Facts& facts) {
    switch (facts.spec.limits.stress_factor) {
        case demand::StressFactor::bergstraesser:
            return facts.values.stress_factor;
        case demand::StressFactor::wahl:
            return spring::wahl_factor(facts.values.index);
        default:
            return 1.0;
    }
}

}  // namespace

std::optional<Length> buckling_length(const Facts& facts) {
    if (facts.spec.space.seats == demand::Seats::guided || !facts.values.buckling_deflection) return std::nullopt;
    return facts.spec.spring.free_length - *facts.values.buckling_deflection;
}

Force permissible_load(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    return spring::force_for_stress(facts.permissible_stress / stress_factor(facts), s.wire_diameter, s.mean_diameter);
}

}  // namespace seatload::sheet
