// SPDX-License-Identifier: MIT
#include <seatload/sizing/family.hpp>

#include <algorithm>
#include <tuple>

namespace seatload::sizing {
namespace {

/// What tells one wire from another, apart from what a requirement makes of it.
auto key_of(const Space& space, std::size_t wire) {
    const check::WireNumbers& n = space.wires[wire].numbers;
    return std::tuple(std::string_view(space.grades[space.wires[wire].grade].id), n.d_mm, n.tensile_strength_mpa,
                      n.shear_modulus_mpa, n.young_modulus_mpa, n.density_t_mm3);
}

/// The places of a space's wires, by key.
std::vector<std::size_t> sorted_wires(const Space& space) {
    std::vector<std::size_t> places(space.wires.size());
    for (std::size_t i = 0; i < places.size(); ++i) places[i] = i;
    std::stable_sort(places.begin(), places.end(),
                     [&](std::size_t a, std::size_t b) { return key_of(space, a) < key_of(space, b); });
    return places;
}

/// The places of a wire of the first space in all of them; fewer when one lacks it.
WirePlaces places_in_all(std::span<const Space* const> spaces, std::span<const std::vector<std::size_t>> sorted,
                         std::size_t wire) {
    const auto key = key_of(*spaces[0], wire);
    WirePlaces places;
    for (std::size_t i = 0; i < spaces.size(); ++i) {
        const auto at = std::partition_point(sorted[i].begin(), sorted[i].end(),
                                             [&](std::size_t place) { return key_of(*spaces[i], place) < key; });
        if (at == sorted[i].end() || key_of(*spaces[i], *at) != key) break;
        places.push_back(*at);
    }
    return places;
}

std::optional<CommonWire> common_wire(Family family, WirePlaces places) {
    CommonWire common;
    const WireOption& wire = family[0].space.wires[places[0]];
    common.grade = family[0].space.grades[wire.grade].id;
    common.diameter = wire.size.diameter;
    double cost = 0.0;
    for (std::size_t i = 0; i < family.size(); ++i) {
        const auto best = best_of_wire(family[i].space, family[i].census, places[i]);
        if (!best) return std::nullopt;
        common.springs.push_back(*best);
        common.merit = i == 0 ? best->merit : worse_of_each(common.merit, best->merit);
        cost += best->merit.cost;
    }
    common.merit.cost = cost;
    common.places = std::move(places);
    return common;
}

}  // namespace

std::vector<WirePlaces> wires_of_all(std::span<const Space* const> spaces) {
    std::vector<WirePlaces> all;
    if (spaces.empty()) return all;
    std::vector<std::vector<std::size_t>> sorted;
    for (const Space* space : spaces) sorted.push_back(sorted_wires(*space));
    for (const std::size_t wire : sorted[0])
        if (WirePlaces places = places_in_all(spaces, sorted, wire); places.size() == spaces.size())
            all.push_back(std::move(places));
    return all;
}

std::optional<Candidate> best_of_wire(const Space& space, const Census& census, std::size_t wire) {
    std::optional<Candidate> best;
    for (std::size_t e = 0; e < space.ends.size(); ++e)
        if (const auto& found = census.best[wire * space.ends.size() + e];
            found && (!best || better(found->merit, best->merit, space.demand.preference.order)))
            best = found;
    return best;
}

Merit worse_of_each(const Merit& a, const Merit& b) {
    Merit worse;
    worse.tolerance_room = std::min(a.tolerance_room, b.tolerance_room);
    worse.stress_margin = std::min(a.stress_margin, b.stress_margin);
    worse.cost = std::max(a.cost, b.cost);
    worse.release_n = std::max(a.release_n, b.release_n);
    worse.leans = a.leans || b.leans;
    worse.leans_too_far = a.leans_too_far || b.leans_too_far;
    return worse;
}

std::vector<CommonWire> common_wires(Family family) {
    std::vector<const Space*> spaces;
    for (const Member& member : family) spaces.push_back(&member.space);
    std::vector<CommonWire> wires;
    for (WirePlaces& places : wires_of_all(spaces))
        if (auto common = common_wire(family, std::move(places))) wires.push_back(std::move(*common));
    std::stable_sort(wires.begin(), wires.end(),
                     [](const CommonWire& a, const CommonWire& b) { return better(a.merit, b.merit); });
    return wires;
}

}  // namespace seatload::sizing
