// SPDX-License-Identifier: MIT
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <vector>

#include <seatload/check/rule.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/sizing/block.hpp>
#include <seatload/sizing/known_edge.hpp>
#include <seatload/sizing/overlap.hpp>
#include <seatload/sizing/rule_set.hpp>
#include <seatload/spring/coils.hpp>

namespace seatload::sizing {

/// Goes through the coils of one wire with one kind of ends, and passes over whole blocks of mean diameters and coils
/// in which nothing can fit.
///
/// A rule says how its answer follows the mean diameter and the coils (check::Trend); so no coil of a block passes more
/// free lengths than the one at its best corner, and none fewer than the one at its worst. What even the best corners
/// leave to nobody is skipped; a rule that passes all that is left even at the worst corner is settled for the whole
/// block and not asked again within it; the rest is halved, down to a few lines, where rules are asked as they stand.
/// Corners are asked with a slack (check::passes_moved) far above what rounding does, towards asking again rather than
/// skipping. What is known of the block around, of the line with as many coils beside it, and of a mean diameter
/// whatever the coils, spares most questions.
///
/// The visitor is told of every line on which something is left:
///   kOneMayFail            whether what only one rule rejects counts as left
///   is_done()              ends the walk
///   line(coil, D, overlap) a line: the index of its mean diameter, and what the rules leave
///   settled(block, overlap) lines that all leave the same; false to be told of them one by one
template <class Visitor>
class BlockWalk {
  public:
    /// `ends` is an index into Space::ends.
    BlockWalk(const Space& space, const GridValues& grid, const tolerance::Tables& tables, const WireOption& wire,
              std::size_t ends, RuleSet asked, Visitor& visitor)
        : space_(space),
          free_lengths_(grid.free_lengths),
          turns_(grid.turns_of_ends[ends]),
          tables_(tables),
          wire_(wire),
          ends_(space.ends[ends]),
          visitor_(visitor) {
        const auto all = check::rules();
        // Those that can be settled for whole blocks come first.
        rules_.reserve(all.size());
        for (const bool is_unclear : {false, true})
            for (std::size_t i = 0; i < all.size(); ++i)
                if ((rule_at(i) & asked) != 0 && all[i].applies(space.demand, ends_) && turns(all[i]) == is_unclear)
                    rules_.push_back({&all[i], i});
        SEATLOAD_ASSERT(rules_.size() < kMostRules);
    }

    void run() {
        Block all{0, wire_.mean_diameters.count, 0, space_.total_coils.count};
        // Without active coils there is no spring to measure.
        while (all.nt_from < all.nt_to && turns_[static_cast<std::size_t>(all.nt_from)].active <= 0.0) ++all.nt_from;
        if (all.lines() == 0 || free_lengths_.empty()) return;
        Hopes none;
        none.edge.fill(0);
        look_at(all, rule_at(rules_.size()) - 1, Overlap({0, static_cast<long>(free_lengths_.size())}), none);
    }

  private:
    static constexpr std::size_t kMostRules = 64;
    static constexpr long kFewLines = 32;  ///< so many are asked faster one by one than blocks of half of them are
    static constexpr long kNoEdge = -1;
    static constexpr double kOutwards = check::kInclusive;
    static constexpr double kInwards = -0.5 * check::kInclusive;

    struct Asked {
        const check::Rule* rule;
        std::size_t index;

        bool is_of_diameter() const {
            return rule->coils == check::Coils::do_not_matter && rule->along != check::Along::constant;
        }
    };

    /// What is remembered of a rule's answers.
    struct Memory {
        std::vector<long> edge;  ///< by number of coils, of the last diameter: the next one's lies close by
        /// Where the number of coils does not matter, what is known once is known for all of them: of each mean
        /// diameter, and of each range of them, by its middle.
        std::vector<KnownEdge> exact, kindest, harshest;
    };

    /// Where the kindest answers for a block cut, by rule, and at which corner they were given.
    struct Hopes {
        std::array<long, kMostRules> edge;
        RuleSet answered = 0;
    };

    static bool turns(const check::Rule& rule) {
        return rule.with_diameter == check::Trend::unclear || rule.with_coils == check::Trend::unclear;
    }

    Interval left(const Overlap& overlap) const {
        return Visitor::kOneMayFail ? overlap.nearly_passed() : overlap.passed();
    }
    static bool is_empty(const Interval& in) { return in.from >= in.to; }

    double free_length(long index) const { return free_lengths_[static_cast<std::size_t>(index)]; }

    /// Whether a rule's answer, `passes`, differs from the one for short springs.
    static bool is_changed(const check::Rule& rule, bool passes) {
        return passes != (rule.along != check::Along::from);
    }

    /// The first index within an interval at which a rule's answer differs from the one for short springs; the end when
    /// it does nowhere.
    template <class Passes>
    static long edge(const check::Rule& rule, Interval in, long guess, KnownEdge& known, const Passes& passes) {
        if (rule.along == check::Along::constant) return passes(in.from) ? in.from : in.to;
        return known.first_changed(in, guess, [&](long index) { return is_changed(rule, passes(index)); });
    }

