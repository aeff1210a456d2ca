// SPDX-License-Identifier: MIT
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <vector>

#include <seatload/core/assert.hpp>
#include <seatload/sizing/block.hpp>
#include <seatload/sizing/overlap.hpp>
#include <seatload/sizing/rule_set.hpp>
#include <seatload/spring/coils.hpp>

namespace seatload::sizing {

/// Goes through the coils of one wire with one kind of ends, and passes over whole blocks of mean diameters and coils
/// in which nothing can fit.
///
/// A rule says how its answer follows the mean diameter and the coils (check::Trend); so no coil of a block passes more
/// free lengths than the one at its best corner, and none fewer than the one at its worst. What even the best corners
/// leave to nobody is skipped; a rule that cuts the same at its best and worst corner is settled for the whole block
/// and not asked again within it; the rest is halved, down to lines, where rules are asked as they stand. Corners are
/// asked with a slack (check::passes_moved) far above what rounding does, towards asking again rather than skipping.
///
/// The visitor is told of every line on which something is left:
///   kOneMayFail            whether what only one rule rejects counts as left
///   is_done()              ends the walk
///   line(coil, D, overlap) a line: the index of its mean diameter, and what the rules leave
///   settled(block, overlap) lines that all leave the same; false to be told of them one by one
template <class Visitor>
class BlockWalk {
  public:
    BlockWalk(const Space& space, std::span<const double> free_lengths, const tolerance::Tables& tables,
              const WireOption& wire, spring::Ends ends, RuleSet asked, Visitor& visitor)
        : space_(space), free_lengths_(free_lengths), tables_(tables), wire_(wire), ends_(ends), visitor_(visitor) {
        const auto all = check::rules();
        // Those that can be settled for whole blocks come first.
        for (const bool is_unclear : {false, true})
            for (std::size_t i = 0; i < all.size(); ++i)
                if ((rule_at(i) & asked) != 0 && all[i].applies(space.demand, ends) && turns(all[i]) == is_unclear)
                    rules_.push_back({&all[i], i, 0});
        SEATLOAD_ASSERT(rules_.size() < 64);
    }

    void run() {
        Block all{0, wire_.mean_diameters.count, 0, space_.total_coils.count};
        // Without active coils there is no spring to measure.
        while (all.nt_from < all.nt_to && spring::active_coils(ends_, space_.total_coils.at(all.nt_from)) <= 0.0)
            ++all.nt_from;
        if (all.lines() == 0 || free_lengths_.empty()) return;
        look_at(all, rule_at(rules_.size()) - 1, Overlap({0, static_cast<long>(free_lengths_.size())}));
    }

  private:
    static constexpr long kFewLines = 8;
    static constexpr double kOutwards = check::kInclusive;
    static constexpr double kInwards = -0.5 * check::kInclusive;

    struct Asked {
        const check::Rule* rule;
        std::size_t index;
        long edge;  ///< of the line before: the next one's lies close by
    };

    static bool turns(const check::Rule& rule) {
        return rule.with_diameter == check::Trend::unclear || rule.with_coils == check::Trend::unclear;
    }

    Interval left(const Overlap& overlap) const {
        return Visitor::kOneMayFail ? overlap.nearly_passed() : overlap.passed();
    }
    static bool is_empty(const Interval& in) { return in.from >= in.to; }

    double free_length(long index) const { return free_lengths_[static_cast<std::size_t>(index)]; }
    bool passes(const check::Rule& rule, const check::Coil& coil, long index) const {
        return check::passes(rule, coil, free_length(index));
    }
    bool passes_moved(const check::Rule& rule, const check::Coil& coil, long index, double share) const {
        return check::passes_moved(rule.sense, rule.measure(coil, free_length(index)), share);
    }

    /// The first index within an interval at which a rule's answer differs from the one for short springs; the end when
    /// it does nowhere. The end at which the rule is hardest to pass is asked first, then the other: mostly that is
    /// all.
    template <class Passes>
    static long edge(const check::Rule& rule, Interval in, long guess, const Passes& passes) {
        if (rule.along == check::Along::up_to) {
            if (passes(in.to - 1)) return in.to;
            if (!passes(in.from)) return in.from;
            return first_changed({in.from, in.to - 1}, guess, [&](long index) { return !passes(index); });
        }
        if (passes(in.from)) return in.from;
        if (rule.along == check::Along::constant || !passes(in.to - 1)) return in.to;
        return first_changed({in.from, in.to - 1}, guess, passes);
    }

