// SPDX-License-Identifier: MIT
#include "every_combination.hpp"

#include <seatload/check/rule.hpp>

namespace seatload::test {
namespace {

/// Indices of the rules a combination breaks. A spring without active coils has no rate: the coil count rejects it, and
/// nothing else can be asked of it.
std::vector<std::size_t> broken_rules(const check::Coil& coil, double free_length) {
    std::vector<std::size_t> broken;
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (coil.active_coils <= 0.0 && rules[i].id != "coils_fewest") continue;
        if (rules[i].applies(coil.demand, coil.ends) && !check::passes(rules[i], coil, free_length))
            broken.push_back(i);
    }
    return broken;
}

void look_at(PlainCount& count, std::optional<sizing::Candidate>& best, std::size_t wire, const check::Coil& coil,
             double free_length) {
    ++count.looked_at;
    const auto broken = broken_rules(coil, free_length);
    for (const std::size_t rule : broken) ++*count.rejections[rule].all;
    if (broken.size() == 1 && coil.active_coils > 0.0) ++count.rejections[broken.front()].alone;
    if (!broken.empty()) return;
    ++count.fit;
    const sizing::Merit merit = sizing::merit(coil, free_length);
    auto& [fit, room] = count.at_diameters[{coil.wire.d_mm, coil.D_mm}];
    room = fit == 0 ? sizing::room_in_tenths(merit.tolerance_room)
                    : std::max(room, sizing::room_in_tenths(merit.tolerance_room));
    ++fit;
    if (!best || sizing::better(merit, best->merit))
        best = sizing::Candidate{wire, coil.ends, coil.D_mm, coil.total_coils, free_length, merit};
}

}  // namespace

PlainCount count_every_combination(const sizing::Space& space, const tolerance::Tables& tables) {
    PlainCount count;
    count.rejections.assign(check::rules().size(), {0, 0});
    count.best.resize(space.wires.size() * space.ends.size());
    for (std::size_t w = 0; w < space.wires.size(); ++w)
        for (std::size_t e = 0; e < space.ends.size(); ++e)
            for (long d = 0; d < space.wires[w].mean_diameters.count; ++d)
                for (long n = 0; n < space.total_coils.count; ++n)
                    for (long l = 0; l < space.free_lengths.count; ++l) {
                        const check::Coil coil(space.demand, space.wires[w].numbers, tables,
                                               space.wires[w].mean_diameters.at(d), space.ends[e],
                                               space.total_coils.at(n));
                        look_at(count, count.best[w * space.ends.size() + e], w, coil, space.free_lengths.at(l));
                    }
    return count;
}

}  // namespace seatload::test
