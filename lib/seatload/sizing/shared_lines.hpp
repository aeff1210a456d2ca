// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <span>
#include <vector>

#include <seatload/sizing/cut.hpp>
#include <seatload/sizing/rule_set.hpp>
#include <seatload/sizing/shared_grid.hpp>

namespace seatload::sizing {

/// The rules of one space in play for one kind of ends, by what they hang on.
struct SharedRules {
    std::vector<const check::Rule*> of_diameter, of_coils;  ///< the free length does not matter
    std::vector<Cut> along_of_diameter, along_of_coils;     ///< it does

    SharedRules(const Space& space, spring::Ends ends, RuleSet asked) {
        const auto rules = check::rules();
        for (std::size_t i = 0; i < rules.size(); ++i) {
            if ((rule_at(i) & asked) == 0 || !rules[i].applies(space.demand, ends)) continue;
            const bool coils = rules[i].coils == check::Coils::matter;
            if (rules[i].along == check::Along::constant)
                (coils ? of_coils : of_diameter).push_back(&rules[i]);
            else
                (coils ? along_of_coils : along_of_diameter).emplace_back(rules[i], i);
        }
    }
};

/// Goes through the coils of one wire with one kind of ends, and finds the free lengths that keep the rules of every
/// space: on a line, where all but the free length stands, each rule leaves an interval.
class SharedLines {
  public:
    /// `asked` is one set of rules a space. All must outlive this.
    SharedLines(std::span<const Space* const> spaces, const SharedGrid& grid, const tolerance::Tables& tables,
                const WirePlaces& wire, spring::Ends ends, std::span<const RuleSet> asked)
        : spaces_(spaces), grid_(grid), tables_(tables), wire_(wire), ends_(ends) {
        for (std::size_t i = 0; i < spaces.size(); ++i) rules_.emplace_back(*spaces[i], ends, asked[i]);
    }

    /// Calls `take(coils, interval)` for each line that keeps some; `coils` is the same coil body under each space.
    /// Ends when `take` returns false.
    template <class Take>
    void each(const Take& take) {
        const Interval all{0, static_cast<long>(grid_.free_lengths.size())};
        for (const double D : mean_diameters_of(spaces_, wire_)) {
            std::vector<check::Coil> coils = coils_at(D);
            if (!all_pass(&SharedRules::of_diameter, coils)) continue;
            const Interval of_diameter = narrowed(all, &SharedRules::along_of_diameter, coils);
            if (of_diameter.from >= of_diameter.to) continue;
            for (const double nt : grid_.total_coils) {
                for (check::Coil& coil : coils) coil.set_total_coils(nt);
                // Without active coils there is no spring to measure.
                if (coils[0].active_coils <= 0.0 || !all_pass(&SharedRules::of_coils, coils)) continue;
                const Interval fits = narrowed(of_diameter, &SharedRules::along_of_coils, coils);
                if (fits.from < fits.to && !take(coils, fits)) return;
            }
        }
    }

  private:
    std::vector<check::Coil> coils_at(double mean_diameter) const {
        std::vector<check::Coil> coils;
        coils.reserve(spaces_.size());
        for (std::size_t i = 0; i < spaces_.size(); ++i)
            coils.emplace_back(spaces_[i]->demand, spaces_[i]->wires[wire_[i]].numbers, tables_, mean_diameter, ends_,
                               grid_.total_coils.front());
        return coils;
    }

    bool all_pass(std::vector<const check::Rule*> SharedRules::*part, std::span<const check::Coil> coils) {
        for (std::size_t i = 0; i < coils.size(); ++i)
            for (const check::Rule* rule : rules_[i].*part)
                if (!check::passes(*rule, coils[i], 0.0)) return false;
        return true;
    }

    Interval narrowed(Interval in, std::vector<Cut> SharedRules::*part, std::span<const check::Coil> coils) {
        for (std::size_t i = 0; i < coils.size(); ++i)
            for (Cut& cut : rules_[i].*part) {
                cut.find(coils[i], grid_.free_lengths);
                in = {std::max(in.from, cut.passed().from), std::min(in.to, cut.passed().to)};
                if (in.from >= in.to) return in;
            }
        return in;
    }

    std::span<const Space* const> spaces_;
    const SharedGrid& grid_;
    const tolerance::Tables& tables_;
    const WirePlaces& wire_;
    spring::Ends ends_;
    std::vector<SharedRules> rules_;
};

}  // namespace seatload::sizing
