// SPDX-License-Identifier: MIT
#include <seatload/sizing/held_seat.hpp>

#include <algorithm>

#include <seatload/check/evaluation.hpp>

namespace seatload::sizing {
namespace {

/// Whether a candidate of the held seat breaks the limit on buckling where the seat slides.
bool buckles(const Candidate& c, const Space& space, const demand::Requirement& sliding,
             const tolerance::Tables& tables) {
    const WireOption& wire = space.wires[c.wire];
    const spring::Spring s{wire.size.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm, c.ends,
                           sliding.hand};
    const auto evaluation = check::evaluate(s, space.grades[wire.grade], sliding, tables);
    if (!evaluation) return false;
    return std::any_of(evaluation->verdicts.begin(), evaluation->verdicts.end(),
                       [](const check::Verdict& v) { return v.rule->id == "buckling" && !v.passed; });
}

}  // namespace

std::optional<HeldSeat> held_seat(const demand::Requirement& requirement, const wire::Catalogue& catalogue,
                                  const tolerance::Tables& tables, const SearchOptions& options) {
    if (requirement.space.seats != demand::Seats::slides) return std::nullopt;
    demand::Requirement held = requirement;
    held.space.seats = demand::Seats::fixed;
    const Space space = search_space(held, catalogue);
    SearchOptions how = options;
    how.counts_rejections = false;
    const Census census = search(space, tables, how);
    if (census.fit == 0) return std::nullopt;
    const bool all_buckle = std::all_of(census.best.begin(), census.best.end(), [&](const auto& best) {
        return !best || buckles(*best, space, requirement, tables);
    });
    return HeldSeat{census.fit, all_buckle};
}

}  // namespace seatload::sizing
