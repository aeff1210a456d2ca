// SPDX-License-Identifier: MIT
#include <seatload/sizing/shared_spring.hpp>

#include <algorithm>
#include <ranges>
#include <tuple>

#include <seatload/check/tips.hpp>
#include <seatload/sizing/shared_lines.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

/// Of equally good ones that of the smaller coil, then of fewer coils.
bool precedes(const SharedSpring& a, const SharedSpring& b) {
    if (better(a.merit, b.merit)) return true;
    if (better(b.merit, a.merit)) return false;
    const auto key = [](const SharedSpring& s) {
        return std::tuple(s.in_each[0].mean_diameter_mm, s.in_each[0].total_coils);
    };
    return key(a) < key(b);
}

/// Tolerance room towards the nearest lower and upper limit of all requirements.
Rooms least_rooms(std::span<const check::Coil> coils, double free_length) {
    Rooms least;
    for (const check::Coil& coil : coils) {
        const Rooms rooms = tolerance_rooms(coil, free_length);
        least.below = std::min(least.below, rooms.below);
        least.above = std::min(least.above, rooms.above);
    }
    return least;
}

/// The lengths up to which none of the coils leans too far, when there are such.
std::span<const double> least_leaning(std::span<const check::Coil> coils, std::span<const double> lengths) {
    const auto end = std::ranges::partition_point(lengths, [&](double L0) {
        return std::ranges::none_of(coils, [&](const check::Coil& coil) { return check::leans_too_far(coil, L0); });
    });
    return end == lengths.begin() ? lengths : lengths.first(static_cast<std::size_t>(end - lengths.begin()));
}

double tenths_of(std::span<const check::Coil> coils, double L0) {
    const Rooms rooms = least_rooms(coils, L0);
    return room_in_tenths(rooms.least());
}

/// Of the free lengths with as many tenths of room as there can be the shortest, which has the most stress margin. The
/// least room below grows with the free length and the least above falls, as each of them does.
double roomiest(std::span<const check::Coil> coils, std::span<const double> lengths) {
    const auto tenths = [&](double L0) { return tenths_of(coils, L0); };
    auto peak = std::ranges::partition_point(lengths.first(lengths.size() - 1), [&](double L0) {
        const Rooms rooms = least_rooms(coils, L0);
        return rooms.below < rooms.above;
    });
    if (peak != lengths.begin() && tenths(*(peak - 1)) >= tenths(*peak)) --peak;
    const double most = tenths(*peak);
    return *std::partition_point(lengths.begin(), peak, [&](double L0) { return tenths(L0) < most; });
}

/// By the classes of Standing, lengths that lean too far are no worse than the others once these have but little room.
double best_free_length(std::span<const check::Coil> coils, std::span<const double> lengths) {
    const double upright = roomiest(coils, least_leaning(coils, lengths));
    return tenths_of(coils, upright) >= kFewKeepTenths ? upright : roomiest(coils, lengths);
}

SharedSpring shared_spring(std::span<const check::Coil> coils, const WirePlaces& wire, double L0) {
    SharedSpring spring;
    for (std::size_t i = 0; i < coils.size(); ++i) {
        const check::Coil& coil = coils[i];
        spring.in_each.push_back({wire[i], coil.ends, coil.D_mm, coil.total_coils, L0, merit(coil, L0)});
        const Merit& one = spring.in_each.back().merit;
        spring.merit = i == 0 ? one : worse_of_each(spring.merit, one);
    }
    return spring;
}

/// Whether every requirement has a spring of a wire with a kind of ends.
bool serves_all(Family family, const WirePlaces& wire, spring::Ends ends) {
    for (std::size_t i = 0; i < family.size(); ++i) {
        const auto& all = family[i].space.ends;
        const auto at = static_cast<std::size_t>(std::find(all.begin(), all.end(), ends) - all.begin());
        if (!family[i].census.best[wire[i] * all.size() + at]) return false;
    }
    return true;
}

/// What one wire with one kind of ends has.
struct Part {
    unsigned long long fit = 0;
    std::optional<SharedSpring> best;
};

Part look_through(std::span<const Space* const> spaces, const SharedGrid& grid, const tolerance::Tables& tables,
                  const WirePlaces& wire, spring::Ends ends) {
    const std::vector<RuleSet> asked(spaces.size(), kAllRules);
    Part part;
    SharedLines lines(spaces, grid, tables, wire, ends, asked);
    lines.each([&](std::span<const check::Coil> coils, Interval fits) {
        const auto count = static_cast<std::size_t>(fits.to - fits.from);
        part.fit += count;
        const auto lengths = std::span(grid.free_lengths).subspan(static_cast<std::size_t>(fits.from), count);
        SharedSpring found = shared_spring(coils, wire, best_free_length(coils, lengths));
        if (!part.best || precedes(found, *part.best)) part.best = std::move(found);
        return true;
    });
    return part;
}

Apart apart(Family family, const SharedGrid& grid, unsigned long long looked_at) {
    const bool same_hand = std::all_of(family.begin(), family.end(), [&](const Member& member) {
        return member.requirement.hand == family[0].requirement.hand;
    });
    if (!same_hand) return Apart::hand;
    if (grid.wires.empty()) return Apart::wire;
    if (grid.ends.empty()) return Apart::ends;
    if (grid.total_coils.empty()) return Apart::total_coils;
    if (grid.free_lengths.empty()) return Apart::free_length;
    return looked_at == 0 ? Apart::mean_diameter : Apart::nothing;
}

unsigned long long size_of(std::span<const Space* const> spaces, const SharedGrid& grid) {
    unsigned long long diameters = 0;
    for (const WirePlaces& wire : grid.wires) diameters += mean_diameters_of(spaces, wire).size();
    return diameters * grid.ends.size() * grid.total_coils.size() * grid.free_lengths.size();
}

}  // namespace

SharedCensus shared_springs(Family family, const tolerance::Tables& tables, const SearchOptions& options) {
    std::vector<const Space*> spaces;
    for (const Member& member : family) spaces.push_back(&member.space);
    const SharedGrid grid = shared_grid(spaces);
    SharedCensus census;
    census.looked_at = size_of(spaces, grid);
    census.apart = apart(family, grid, census.looked_at);
    if (census.apart != Apart::nothing) return census;
    std::vector<Part> parts(grid.parts());
    share_out(parts.size(), worker_count(options.threads, parts.size()), [&](std::size_t i, std::size_t) {
        const WirePlaces& wire = grid.wires[i / grid.ends.size()];
        const spring::Ends ends = grid.ends[i % grid.ends.size()];
        if (serves_all(family, wire, ends)) parts[i] = look_through(spaces, grid, tables, wire, ends);
    });
    for (Part& part : parts) {
        census.fit += part.fit;
        if (part.best && (!census.best || better(part.best->merit, census.best->merit)))
            census.best = std::move(part.best);
    }
    return census;
}

}  // namespace seatload::sizing
