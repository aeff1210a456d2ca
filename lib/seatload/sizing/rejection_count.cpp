// SPDX-License-Identifier: MIT
#include <seatload/sizing/rejection_count.hpp>

#include <seatload/sizing/cut.hpp>

namespace seatload::sizing {
namespace {

using Count = unsigned long long;

/// The rules in play, by whether the number of coils matters.
struct Askers {
    std::vector<Cut> of_diameter, of_coils;

    Askers(const Space& space, spring::Ends ends) {
        const auto rules = check::rules();
        for (std::size_t i = 0; i < rules.size(); ++i) {
            if (!rules[i].applies(space.demand, ends)) continue;
            (rules[i].coils == check::Coils::matter ? of_coils : of_diameter).emplace_back(rules[i], i);
        }
    }
};

/// The free lengths a rule rejects on a line.
Count rejected(Cut& cut, const check::Coil& coil, std::span<const double> lengths) {
    if (cut.rule().along == check::Along::constant)
        return check::passes(cut.rule(), coil, 0.0) ? 0 : static_cast<Count>(lengths.size());
    cut.find(coil, lengths);
    return static_cast<Count>(lengths.size()) - static_cast<Count>(cut.passed().to - cut.passed().from);
}

}  // namespace

std::vector<Count> count_rejections(const Space& space, std::span<const double> lengths,
                                    const tolerance::Tables& tables, const WireOption& wire, spring::Ends ends) {
    const auto rules = check::rules();
    std::vector<Count> counts(rules.size());
    Askers askers(space, ends);
    for (long D = 0; D < wire.mean_diameters.count && space.total_coils.count > 0; ++D) {
        check::Coil coil(space.demand, wire.numbers, tables, wire.mean_diameters.at(D), ends, space.total_coils.at(0));
        Count windable = 0;
        for (long nt = 0; nt < space.total_coils.count; ++nt) {
            coil.set_total_coils(space.total_coils.at(nt));
            const bool is_windable = coil.active_coils > 0.0;
            windable += is_windable ? 1 : 0;
            for (Cut& cut : askers.of_coils) {
                if (is_windable)
                    counts[cut.rule_index()] += rejected(cut, coil, lengths);
                else if (cut.rule().id == "coils_fewest")
                    counts[cut.rule_index()] += lengths.size();
            }
        }
        if (windable == 0) continue;
        for (Cut& cut : askers.of_diameter) counts[cut.rule_index()] += windable * rejected(cut, coil, lengths);
    }
    return counts;
}

}  // namespace seatload::sizing
