// SPDX-License-Identifier: MIT
#include <seatload/sizing/any_fit.hpp>

#include <mutex>
#include <span>

#include <seatload/sizing/block_walk.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

/// Takes the first line of one wire with one kind of ends on which anything fits; gives up when `is_late` says so.
template <class IsLate>
class FirstFit {
  public:
    static constexpr bool kOneMayFail = false;

    FirstFit(std::span<const double> free_lengths, std::size_t wire, const IsLate& is_late)
        : free_lengths_(free_lengths), wire_(wire), is_late_(is_late) {}

    bool is_done() const { return found_.has_value() || is_late_(); }
    void line(const check::Coil& coil, long, const Overlap& overlap) {
        const auto from = static_cast<std::size_t>(overlap.passed().from);
        found_ = Candidate{wire_, coil.ends, coil.D_mm, coil.total_coils, free_lengths_[from], {}};
    }
    bool settled(const Block&, const Overlap&) { return false; }

    const std::optional<Candidate>& found() const { return found_; }

  private:
    std::span<const double> free_lengths_;
    std::size_t wire_;
    const IsLate& is_late_;
    std::optional<Candidate> found_;
};

}  // namespace

std::optional<Candidate> any_fit(const Space& space, const tolerance::Tables& tables, const SearchOptions& options,
                                 RuleSet rules) {
    if (space.free_lengths.count == 0 || space.total_coils.count == 0) return std::nullopt;
    const GridValues grid(space);
    const std::size_t jobs = space.wires.size() * space.ends.size();
    std::atomic<std::size_t> first = jobs;  // the lowest job that found a spring: those above it need no answer
    std::mutex mutex;
    std::optional<Candidate> found;
    share_out(jobs, worker_count(options.threads, jobs), [&](std::size_t job, std::size_t) {
        const auto is_late = [&] { return first < job; };
        const std::size_t wire = job / space.ends.size();
        FirstFit one(grid.free_lengths, wire, is_late);
        BlockWalk walk(space, grid, tables, space.wires[wire], job % space.ends.size(), rules, one);
        if (!is_late()) walk.run();
        const std::scoped_lock lock(mutex);
        if (!one.found() || first < job) return;
        first = job;
        found = one.found();
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