    static void cut(Overlap& overlap, const Asked& asked, long edge) {
        if (asked.rule->along == check::Along::up_to)
            overlap.add_to(asked.index, edge);
        else
            overlap.add_from(asked.index, edge);
    }

    /// What a rule can be asked about a block.
    enum class Ask { nothing, kindest, corners, any_coil };
    Ask question(const check::Rule& rule, const Block& block, bool is_steady) const {
        using check::Trend;
        const Trend D = block.is_one_diameter() ? Trend::level : rule.with_diameter;
        const Trend nt = block.is_one_coil_count() ? Trend::level : rule.with_coils;
        if (D == Trend::level && nt == Trend::level) return Ask::any_coil;
        if (D != Trend::unclear && nt != Trend::unclear && is_steady) return Ask::corners;
        return rule.kindest != nullptr ? Ask::kindest : Ask::nothing;
    }

    /// Looks at a block, of which `open` rules are not settled yet and `overlap` holds what the settled ones leave.
    void look_at(const Block& block, RuleSet open, Overlap overlap, const Hopes& around) {
        Corners corners(space_, wire_, tables_, ends_, turns_, block);
        const bool is_steady = claims_hold(corners.low());
        Hopes hopes;
        Overlap hopeful = overlap;
        Interval in = left(hopeful);
        for (RuleSet rest = open; rest != 0; rest &= rest - 1) {
            const auto i = static_cast<std::size_t>(std::countr_zero(rest));
            const Ask ask = question(*rules_[i].rule, block, is_steady);
            if (ask == Ask::nothing) continue;
            const long guess = (around.answered & rule_at(i)) != 0 ? around.edge[i] : in.from;
            hopes.edge[i] = hopeful_edge(i, ask, corners, block, in, guess);
            cut(hopeful, rules_[i], hopes.edge[i]);
            in = left(hopeful);
            if (is_empty(in)) return;
            hopes.answered |= rule_at(i);
        }
        for (RuleSet rest = hopes.answered; rest != 0; rest &= rest - 1) {
            const auto i = static_cast<std::size_t>(std::countr_zero(rest));
            const check::Rule& rule = *rules_[i].rule;
            const long at = std::clamp(hopes.edge[i], in.from, in.to);
            const Ask ask = question(rule, block, is_steady);
            if (ask != Ask::any_coil && !fails_all(rule, in, at) &&
                !(passes_all(rule, in, at) && pass_alike(i, ask, corners, block, at)))
                continue;
            cut(overlap, rules_[i], at);
            open &= ~rule_at(i);
        }
        overlap.clip(in);
        if (open == 0 && visitor_.settled(block, overlap)) return;
        if (open == 0 || block.lines() <= kFewLines) return look_at_lines(block, open, overlap, hopes);
        const auto [low, high] = halves(block, cut_across(block, open, corners));
        look_at(low, open, overlap, hopes);
        if (!visitor_.is_done()) look_at(high, open, overlap, hopes);
    }

    /// Across the mean diameters if the open rules are asked about those alone, across the coils if about those; else
    /// across what changes a spring's rate more, which is as 1/(D^3 n).
    Across cut_across(const Block& block, RuleSet open, Corners& corners) const {
        if (block.is_one_coil_count()) return Across::mean_diameters;
        if (block.is_one_diameter()) return Across::total_coils;
        bool diameters = false, coils = false;
        for (RuleSet rest = open; rest != 0; rest &= rest - 1) {
            const check::Rule& rule = *rules_[static_cast<std::size_t>(std::countr_zero(rest))].rule;
            diameters = diameters || rule.with_diameter != check::Trend::level;
            coils = coils || rule.with_coils != check::Trend::level;
        }
        if (diameters != coils) return diameters ? Across::mean_diameters : Across::total_coils;
        const double wider = corners.high().D_mm / corners.low().D_mm;
        const double longer = corners.high().active_coils / corners.low().active_coils;
        return wider * wider * wider >= longer ? Across::mean_diameters : Across::total_coils;
    }

    Memory& memory(std::size_t rule) {
        if (memory_.empty()) memory_.resize(rules_.size());
        return memory_[rule];
    }
    KnownEdge& known(std::size_t rule, std::vector<KnownEdge> Memory::*part, long place) {
        std::vector<KnownEdge>& all = memory(rule).*part;
        if (all.empty()) all.resize(static_cast<std::size_t>(wire_.mean_diameters.count));
        return all[static_cast<std::size_t>(place)];
    }
    static long middle(const Block& block) { return block.D_from + (block.D_to - block.D_from) / 2; }

