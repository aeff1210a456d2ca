// SPDX-License-Identifier: MIT
#include <seatload/sheet/wire_range.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>

#include <seatload/check/evaluation.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sheet {
namespace {

/// What the choice of coils may take of a load's tolerance; the rest is for the making (our own rule).
constexpr double kShareOfTolerance = 0.5;
constexpr double kThinnest = 0.5;  ///< of the diameter drawn; nothing so far off is the same order
constexpr double kThickest = 2.0;

/// Steps about as fine as wire is stocked in [mm] (common practice, no source).
double step_mm(double diameter_mm) {
    if (diameter_mm < 0.5) return 0.005;
    if (diameter_mm < 2.0) return 0.01;
    return diameter_mm < 5.0 ? 0.05 : 0.1;
}

/// The coils nearest to those wanted that keep half a turn over.
double half_turn_coils(double wanted, double slack) {
    const double half = std::max(0.5, std::round(wanted - 0.5) + 0.5);
    return std::clamp(wanted, half - slack, half + slack);
}

bool gives(const record::LoadAtLength& load, Force given) {
    const Force off = given - load.nominal;
    return off <= kShareOfTolerance * load.plus && -off <= kShareOfTolerance * load.minus;
}

class WireRange {
  public:
    WireRange(const record::Spec& spec, const wire::Grade& grade, const demand::Requirement& requirement,
              const tolerance::Tables& tables, std::optional<double> half_turn_tolerance,
              const std::vector<LeanPromise>& lean_promises)
        : spec_(spec),
          grade_(grade),
          requirement_(requirement),
          tables_(tables),
          half_turn_tolerance_(half_turn_tolerance),
          lean_promises_(lean_promises),
          rate_(spring::rate(shear(spec.spring.wire_diameter), spec.spring.wire_diameter, spec.spring.mean_diameter,
                             spring::active_coils(spec.spring.ends, spec.spring.total_coils))) {
        if (const auto own = check::evaluate(spec.spring, grade_, requirement_, tables_))
            for (const check::Verdict& verdict : own->verdicts) own_margins_[verdict.rule->id] = verdict.margin;
    }

    /// The last diameter that still serves, walking so many steps at a time from the spec's own.
    Length end(int direction) const {
        const double own = in_mm(spec_.spring.wire_diameter);
        const double step = step_mm(own);
        double last = own;
        const double first = direction < 0 ? std::ceil(own / step - 1e-6) : std::floor(own / step + 1e-6);
        for (double count = first + direction;; count += direction) {
            const double d = count * step;
            if (d < kThinnest * own || d > kThickest * own || !serves(d * mm)) return last * mm;
            last = d;
        }
    }

  private:
    Stress shear(Length d) const { return wire::moduli_at(grade_, d).shear; }

    /// The spring of another wire that gives the loads; its rate follows from the coils.
    std::optional<spring::Spring> rewound(Length d) const {
        spring::Spring s = spec_.spring;
        s.mean_diameter += spec_.bore_rules ? s.wire_diameter - d : d - s.wire_diameter;
        s.wire_diameter = d;
        if (s.mean_diameter <= d) return std::nullopt;
        const double wanted = spring::active_coils_for_rate(shear(d), d, s.mean_diameter, rate_);
        const double n = half_turn_tolerance_ ? half_turn_coils(wanted, *half_turn_tolerance_) : wanted;
        s.total_coils = n + spring::dead_coils(s.ends);
        const Rate rate = spring::rate(shear(d), d, s.mean_diameter, n);
        const Length middle = 0.5 * (spec_.seated.length + spec_.full_travel.length);
        s.free_length = middle + rate_ / rate * (spec_.spring.free_length - middle);
        for (const record::LoadAtLength* load : {&spec_.seated, &spec_.full_travel})
            if (n != wanted && !gives(*load, rate * (s.free_length - load->length))) return std::nullopt;
        return s;
    }

    /// A limit that the spec's own spring does not keep must not be passed further.
    bool keeps(const check::Verdict& verdict) const {
        if (verdict.passed) return true;
        const auto own = own_margins_.find(verdict.rule->id);
        return own != own_margins_.end() && own->second < 0.0 && verdict.margin >= own->second;
    }

    bool has_room_to_lean(const spring::Spring& s, const LeanPromise& promise) const {
        demand::Requirement requirement = requirement_;
        if (promise.tips) requirement.limits.tips_degrees = 360.0 * *promise.tips;
        const auto evaluation = check::evaluate(s, grade_, requirement, tables_);
        constexpr double kRounding = 1e-9;
        return evaluation && evaluation->lean_bounds &&
               evaluation->lean_bounds->longest_mm >= in_mm(promise.longest_free_length) - kRounding;
    }

    bool serves(Length d) const {
        const auto spring = rewound(d);
        if (!spring) return false;
        const auto evaluation = check::evaluate(*spring, grade_, requirement_, tables_);
        if (!evaluation) return false;  // the grade has no strength there
        return std::all_of(evaluation->verdicts.begin(), evaluation->verdicts.end(),
                           [&](const check::Verdict& verdict) { return keeps(verdict); }) &&
               std::all_of(lean_promises_.begin(), lean_promises_.end(),
                           [&](const LeanPromise& promise) { return has_room_to_lean(*spring, promise); });
    }

    const record::Spec& spec_;
    const wire::Grade& grade_;
    const demand::Requirement& requirement_;
    const tolerance::Tables& tables_;
    std::optional<double> half_turn_tolerance_;
    const std::vector<LeanPromise>& lean_promises_;
    Rate rate_;
    std::map<std::string_view, double> own_margins_;  ///< by rule
};

}  // namespace

std::optional<demand::LengthRange> wire_range(const record::Spec& spec, const wire::Grade& grade,
                                              const demand::Requirement& requirement, const tolerance::Tables& tables,
                                              std::optional<double> half_turn_tolerance,
                                              const std::vector<LeanPromise>& lean_promises) {
    const WireRange range(spec, grade, requirement, tables, half_turn_tolerance, lean_promises);
    const demand::LengthRange out{range.end(-1), range.end(1)};
    if (out.smallest == out.largest) return std::nullopt;
    return out;
}

}  // namespace seatload::sheet
