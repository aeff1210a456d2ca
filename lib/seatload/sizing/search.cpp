// SPDX-License-Identifier: MIT
#include <seatload/sizing/search.hpp>

#include <algorithm>
#include <mutex>
#include <span>

#include <seatload/sizing/best_of_line.hpp>
#include <seatload/sizing/cut.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

/// The rules in play for one kind of ends, split by whether the free length matters.
struct ActiveRules {
    std::vector<std::size_t> constant;
    std::vector<Cut> along;
};

ActiveRules active_rules(const Space& space, spring::Ends ends) {
    ActiveRules active;
    const auto all = check::rules();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!all[i].applies(space.demand, ends)) continue;
        if (all[i].along == check::Along::constant)
            active.constant.push_back(i);
        else
            active.along.emplace_back(all[i], i);
    }
    return active;
}

/// Free lengths that pass all rules but one of them, and all of them.
struct Overlap {
    long from = 0, to = 0;                ///< all
    long second_from = 0, second_to = 0;  ///< without the rule that cuts deepest
    std::size_t deepest_from = 0, deepest_to = 0;

    long count() const { return std::max(0L, to - from); }
    long count_without(std::size_t cut) const {
        const long lower = cut == deepest_from ? second_from : from;
        const long upper = cut == deepest_to ? second_to : to;
        return std::max(0L, upper - lower);
    }
};

Overlap overlap(const std::vector<Cut>& cuts, long all) {
    constexpr std::size_t kNone = static_cast<std::size_t>(-1);
    Overlap o{0, all, 0, all, kNone, kNone};
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        const Interval& passed = cuts[i].passed();
        if (passed.from > o.from) {
            o.second_from = o.from;
            o.from = passed.from;
            o.deepest_from = i;
        } else {
            o.second_from = std::max(o.second_from, passed.from);
        }
        if (passed.to < o.to) {
            o.second_to = o.to;
            o.to = passed.to;
            o.deepest_to = i;
        } else {
            o.second_to = std::min(o.second_to, passed.to);
        }
    }
    return o;
}

/// Looks through all coils of one wire with one kind of ends.
class WireSearch {
  public:
    WireSearch(const Space& space, std::span<const double> free_lengths, const tolerance::Tables& tables,
               std::size_t wire, spring::Ends ends, Front& front)
        : space_(space),
          free_lengths_(free_lengths),
          tables_(tables),
          wire_(wire),
          ends_(ends),
          active_(active_rules(space, ends)),
          lines_(free_lengths, wire, space.wires[wire].mean_diameters.count, front) {
        rejections_.resize(check::rules().size());
    }

    void run() {
        const WireOption& option = space_.wires[wire_];
        for (long i = 0; i < option.mean_diameters.count; ++i) {
            check::Coil coil(space_.demand, option.numbers, tables_, option.mean_diameters.at(i), ends_,
                             space_.total_coils.at(0));
            cut_where_coils_do_not_matter(coil);
            for (long j = 0; j < space_.total_coils.count; ++j) {
                coil.set_total_coils(space_.total_coils.at(j));
                look_at(coil, i);
            }
        }
    }

    const BestOfLines& lines() const { return lines_; }
    const std::vector<Rejections>& rejections() const { return rejections_; }

  private:
    void cut_where_coils_do_not_matter(const check::Coil& coil) {
        for (Cut& cut : active_.along)
            if (cut.rule().coils == check::Coils::do_not_matter) cut.find(coil, free_lengths_);
    }

