// SPDX-License-Identifier: MIT
#include <seatload/record/makers_adjustment.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>

namespace seatload::record {
namespace {

constexpr double kMostTurnsAdjusted = 2.0;
constexpr double kTurnStep = 0.5;

demand::Requirement requirement_with(const Spec& spec, const wire::Grade& grade, bool is_catalogued) {
    demand::Requirement r = requirement_of(spec);
    r.limits.tips_degrees.reset();  // of the spring as it was; of another they are ordered anew
    r.wire.own_grades.clear();
    r.wire.grades.clear();
    if (is_catalogued)
        r.wire.grades = {grade.id};
    else
        r.wire.own_grades = {grade};
    r.wire.diameters = {spec.spring.wire_diameter};
    r.load_grade = kUsualGrade;
    return r;
}

bool may_adjust(const Spec& spec, Adjustable what) {
    return std::find(spec.adjustable.begin(), spec.adjustable.end(), what) != spec.adjustable.end();
}

/// The grid of what the maker may still adjust; all else is a single point (an axis whose step is its value).
void set_grid(demand::Requirement& r, const Spec& spec, const AskedChanges& asked) {
    const spring::Spring& s = spec.spring;
    r.grid.mean_diameter = demand::LengthRange{s.mean_diameter, s.mean_diameter};
    r.grid.mean_diameter_step = s.mean_diameter;
    const bool coils = !asked.total_coils && (may_adjust(spec, Adjustable::coils_and_wire) ||
                                              may_adjust(spec, Adjustable::coils_and_diameter));
    const double room = coils ? kMostTurnsAdjusted : 0.0;
    // Half turns away from what is on the sheet, so that quarter turns stay quarter turns.
    const bool is_even = std::fmod(s.total_coils, kTurnStep) == 0.0;
    r.grid.total_coils = {std::max(s.total_coils - room, kTurnStep), s.total_coils + room};
    r.grid.total_coils_step = !coils ? s.total_coils : is_even ? kTurnStep : 0.5 * kTurnStep;
    if (!asked.free_length && may_adjust(spec, Adjustable::free_length)) return;
    r.grid.free_length = demand::LengthRange{s.free_length, s.free_length};
    r.grid.free_length_step = s.free_length;
}

}  // namespace

std::optional<JudgedSpec> adjusted(const JudgedSpec& from, bool is_catalogued, const Offer& offer,
                                   const JudgingBasis& basis) {
    demand::Requirement r = requirement_with(from.spec, from.grade, is_catalogued);
    set_grid(r, from.spec, offer.changes);
    r.limits.tips_degrees = offer.changes.tips_degrees;
    const sizing::Space space = sizing::search_space(r, basis.wires);
    const auto found = sizing::spread(space, sizing::search(space, basis.tolerances), 1);
    if (found.empty()) return std::nullopt;
    Spec spec = from.spec;
    spec.spring.total_coils = found.front().candidate.total_coils;
    spec.spring.free_length = found.front().candidate.free_length_mm * mm;
    auto better = judged_spec(std::move(spec), from.grade, basis.tolerances, Anew{offer.changes.tips_degrees});
    SEATLOAD_ASSERT(better.has_value());
    return std::move(better).value();
}

}  // namespace seatload::record