    /// Where the kindest answer for any coil of a block cuts.
    long hopeful_edge(std::size_t i, Ask ask, Corners& corners, const Block& block, Interval in, long guess) {
        const check::Rule& rule = *rules_[i].rule;
        const bool is_of_diameter = rules_[i].is_of_diameter();
        KnownEdge nothing;
        if (ask == Ask::any_coil) {
            KnownEdge& one =
                is_of_diameter && block.is_one_diameter() ? known(i, &Memory::exact, block.D_from) : nothing;
            return edge(rule, in, guess, one,
                        [&](long at) { return check::passes(rule, corners.low(), free_length(at)); });
        }
        KnownEdge& one = is_of_diameter ? known(i, &Memory::kindest, middle(block)) : nothing;
        if (ask == Ask::kindest)
            return edge(rule, in, guess, one, [&](long at) {
                return check::passes_moved(rule.sense, rule.kindest(corners.low(), corners.high(), free_length(at)),
                                           kOutwards);
            });
        return edge(rule, in, guess, one, [&](long at) {
            return check::passes_moved(rule.sense, rule.measure(corners.best_for(rule), free_length(at)), kOutwards);
        });
    }

    static bool fails_all(const check::Rule& rule, Interval in, long edge) {
        return edge == (rule.along == check::Along::up_to ? in.from : in.to);
    }
    static bool passes_all(const check::Rule& rule, Interval in, long edge) {
        return edge == (rule.along == check::Along::up_to ? in.to : in.from);
    }
    /// Whether even the harshest answer for any coil of a block passes all that the kindest one lets pass.
    bool pass_alike(std::size_t i, Ask ask, Corners& corners, const Block& block, long edge) {
        const check::Rule& rule = *rules_[i].rule;
        if (ask == Ask::kindest && rule.harshest == nullptr) return false;
        const long last = rule.along == check::Along::up_to ? edge - 1 : edge;
        const auto passes = [&](long at) {
            return check::passes_moved(rule.sense,
                                       ask == Ask::kindest
                                           ? rule.harshest(corners.low(), corners.high(), free_length(at))
                                           : rule.measure(corners.worst_for(rule), free_length(at)),
                                       kInwards);
        };
        if (!rules_[i].is_of_diameter()) return passes(last);
        const auto changed = [&](long at) { return is_changed(rule, passes(at)); };
        return known(i, &Memory::harshest, middle(block)).has_changed(last, changed) == is_changed(rule, true);
    }

    static bool claims_hold(const check::Coil& narrowest) {
        const auto is_sound = [](const std::optional<double>& load) { return !load || *load >= 0.0; };
        const check::DemandNumbers& d = narrowest.demand;
        return narrowest.index > 1.0 && is_sound(d.seated_at_least_n) && is_sound(d.seated_at_most_n) &&
               is_sound(d.full_at_least_n) && is_sound(d.full_at_most_n);
    }

    void look_at_lines(const Block& block, RuleSet open, const Overlap& settled, const Hopes& hopes) {
        for (long D = block.D_from; D < block.D_to; ++D) {
            check::Coil coil(space_.demand, wire_.numbers, tables_, wire_.mean_diameters.at(D), ends_,
                             turns_[static_cast<std::size_t>(block.nt_from)]);
            for (long nt = block.nt_from; nt < block.nt_to && !visitor_.is_done(); ++nt) {
                coil.set_turns(turns_[static_cast<std::size_t>(nt)]);
                look_at_line(coil, D, nt, open, settled, hopes);
            }
        }
    }

    void look_at_line(const check::Coil& coil, long D, long nt, RuleSet open, Overlap overlap, const Hopes& hopes) {
        Interval in = left(overlap);
        for (RuleSet rest = open; rest != 0; rest &= rest - 1) {
            const auto i = static_cast<std::size_t>(std::countr_zero(rest));
            cut(overlap, rules_[i], line_edge(i, coil, D, nt, in, hopes));
            in = left(overlap);
            if (is_empty(in)) return;
        }
        visitor_.line(coil, D, overlap);
    }

    long line_edge(std::size_t i, const check::Coil& coil, long D, long nt, Interval in, const Hopes& hopes) {
        const check::Rule& rule = *rules_[i].rule;
        const auto passes = [&](long at) { return check::passes(rule, coil, free_length(at)); };
        if (rules_[i].is_of_diameter()) return edge(rule, in, hopes.edge[i], known(i, &Memory::exact, D), passes);
        std::vector<long>& edges = memory(i).edge;
        if (edges.empty()) edges.assign(turns_.size(), kNoEdge);
        long& last = edges[static_cast<std::size_t>(nt)];
        KnownEdge nothing;
        return last = edge(rule, in, last != kNoEdge ? last : hopes.edge[i], nothing, passes);
    }

    const Space& space_;
    std::span<const double> free_lengths_;
    std::span<const check::Turns> turns_;
    const tolerance::Tables& tables_;
    const WireOption& wire_;
    spring::Ends ends_;
    std::vector<Asked> rules_;
    std::vector<Memory> memory_;  ///< by rule; empty until something is remembered
    Visitor& visitor_;
};

}  // namespace seatload::sizing
