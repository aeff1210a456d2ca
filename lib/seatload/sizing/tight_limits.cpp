// SPDX-License-Identifier: MIT
#include <seatload/sizing/tight_limits.hpp>

#include <algorithm>
#include <tuple>

#include <seatload/check/rule.hpp>

namespace seatload::sizing {
namespace {

constexpr double kHundredth = 0.01;

double most_room(const Census& census) {
    double most = 0.0;
    for (const MapRow& row : census.map)
        for (const MapCell& cell : row.cells) most = std::max(most, cell.room_in_tenths);
    return most;
}

/// Room of the spring that is offered first, as what_if() has it.
double room_of_first(const Census& census, const demand::Requirement& requirement) {
    const Candidate* first = first_ranked(census, requirement.preference.order);
    return first == nullptr ? 0.0 : room_in_tenths(first->merit.tolerance_room);
}

/// Whether one of the rules that it can make pass is asked at all.
bool is_in_play(const Easing& easing, const Space& space) {
    const auto rules = check::rules();
    return std::any_of(rules.begin(), rules.end(), [&](const check::Rule& rule) {
        return std::find(easing.mends.begin(), easing.mends.end(), rule.id) != easing.mends.end() &&
               std::any_of(space.ends.begin(), space.ends.end(),
                           [&](spring::Ends ends) { return rule.applies(space.demand, ends); });
    });
}

/// Whether easing the number can change the answer: it shifts loads, space or grid, or a rule that it mends keeps out
/// springs that nothing else does.
bool can_matter(const Easing& easing, const Census& census) {
    if (!easing.id.starts_with("limits.") || easing.mends_more) return true;
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (census.rejections[i].alone > 0 &&
            std::find(easing.mends.begin(), easing.mends.end(), rules[i].id) != easing.mends.end())
            return true;
    return false;
}

Eased searched(const Easing& easing, const demand::Requirement& requirement, const Setting& setting) {
    Eased found{&easing, *easing.now(requirement), eased(easing, requirement, kHundredth)};
    demand::Requirement changed = requirement;
    easing.set(changed, found.eased);
    SearchOptions how = setting.options;
    how.counts_rejections = false;
    const Census census = search(search_space(changed, setting.catalogue), setting.tables, how);
    found.fit = census.fit;
    found.room_in_tenths = room_of_first(census, requirement);
    return found;
}

/// The requirement, on a coarser grid when it is fine and many springs fit.
demand::Requirement on_fit_grid(demand::Requirement requirement, const Census& census, const Setting& setting) {
    constexpr unsigned long long kFine = 1'000'000'000;
    const unsigned long long enough = kFew / 10;
    unsigned long long size = census.looked_at, fit = census.fit;
    for (bool is_length = true; size > kFine && census.fit >= kFew && fit / 2 >= enough; is_length = !is_length) {
        Length& step = is_length ? requirement.grid.free_length_step : requirement.grid.mean_diameter_step;
        step = 2.0 * step;
        size = search_space(requirement, setting.catalogue).size();
        fit /= 2;
    }
    return requirement;
}

}  // namespace

bool are_few(const Census& census) {
    return census.fit > 0 && (census.fit < kFew || most_room(census) < kLittleRoomInTenths);
}

TightLimits tight_limits(const demand::Requirement& requirement, const Census& census, const Setting& setting) {
    const demand::Requirement asked = on_fit_grid(requirement, census, setting);
    const Space space = search_space(asked, setting.catalogue);
    const bool is_coarser = space.size() != census.looked_at;
    const Census found = is_coarser ? search(space, setting.tables, setting.options) : census;
    TightLimits tight{
        asked.grid, is_coarser, found.fit, room_of_first(found, asked), census.fit, room_of_first(census, requirement),
        {},         {}};
    for (const Easing& easing : easings()) {
        const auto now = easing.now(asked);
        if (!now || !is_in_play(easing, space) || eased(easing, asked, kHundredth) == *now) continue;
        if (can_matter(easing, found)) {
            const Eased one = searched(easing, asked, setting);
            if (one.fit > tight.fit || one.room_in_tenths > tight.room_in_tenths) {
                tight.holding.push_back(one);
                continue;
            }
        }
        tight.others.push_back(&easing);
    }
    std::stable_sort(tight.holding.begin(), tight.holding.end(), [](const Eased& a, const Eased& b) {
        return std::tuple(-a.room_in_tenths, b.fit) < std::tuple(-b.room_in_tenths, a.fit);
    });
    return tight;
}

}  // namespace seatload::sizing
