// SPDX-License-Identifier: MIT
#include <seatload/sheet/fatigue_limits.hpp>

#include <algorithm>

#include <seatload/check/numbers.hpp>
#include <seatload/spring/fatigue.hpp>

namespace seatload::sheet {
namespace {

/// The endurance of the spec's wire.
class Endurance {
  public:
    explicit Endurance(const Facts& facts)
        : limits_(facts.spec.limits),
          point_(spring::zimmerli_mpa(facts.spec.duty.peened)),
          strength_(spring::kShearStrengthShare * in_mpa(facts.values.strength.minimum)) {}

    bool lasts(double upper, double range) const {
        const double amplitude = 0.5 * range, mean = upper - amplitude;
        return range <= 0.0 || (mean >= 0.0 && factor(amplitude, mean) >= limits_.fatigue_factor);
    }

  private:
    double factor(double amplitude, double mean) const {
        switch (limits_.fatigue_line) {
            case demand::FatigueLine::goodman:
                return spring::goodman_factor(amplitude, mean, point_, strength_);
            case demand::FatigueLine::gerber:
                return mean > 0.0 ? spring::gerber_factor(amplitude, mean, point_, strength_)
                                  : spring::gerber_endurance(point_, strength_) / amplitude;
            case demand::FatigueLine::sines:
                return spring::sines_factor(amplitude, point_);
        }
        return 0.0;
    }

    const demand::Limits& limits_;
    spring::EnduranceStress<double> point_;
    double strength_;
};

/// The largest number between two at which the question is still answered with yes; the low one must be.
template <class Asked>
double largest(double low, double high, const Asked& asked) {
    if (asked(high)) return high;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (asked(middle) ? low : high) = middle;
    }
    return low;
}

}  // namespace

FatigueLimits fatigue_limits(const Facts& facts) {
    const check::AtLength& one = *facts.values.seated;
    const check::AtLength& two = *facts.values.full_travel;
    const double drawn = in_mpa(two.corrected_stress);
    const double range = in_mpa(two.corrected_stress - one.corrected_stress);
    const record::LoadAtLength& load = facts.spec.full_travel;
    const double most = std::max(drawn, in_mpa(two.corrected_stress * ((load.nominal + load.plus) / two.load)));
    const Endurance endurance(facts);
    if (!check::has_endurance(facts.grade, in_mm(facts.spec.spring.wire_diameter))) return {most * MPa, range * MPa};
    if (!endurance.lasts(drawn, range)) return {drawn * MPa, range * MPa};
    if (!endurance.lasts(most, range))
        return {largest(drawn, most, [&](double upper) { return endurance.lasts(upper, range); }) * MPa, range * MPa};
    return {most * MPa, largest(range, most, [&](double wider) { return endurance.lasts(most, wider); }) * MPa};
}

}  // namespace seatload::sheet
