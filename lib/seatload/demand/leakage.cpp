// SPDX-License-Identifier: MIT
#include <seatload/demand/leakage.hpp>

#include <seatload/demand/hydraulics.hpp>

namespace seatload::demand {
namespace {

Interval<double> share(const LeakOrifices& way) {
    const auto at = [](Length inlet, Length outlet) {
        const double ratio = inlet / outlet;
        return share_between_orifices(ratio * ratio);
    };
    // rises with the inlet and falls with the outlet
    return {at(way.inlet.low, way.outlet.high), at(way.inlet.high, way.outlet.low)};
}

/// Conductance with a viscosity of 1 MPa s where none counts [mm3/s per MPa]; it rises with all but length and
/// viscosity.
Interval<double> conductance(const AnnularGap& gap, bool viscosity_counts) {
    const Interval<Viscosity> oil = viscosity_counts ? *gap.viscosity : exactly(Viscosity::from_value(1.0));
    const auto at = [](Length diameter, Length clearance, Length length, double eccentricity, Viscosity viscosity) {
        return in_base_unit(annular_conductance(diameter, clearance, length, eccentricity, viscosity));
    };
    return {at(gap.diameter.low, gap.clearance.low, gap.length.high, gap.eccentricity.low, oil.high),
            at(gap.diameter.high, gap.clearance.high, gap.length.low, gap.eccentricity.high, oil.low)};
}

Interval<double> share(const LeakGaps& way) {
    const bool viscosity_counts = way.inlet.viscosity && way.outlet.viscosity;
    const Interval<double> inlet = conductance(way.inlet, viscosity_counts);
    const Interval<double> outlet = conductance(way.outlet, viscosity_counts);
    return {share_between_gaps(inlet.low, outlet.high), share_between_gaps(inlet.high, outlet.low)};
}

}  // namespace

std::optional<Interval<Stress>> leak_pressure(const PlungerPressures& pressures) {
    if (pressures.leak || !pressures.leakage) return pressures.leak;
    const Leakage& leakage = *pressures.leakage;
    const Interval<double> let_in = std::visit([](const auto& way) { return share(way); }, leakage.way);
    return Interval<Stress>{let_in.low * leakage.supply.low, let_in.high * leakage.supply.high};
}

}  // namespace seatload::demand