    void look_at(const check::Coil& coil, long diameter) {
        const long all = static_cast<long>(free_lengths_.size());
        // Without active coils there is no spring to measure; fewest coils rejects it, whatever its bound.
        if (coil.active_coils <= 0.0) return reject_unwindable(all);
        const auto rules = check::rules();
        std::size_t failed = 0, failed_rule = 0;
        for (const std::size_t r : active_.constant)
            if (!check::passes(rules[r], coil, 0.0)) {
                rejections_[r].all += static_cast<unsigned long long>(all);
                failed_rule = r;
                ++failed;
            }
        for (Cut& cut : active_.along) {
            if (cut.rule().coils == check::Coils::matter) cut.find(coil, free_lengths_);
            rejections_[cut.rule_index()].all +=
                static_cast<unsigned long long>(all - (cut.passed().to - cut.passed().from));
        }
        if (failed > 1) return;
        const Overlap o = overlap(active_.along, all);
        if (failed == 1) {
            rejections_[failed_rule].alone += static_cast<unsigned long long>(o.count());
            return;
        }
        for (std::size_t i = 0; i < active_.along.size(); ++i)
            rejections_[active_.along[i].rule_index()].alone +=
                static_cast<unsigned long long>(o.count_without(i) - o.count());
        if (o.count() > 0) lines_.take(coil, diameter, o.from, o.to);
    }

    void reject_unwindable(long all) {
        const auto rules = check::rules();
        for (const std::size_t r : active_.constant)
            if (rules[r].id == "coils_fewest") rejections_[r].all += static_cast<unsigned long long>(all);
    }

    const Space& space_;
    std::span<const double> free_lengths_;
    const tolerance::Tables& tables_;
    std::size_t wire_;
    spring::Ends ends_;
    ActiveRules active_;
    BestOfLines lines_;
    std::vector<Rejections> rejections_;
};

/// The map, filled by many threads: counts add up and the most room is taken, so that their order does not matter.
class SharedMap {
  public:
    explicit SharedMap(const Space& space) {
        for (const WireOption& wire : space.wires) {
            const auto at = place(wire.size.diameter);
            if (at != rows_.end() && at->wire_diameter == wire.size.diameter) continue;
            rows_.insert(at, {wire.size.diameter, wire.mean_diameters,
                              std::vector<MapCell>(static_cast<std::size_t>(wire.mean_diameters.count))});
        }
    }

    void add(const WireOption& wire, std::span<const MapCell> cells) {
        const std::scoped_lock lock(mutex_);
        std::vector<MapCell>& sum = place(wire.size.diameter)->cells;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            sum[i].fit += cells[i].fit;
            sum[i].room_in_tenths = std::max(sum[i].room_in_tenths, cells[i].room_in_tenths);
        }
    }

    std::vector<MapRow> take() { return std::move(rows_); }

  private:
    std::vector<MapRow>::iterator place(Length diameter) {
        return std::lower_bound(rows_.begin(), rows_.end(), diameter,
                                [](const MapRow& row, Length d) { return row.wire_diameter < d; });
    }

    std::mutex mutex_;
    std::vector<MapRow> rows_;
};

void add(Census& census, unsigned long long fit, std::span<const Rejections> rejections) {
    census.fit += fit;
    for (std::size_t r = 0; r < census.rejections.size(); ++r) {
        census.rejections[r].all += rejections[r].all;
        census.rejections[r].alone += rejections[r].alone;
    }
}

}  // namespace

Census search(const Space& space, const tolerance::Tables& tables, const SearchOptions& options) {
    const std::size_t jobs = space.wires.size() * space.ends.size();
    std::vector<double> free_lengths;
    for (long i = 0; i < space.free_lengths.count; ++i) free_lengths.push_back(space.free_lengths.at(i));
    std::vector<Census> parts(worker_count(options.threads, jobs));
    for (Census& part : parts) part.rejections.resize(check::rules().size());
    Census census;
    census.looked_at = space.size();
    census.best.resize(jobs);
    SharedMap map(space);
    share_out(jobs, static_cast<unsigned>(parts.size()), [&](std::size_t job, std::size_t worker) {
        WireSearch one(space, free_lengths, tables, job / space.ends.size(), space.ends[job % space.ends.size()],
                       parts[worker].front);
        one.run();
        add(parts[worker], one.lines().fit(), one.rejections());
        census.best[job] = one.lines().best();
        map.add(space.wires[job / space.ends.size()], one.lines().cells());
        if (worker == 0 && options.progress) options.progress(static_cast<double>(job) / static_cast<double>(jobs));
    });
    census.rejections.resize(check::rules().size());
    for (const Census& part : parts) {
        add(census, part.fit, part.rejections);
        census.front.merge(part.front);
    }
    census.map = map.take();
    return census;
}

}  // namespace seatload::sizing
