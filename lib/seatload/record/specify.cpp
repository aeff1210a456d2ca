// SPDX-License-Identifier: MIT
#include <seatload/record/specify.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/check/numbers.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/tolerance/en15800.hpp>

namespace seatload::record {
namespace {

constexpr int kCoarsestGrade = 3;
constexpr double kStepsPerNewton = 100.0;  // loads and their deviations go on a sheet in 0.01 N
constexpr double kFinestSteps = 1e5;

/// The smaller a load, the finer its step: a tenth of 0.01 N below 1 N, a hundredth below 0.1 N.
double steps_per_newton(Force load) {
    double steps = kStepsPerNewton;
    for (double least = 1.0; in_newton(load) < least && steps < kFinestSteps; least /= 10.0) steps *= 10.0;
    return steps;
}

// Divided, not multiplied by 0.01, so that 0.69 N is the double nearest to 0.69.
Force rounded_down(Force force, double steps) { return std::floor(in_newton(force) * steps + 1e-6) / steps * newton; }
Force rounded(Force force, double steps) { return std::round(in_newton(force) * steps) / steps * newton; }

Force load_tolerance(const spring::Spring& s, Force load, int grade) {
    const double n = spring::active_coils(s.ends, s.total_coils);
    return tolerance::load_tolerance(s.wire_diameter, s.mean_diameter, n, load, grade);
}

/// The load ordered at a length, between what must be given cold and what may be given at most.
LoadAtLength ordered_load(const spring::Spring& s, Length length, Force load, const demand::LoadBand& band,
                          double kept_share, int unbounded_grade) {
    const Force coarse = load_tolerance(s, load, kCoarsestGrade);
    const Force usual = load_tolerance(s, load, unbounded_grade);
    const Force down = band.at_least ? std::min(load - *band.at_least / kept_share, coarse) : usual;
    const Force up = band.at_most ? std::min(*band.at_most - load, coarse) : usual;
    LoadAtLength ordered;
    ordered.length = length;
    const double steps = steps_per_newton(load);
    ordered.nominal = rounded(load, steps);
    // Deviations count from the rounded nominal, so that rounding it never widens what is accepted.
    ordered.plus = rounded_down(std::max(0.0 * newton, load + up - ordered.nominal), steps);
    ordered.minus = rounded_down(std::max(0.0 * newton, ordered.nominal - (load - down)), steps);
    ordered.grade = load_grade_inside(s, ordered.nominal, ordered.plus, ordered.minus);
    return ordered;
}

}  // namespace

std::optional<int> load_grade_inside(const spring::Spring& s, Force load, Force plus, Force minus) {
    for (int grade = kCoarsestGrade; grade >= 1; --grade)
        if (load_tolerance(s, load, grade) <= std::min(plus, minus) + newton / steps_per_newton(load)) return grade;
    return std::nullopt;
}

void order_loads(Spec& spec, const check::WireNumbers& wire, int unbounded_grade) {
    const spring::Spring& s = spec.spring;
    const double n = spring::active_coils(s.ends, s.total_coils);
    const Rate rate = spring::rate(wire.shear_modulus_mpa * MPa, s.wire_diameter, s.mean_diameter, n);
    const double kept = wire.hot_share * wire.load_kept;
    const auto order = [&](Length length, const demand::LoadBand& band) {
        return ordered_load(s, length, rate * (s.free_length - length), band, kept, unbounded_grade);
    };
    spec.seated = order(spec.space.seated_height, spec.seated_demand);
    spec.full_travel = order(spec.space.full_travel_height, spec.full_travel_demand);
}

void order_tips(Spec& spec, const check::Evaluation& evaluation) {
    const auto& tips = evaluation.tips;
    // Cleared of what turns leave in the last binary digits: it goes into the file of the spec.
    spec.limits.tips_degrees = tips ? std::optional(std::round(360e6 * tips->ordered) / 1e6) : std::nullopt;
}

Spec with_tips_ordered(Spec spec, const wire::Grade& grade, const tolerance::Tables& tables) {
    if (spec.limits.tips_degrees) return spec;
    const auto evaluation = check::evaluate(spec.spring, grade, requirement_of(spec), tables);
    if (evaluation) order_tips(spec, *evaluation);
    return spec;
}

Spec specify(const demand::Requirement& requirement, const sizing::Space& space, const sizing::Alternative& alternative,
             std::string letter) {
    const sizing::Candidate& c = alternative.candidate;
    const sizing::WireOption& wire = space.wires[c.wire];
    Spec spec;
    spec.identity = requirement.identity;
    spec.revisions = requirement.revisions;
    spec.title = usual_title(requirement.identity);
    spec.alternative = std::move(letter);
    spec.why = alternative.why;
    spec.wire_grade = space.grades[wire.grade].id;
    const auto& own = requirement.wire.own_grades;
    const auto mine =
        std::find_if(own.begin(), own.end(), [&](const wire::Grade& g) { return g.id == spec.wire_grade; });
    if (mine != own.end()) spec.own_grade = *mine;
    spec.spring = {wire.size.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm, c.ends,
                   requirement.hand};
    spec.bore_rules = requirement.space.bore.has_value() || !requirement.space.rod.has_value();
    spec.space = requirement.space;
    spec.seated_demand = requirement.seated_load;
    spec.full_travel_demand = requirement.full_travel_load;
    order_loads(spec, wire.numbers, requirement.load_grade);
    spec.diameter_grade = requirement.limits.diameter_grade;
    spec.squareness_grade = 2;
    spec.duty = requirement.duty;
    spec.surroundings = requirement.surroundings;
    spec.limits = requirement.limits;
    spec.quantities = requirement.quantities;
    spec.finish = requirement.finish;
    spec.certificate = requirement.certificate;
    spec.notes = requirement.notes;
    return spec;
}

std::string usual_title(const demand::Identity& identity) { return "Compression spring, " + identity.position; }

demand::Revision first_issue(const demand::Identity& identity, const std::string& date) {
    return {identity.revision, date, "first issue", identity.creator};
}

demand::Requirement requirement_of(const Spec& spec) {
    demand::Requirement r;
    r.identity = spec.identity;
    r.revisions = spec.revisions;
    r.space = spec.space;
    r.duty = spec.duty;
    r.surroundings = spec.surroundings;
    r.limits = spec.limits;
    r.certificate = spec.certificate;
    r.ends = {spec.spring.ends};
    r.hand = spec.spring.hand;
    r.seated_load = spec.seated_demand;
    r.full_travel_load = spec.full_travel_demand;
    if (spec.own_grade) r.wire.own_grades = {*spec.own_grade};
    return r;
}

}  // namespace seatload::record