    /// The first index at which the answer has changed, which it has not at `between.from` and has at `between.to`, by
    /// strides that double from a guess and then halve.
    template <class Changed>
    static long first_changed(Interval between, long guess, const Changed& changed) {
        auto [low, high] = between;
        if (low < guess && guess < high) {
            long stride = 1;
            if (changed(guess)) {
                high = guess;
                for (; high - stride > low && changed(high - stride); stride *= 2) high -= stride;
                low = std::max(low, high - stride);
            } else {
                low = guess;
                for (; low + stride < high && !changed(low + stride); stride *= 2) low += stride;
                high = std::min(high, low + stride);
            }
        }
        while (high - low > 1) {
            const long middle = low + (high - low) / 2;
            (changed(middle) ? high : low) = middle;
        }
        return high;
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
    void look_at(const Block& block, RuleSet open, Overlap overlap) {
        Corners corners(space_, wire_, tables_, ends_, block);
        const bool is_steady = claims_hold(corners.low());
        std::array<long, 64> edges;
        RuleSet answered = 0;
        Overlap hopeful = overlap;
        Interval in = left(hopeful);
        for (RuleSet rest = open; rest != 0; rest &= rest - 1) {
            const auto i = static_cast<std::size_t>(std::countr_zero(rest));
            const check::Rule& rule = *rules_[i].rule;
            const Ask ask = question(rule, block, is_steady);
            if (ask == Ask::nothing) continue;
            edges[i] = hopeful_edge(rule, ask, corners, in);
            cut(hopeful, rules_[i], edges[i]);
            in = left(hopeful);
            if (is_empty(in)) return;
            answered |= rule_at(i);
        }
        for (RuleSet rest = answered; rest != 0; rest &= rest - 1) {
            const auto i = static_cast<std::size_t>(std::countr_zero(rest));
            const check::Rule& rule = *rules_[i].rule;
            const long at = std::clamp(edges[i], in.from, in.to);
            const Ask ask = question(rule, block, is_steady);
            if (ask != Ask::any_coil && !fails_all(rule, in, at) && !pass_alike(rule, ask, corners, at)) continue;
            cut(overlap, rules_[i], at);
            open &= ~rule_at(i);
        }
        overlap.clip(in);
        if (open == 0 && visitor_.settled(block, overlap)) return;
        if (open == 0 || block.lines() <= kFewLines) return look_at_lines(block, open, overlap);
        const auto [low, high] = halves(block, cut_across(block, open, corners));
        look_at(low, open, overlap);
        if (!visitor_.is_done()) look_at(high, open, overlap);
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

    /// Where the kindest answer for any coil of a block cuts.
    long hopeful_edge(const check::Rule& rule, Ask ask, Corners& corners, Interval in) const {
        if (ask == Ask::kindest) {
            const check::Coil &low = corners.low(), &high = corners.high();
            return edge(rule, in, in.from, [&](long at) {
                return check::passes_moved(rule.sense, rule.kindest(low, high, free_length(at)), kOutwards);
            });
        }
        const check::Coil& best = corners.best_for(rule);
        const double slack = ask == Ask::any_coil ? 0.0 : kOutwards;
        return edge(rule, in, in.from, [&](long at) { return passes_moved(rule, best, at, slack); });
    }

    static bool fails_all(const check::Rule& rule, Interval in, long edge) {
        return edge == (rule.along == check::Along::up_to ? in.from : in.to);
    }
    /// Whether even the harshest answer for any coil of a block passes all that the kindest one lets pass.
    bool pass_alike(const check::Rule& rule, Ask ask, Corners& corners, long edge) const {
        const long last = rule.along == check::Along::up_to ? edge - 1 : edge;
        if (ask != Ask::kindest) return passes_moved(rule, corners.worst_for(rule), last, kInwards);
        return rule.harshest != nullptr &&
               check::passes_moved(rule.sense, rule.harshest(corners.low(), corners.high(), free_length(last)),
                                   kInwards);
    }

    static bool claims_hold(const check::Coil& narrowest) {
        const auto is_sound = [](const std::optional<double>& load) { return !load || *load >= 0.0; };
        const check::DemandNumbers& d = narrowest.demand;
        return narrowest.index > 1.0 && is_sound(d.seated_at_least_n) && is_sound(d.seated_at_most_n) &&
               is_sound(d.full_at_least_n) && is_sound(d.full_at_most_n);
    }

    void look_at_lines(const Block& block, RuleSet open, const Overlap& settled) {
        for (long D = block.D_from; D < block.D_to; ++D) {
            check::Coil coil(space_.demand, wire_.numbers, tables_, wire_.mean_diameters.at(D), ends_,
                             space_.total_coils.at(block.nt_from));
            for (long nt = block.nt_from; nt < block.nt_to && !visitor_.is_done(); ++nt) {
                coil.set_total_coils(space_.total_coils.at(nt));
                look_at_line(coil, D, open, settled);
            }
        }
    }

    void look_at_line(const check::Coil& coil, long D, RuleSet open, Overlap overlap) {
        Interval in = left(overlap);
        for (RuleSet rest = open; rest != 0; rest &= rest - 1) {
            Asked& asked = rules_[static_cast<std::size_t>(std::countr_zero(rest))];
            asked.edge =
                edge(*asked.rule, in, asked.edge, [&](long index) { return passes(*asked.rule, coil, index); });
            cut(overlap, asked, asked.edge);
            in = left(overlap);
            if (is_empty(in)) return;
        }
        visitor_.line(coil, D, overlap);
    }

    const Space& space_;
    std::span<const double> free_lengths_;
    const tolerance::Tables& tables_;
    const WireOption& wire_;
    spring::Ends ends_;
    std::vector<Asked> rules_;
    Visitor& visitor_;
};

}  // namespace seatload::sizing
