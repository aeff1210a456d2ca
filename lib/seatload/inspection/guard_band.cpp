// SPDX-License-Identifier: MIT
#include <seatload/inspection/guard_band.hpp>

#include <boost/math/distributions/normal.hpp>

namespace seatload::inspection {
namespace {

const boost::math::normal& standard_normal() {
    static const boost::math::normal curve;
    return curve;
}

/// Limits and readings are decimal numbers: what lies on a limit by its digits must not fall off it by the last bit.
constexpr double kRounding = 1e-9;

}  // namespace

Finding judge(double value, const Limits& limits, double expanded) {
    Finding found = Finding::inside;
    const auto look = [&](double inwards) {
        if (inwards < -expanded - kRounding) found = Finding::outside;
        if (inwards < expanded - kRounding && found == Finding::inside) found = Finding::unproven;
    };
    if (limits.least) look(value - *limits.least);
    if (limits.most) look(*limits.most - value);
    return found;
}

Limits acceptance_zone(const Limits& limits, double guard_band) {
    Limits zone = limits;
    if (zone.least) *zone.least += guard_band;
    if (zone.most) *zone.most -= guard_band;
    return zone;
}

double chance_of_conforming(double value, const Limits& limits, double standard) {
    using boost::math::cdf;
    using boost::math::complement;
    const double below = limits.least ? cdf(standard_normal(), (*limits.least - value) / standard) : 0.0;
    const double above = limits.most ? cdf(complement(standard_normal(), (*limits.most - value) / standard)) : 0.0;
    return 1.0 - below - above;
}

double chance_of_false_acceptance(double guard_factor) {
    return boost::math::cdf(boost::math::complement(standard_normal(), guard_factor));
}

double guard_factor(double probability) { return boost::math::quantile(standard_normal(), probability); }

}  // namespace seatload::inspection
