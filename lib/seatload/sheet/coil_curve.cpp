// SPDX-License-Identifier: MIT
#include <seatload/sheet/coil_curve.hpp>

#include <seatload/core/assert.hpp>

namespace seatload::sheet {
namespace {

double smooth(double t) { return t <= 0.0 ? 0.0 : t >= 1.0 ? 1.0 : t * t * (3.0 - 2.0 * t); }
double smooth_slope(double t) { return t <= 0.0 || t >= 1.0 ? 0.0 : 6.0 * t * (1.0 - t); }
double smooth_integral(double t) { return t <= 0.0 ? 0.0 : t >= 1.0 ? t - 0.5 : t * t * t * (1.0 - 0.5 * t); }

/// x of the centre line at the tip, over d.
double tip_place(spring::Ends ends) {
    switch (ends) {
        case spring::Ends::open:
        case spring::Ends::closed:
            return 0.5;
        case spring::Ends::open_ground:
            return 0.0;
        case spring::Ends::closed_ground:
            return -0.25;  // leaves a tip d/4 thick, and d/2 of height at 3/4 turn
    }
    return 0.5;
}

}  // namespace

CoilCurve::CoilCurve(const spring::Spring& spring)
    : turns_(spring.total_coils),
      radius_(0.5 * in_mm(spring.mean_diameter)),
      wire_radius_(0.5 * in_mm(spring.wire_diameter)),
      length_(in_mm(spring.free_length)),
      ground_(spring::are_ground(spring.ends)),
      hand_(spring.hand == spring::Hand::right ? 1.0 : -1.0),
      start_(tip_place(spring.ends) * in_mm(spring.wire_diameter)) {
    SEATLOAD_ASSERT(turns_ > 0.0 && radius_ > wire_radius_ && wire_radius_ > 0.0 && length_ > 0.0);
    const double extent = length_ - 2.0 * start_;
    const double d = 2.0 * wire_radius_;
    const bool closed = spring::are_closed(spring.ends) && turns_ > 2.0;
    dead_ = closed ? 1.0 : 0.0;
    blend_ = closed ? std::min(0.3, 0.25 * (turns_ - 2.0)) : 0.0;
    end_lead_ = closed ? d : extent / turns_;
    extra_lead_ = closed ? (extent - d * turns_) / (turns_ - 2.0 - blend_) : 0.0;
}

double CoilCurve::x(double u) const {
    if (blend_ == 0.0) return start_ + end_lead_ * u;
    const double up = smooth_integral((u - dead_) / blend_);
    const double down = smooth_integral((u - (turns_ - dead_ - blend_)) / blend_);
    return start_ + end_lead_ * u + extra_lead_ * blend_ * (up - down);
}

double CoilCurve::lead(double u) const {
    if (blend_ == 0.0) return end_lead_;
    return end_lead_ + extra_lead_ * (smooth((u - dead_) / blend_) - smooth((u - (turns_ - dead_ - blend_)) / blend_));
}

double CoilCurve::lead_slope(double u) const {
    if (blend_ == 0.0) return 0.0;
    return extra_lead_ / blend_ *
           (smooth_slope((u - dead_) / blend_) - smooth_slope((u - (turns_ - dead_ - blend_)) / blend_));
}

double CoilCurve::y(double u) const { return radius_ * std::cos(kTwoPi * u); }

double CoilCurve::z(double u) const { return hand_ * radius_ * std::sin(kTwoPi * u); }

}  // namespace seatload::sheet
