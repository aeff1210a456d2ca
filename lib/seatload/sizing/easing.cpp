// SPDX-License-Identifier: MIT
#include <seatload/sizing/easing.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sizing/easing_tables.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;

std::vector<Easing> both_tables() {
    std::vector<Easing> all = mechanism_easings();
    const std::vector<Easing> limits = limit_easings();
    all.insert(all.end(), limits.begin(), limits.end());
    return all;
}

/// What a share of a change is a share of.
double whole(double now, double farthest) { return now != 0.0 ? std::abs(now) : std::abs(farthest - now); }

/// The largest of 1, 2 and 5 times a power of ten that is not above a number.
double round_step(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    for (const double factor : {5.0, 2.0})
        if (factor * power <= most) return factor * power;
    return power;
}

}  // namespace

std::span<const Easing> easings() {
    static const std::vector<Easing> all = both_tables();
    return all;
}

double eased(const Easing& easing, const Requirement& r, double share) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    const double by = std::min(share * whole(now, farthest), std::abs(farthest - now));
    return farthest > now ? now + by : now - by;
}

double farthest_share(const Easing& easing, const Requirement& r) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    return farthest == now ? 0.0 : std::abs(farthest - now) / whole(now, farthest);
}

double rounded(const Easing& easing, const Requirement& r, double edge, int finer) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    if (edge == now) return edge;
    constexpr double kCoarsest = 0.02;
    const double step =
        round_step(std::min(kCoarsest * whole(now, farthest), 0.5 * std::abs(edge - now))) * std::pow(10.0, -finer);
    constexpr double kSlack = 1e-6;  // of a step: a number that is a multiple but for rounding stays
    const double multiple = farthest > now ? std::ceil(edge / step - kSlack) : std::floor(edge / step + kSlack);
    const double value = std::round(multiple * step * 1e9) / 1e9;  // cleared of the noise in the last digits
    return farthest > now ? std::min(value, farthest) : std::max(value, farthest);
}

}  // namespace seatload::sizing
