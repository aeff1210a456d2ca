// SPDX-License-Identifier: MIT
#include <seatload/sizing/any_fit.hpp>

#include <algorithm>
#include <mutex>
#include <span>

#include <seatload/core/assert.hpp>
#include <seatload/sizing/cut.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

using Rules = std::vector<const check::Rule*>;

/// The bits that stand for a rule.
RuleSet all_rules() {
    SEATLOAD_ASSERT(check::rules().size() < 64);
    return rule_at(check::rules().size()) - 1;
}

/// The rules in play for one kind of ends, by what they hang on.
struct SortedRules {
    Rules of_diameter, of_coils;              ///< the free length does not matter
    Rules along_of_diameter, along_of_coils;  ///< it does

    SortedRules(const Space& space, spring::Ends ends, RuleSet asked) {
        for (const std::size_t i : indices(asked & all_rules())) {
            const check::Rule& rule = check::rules()[i];
            if (!rule.applies(space.demand, ends)) continue;
            const bool constant = rule.along == check::Along::constant;
            const bool coils = rule.coils == check::Coils::matter;
            (constant ? (coils ? of_coils : of_diameter) : (coils ? along_of_coils : along_of_diameter))
                .push_back(&rule);
        }
    }
};

/// Whether all rules pass; the one that fails is asked first the next time, since it is likely to fail again.
bool all_pass(Rules& rules, const check::Coil& coil) {
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (!check::passes(*rules[i], coil, 0.0)) {
            std::swap(rules[0], rules[i]);
            return false;
        }
    return true;
}

/// The part of an interval of free lengths that passes a rule. The easy end is asked first: most coils fail there.
Interval narrowed(Interval in, const check::Rule& rule, const check::Coil& coil, std::span<const double> lengths) {
    const auto passes = [&](long index) { return check::passes(rule, coil, lengths[static_cast<std::size_t>(index)]); };
    const bool from = rule.along == check::Along::from;
    if (!passes(from ? in.to - 1 : in.from)) return {in.from, in.from};
    if (passes(from ? in.from : in.to - 1)) return in;
    long low = in.from, high = in.to - 1;  // the answers differ at these two
    while (high - low > 1) {
        const long middle = low + (high - low) / 2;
        (passes(middle) == from ? high : low) = middle;
    }
    return from ? Interval{high, in.to} : Interval{in.from, high};
}

Interval narrowed(Interval in, Rules& rules, const check::Coil& coil, std::span<const double> lengths) {
    for (std::size_t i = 0; i < rules.size() && in.from < in.to; ++i) {
        in = narrowed(in, *rules[i], coil, lengths);
        if (in.from == in.to) std::swap(rules[0], rules[i]);
    }
    return in;
}

/// The first spring that fits of one wire with one kind of ends; gives up when `is_late` says so.
template <class IsLate>
std::optional<Candidate> first_of_wire(const Space& space, std::span<const double> lengths,
                                       const tolerance::Tables& tables, std::size_t wire, spring::Ends ends,
                                       RuleSet asked, const IsLate& is_late) {
    SortedRules rules(space, ends, asked);
    const WireOption& option = space.wires[wire];
    for (long i = 0; i < option.mean_diameters.count && !is_late(); ++i) {
        check::Coil coil(space.demand, option.numbers, tables, option.mean_diameters.at(i), ends,
                         space.total_coils.at(0));
        if (!all_pass(rules.of_diameter, coil)) continue;
        const Interval of_diameter =
            narrowed({0, static_cast<long>(lengths.size())}, rules.along_of_diameter, coil, lengths);
        if (of_diameter.from == of_diameter.to) continue;
        for (long j = 0; j < space.total_coils.count; ++j) {
            coil.set_total_coils(space.total_coils.at(j));
            if (coil.active_coils <= 0.0 || !all_pass(rules.of_coils, coil)) continue;
            const Interval fits = narrowed(of_diameter, rules.along_of_coils, coil, lengths);
            if (fits.from < fits.to)
                return Candidate{wire, ends, coil.D_mm, coil.total_coils, lengths[static_cast<std::size_t>(fits.from)],
                                 {}};
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Candidate> any_fit(const Space& space, const tolerance::Tables& tables, const SearchOptions& options,
                                 RuleSet rules) {
    if (space.free_lengths.count == 0 || space.total_coils.count == 0) return std::nullopt;
    std::vector<double> lengths;
    for (long i = 0; i < space.free_lengths.count; ++i) lengths.push_back(space.free_lengths.at(i));
    const std::size_t jobs = space.wires.size() * space.ends.size();
    std::atomic<std::size_t> first = jobs;  // the lowest job that found a spring: those above it need no answer
    std::mutex mutex;
    std::optional<Candidate> found;
    share_out(jobs, worker_count(options.threads, jobs), [&](std::size_t job, std::size_t) {
        const auto is_late = [&] { return first < job; };
        const auto candidate = first_of_wire(space, lengths, tables, job / space.ends.size(),
                                             space.ends[job % space.ends.size()], rules, is_late);
        const std::scoped_lock lock(mutex);
        if (!candidate || first < job) return;
        first = job;
        found = candidate;
    });
    return found;
}

RuleSet broken_rules(const Space& space, const tolerance::Tables& tables, const Candidate& c) {
    const check::Coil coil(space.demand, space.wires[c.wire].numbers, tables, c.mean_diameter_mm, c.ends,
                           c.total_coils);
    RuleSet broken = 0;
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (rules[i].applies(space.demand, c.ends) && !check::passes(rules[i], coil, c.free_length_mm))
            broken |= rule_at(i);
    return broken;
}

Space only(const Space& space, const std::string& grade, Length wire_diameter, spring::Ends ends) {
    Space one = space;
    std::erase_if(one.wires, [&](const WireOption& wire) {
        return one.grades[wire.grade].id != grade || wire.size.diameter != wire_diameter;
    });
    one.ends = {ends};
    return one;
}

}  // namespace seatload::sizing
