// SPDX-License-Identifier: MIT
#include <seatload/check/clearance_measures.hpp>

#include <algorithm>
#include <limits>

#include <seatload/check/free_pitch.hpp>
#include <seatload/spring/growth.hpp>

namespace seatload::check::detail {
namespace {

/// The tolerance rises with the mean diameter, but outside its table there is none.
double least_tolerance(const Coil& low, const Coil& high) {
    return std::min(low.diameter_tolerance_mm, high.diameter_tolerance_mm);
}

double most_tolerance(const Coil& low, const Coil& high) {
    if (least_tolerance(low, high) <= 0.0) return std::numeric_limits<double>::infinity();
    return std::max(low.diameter_tolerance_mm, high.diameter_tolerance_mm);
}

/// How much wider the coil gets when it is pressed: less for a larger coil and for a smaller pitch.
double widening(const Coil& c, double L0) {
    const double m = free_pitch(c, L0);
    // Below a pitch of one wire the coil cannot be wound; it does not shrink either.
    if (m <= c.wire.d_mm) return 0.0;
    return c.demand.limits.growth_form == demand::GrowthForm::ends_free
               ? spring::growth_ends_free(m, c.wire.d_mm, c.D_mm)
               : spring::growth_ends_held(m, c.wire.d_mm, c.D_mm);
}

double bore_limit(const DemandNumbers& d) { return *d.bore_smallest_mm - in_mm(d.limits.bore_clearance); }

}  // namespace

Measure rod(const Coil& c, double) {
    const double smallest_inside = c.D_mm - c.wire.d_mm - c.diameter_tolerance_mm;
    return {smallest_inside, *c.demand.rod_largest_mm + in_mm(c.demand.limits.rod_clearance)};
}

Measure kindest_rod(const Coil& low, const Coil& high, double L0) {
    return {high.D_mm - high.wire.d_mm - least_tolerance(low, high), rod(low, L0).limit};
}

Measure harshest_rod(const Coil& low, const Coil& high, double L0) {
    return {low.D_mm - low.wire.d_mm - most_tolerance(low, high), rod(low, L0).limit};
}

Measure bore(const Coil& c, double L0) {
    return {c.outside_mm() + c.diameter_tolerance_mm + widening(c, L0), bore_limit(c.demand)};
}

Measure kindest_bore(const Coil& low, const Coil& high, double L0) {
    return {low.outside_mm() + least_tolerance(low, high) + widening(high, L0), bore_limit(low.demand)};
}

Measure harshest_bore(const Coil& low, const Coil& high, double L0) {
    return {high.outside_mm() + most_tolerance(low, high) + widening(low, L0), bore_limit(low.demand)};
}

}  // namespace seatload::check::detail
