// SPDX-License-Identifier: MIT
#include <seatload/sizing/made_allowance.hpp>

#include <algorithm>

#include <seatload/check/tips.hpp>
#include <seatload/demand/half_turn.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/tolerance/modulus_spread.hpp>

namespace seatload::sizing {
namespace {

/// Plus-minus tolerance of De or Di in another grade than the one the clearances are judged with.
double coil_diameter_tolerance_mm(const check::Coil& c, const tolerance::Tables& tables, int grade) {
    check::DemandNumbers demand = c.demand;
    demand.limits.diameter_grade = grade;
    return check::Coil(demand, c.wire, tables, c.D_mm, c.ends, c.total_coils).diameter_tolerance_mm;
}

}  // namespace

double coils_tolerance(double active_coils, int load_grade) {
    return std::min(kCoilsOff * tolerance::grade_factor(load_grade), 0.5 * active_coils);
}

tolerance::MadeAllowance made_allowance(const check::Coil& c, wire::Family family, const tolerance::Tables& tables,
                                        ToleranceGrades grades) {
    const double diameter = coil_diameter_tolerance_mm(c, tables, grades.diameter);
    tolerance::MadeAllowance a;
    a.wire_diameter = c.wire.d_tolerance_mm;
    a.shear_modulus = tolerance::modulus_spread(family) * c.wire.shear_modulus_mpa;
    a.lot_coil_diameter = (1.0 - kWithinLotDiameter) * diameter;
    a.coil_diameter = kWithinLotDiameter * diameter;
    a.active_coils = kWithinLotCoils * coils_tolerance(c.active_coils, grades.load);
    a.free_length = tolerance::free_length_tolerance_mm(c.wire.d_mm, c.D_mm, c.active_coils, c.rate_n_mm, grades.load);
    return a;
}

tolerance::InfluenceAllowance unadjusted_allowance(double active_coils, const tolerance::MadeAllowance& made,
                                                   ToleranceGrades grades) {
    return {made.wire_diameter, made.lot_coil_diameter + made.coil_diameter, coils_tolerance(active_coils, grades.load),
            made.free_length, made.shear_modulus};
}

tolerance::MadeOrder made_order(const check::Coil& c, double L0, bool outside_rules,
                                const std::array<double, 2>& loads_n) {
    tolerance::MadeOrder o;
    o.wire_diameter = c.wire.d_mm;
    o.coil_diameter = outside_rules ? c.D_mm + c.wire.d_mm : c.D_mm - c.wire.d_mm;
    o.outside_rules = outside_rules;
    o.shear_modulus = c.wire.shear_modulus_mpa;
    o.lengths = {c.demand.seated_height_mm, c.demand.full_travel_height_mm};
    o.loads = loads_n;
    if (const auto tips = check::tips(c, L0)) {
        const double half_over = demand::half_over(c.active_coils);
        o.fewest_coils = half_over - (1.0 - kWithinLotTips) * tips->ordered;
        o.most_coils = half_over + (1.0 - kWithinLotTips) * tips->ordered;
        o.tips = kWithinLotTips * tips->ordered;
    }
    return o;
}

}  // namespace seatload::sizing
