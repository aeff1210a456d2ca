// SPDX-License-Identifier: MIT
#include <seatload/sizing/search.hpp>

#include <algorithm>
#include <mutex>
#include <span>

#include <seatload/sizing/best_of_line.hpp>
#include <seatload/sizing/block_walk.hpp>
#include <seatload/sizing/rejection_count.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

using Count = unsigned long long;

/// Counts what fits of one wire with one kind of ends, and what only one rule keeps from it if `is_alone_counted`.
template <bool is_alone_counted>
class WireCount {
  public:
    static constexpr bool kOneMayFail = is_alone_counted;

    WireCount(const Space& space, std::span<const double> free_lengths, std::size_t wire, Front& front)
        : lines_(free_lengths, wire, space.wires[wire].mean_diameters.count, front), alone_(check::rules().size()) {}

    bool is_done() const { return false; }

    void line(const check::Coil& coil, long diameter, const Overlap& overlap) {
        add_alone(overlap, 1);
        if (const auto [from, to] = overlap.passed(); from < to) lines_.take(coil, diameter, from, to);
    }

    bool settled(const Block& block, const Overlap& overlap) {
        if (overlap.count() > 0) return false;
        add_alone(overlap, static_cast<Count>(block.lines()));
        return true;
    }

    const BestOfLines& lines() const { return lines_; }
    std::span<const Count> alone() const { return alone_; }

  private:
    void add_alone(const Overlap& overlap, Count lines) {
        if (!is_alone_counted) return;
        const long count = overlap.count();
        if (const long more = overlap.count_without_deepest_from() - count; more > 0)
            alone_[overlap.deepest_from()] += static_cast<Count>(more) * lines;
        if (const long more = overlap.count_without_deepest_to() - count; more > 0)
            alone_[overlap.deepest_to()] += static_cast<Count>(more) * lines;
    }

    BestOfLines lines_;
    std::vector<Count> alone_;
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

void add(std::vector<Rejections>& sum, std::span<const Rejections> part) {
    for (std::size_t r = 0; r < sum.size(); ++r) {
        if (part[r].all) sum[r].all = sum[r].all.value_or(0) + *part[r].all;
        sum[r].alone += part[r].alone;
    }
}

/// Adds what one wire with one kind of ends holds to a part of the census, which one thread works on.
template <bool is_alone_counted>
void look_through(const Space& space, const GridValues& grid, const tolerance::Tables& tables, std::size_t job,
                  bool is_all_counted, Census& part, Census& whole, SharedMap& map) {
    const std::size_t wire = job / space.ends.size(), ends = job % space.ends.size();
    WireCount<is_alone_counted> count(space, grid.free_lengths, wire, part.front);
    BlockWalk walk(space, grid, tables, space.wires[wire], ends, kAllRules, count);
    walk.run();
    part.fit += count.lines().fit();
    for (std::size_t r = 0; r < part.rejections.size(); ++r) part.rejections[r].alone += count.alone()[r];
    if (is_all_counted) {
        const auto all = count_rejections(space, grid.free_lengths, tables, space.wires[wire], space.ends[ends]);
        for (std::size_t r = 0; r < all.size(); ++r)
            part.rejections[r].all = part.rejections[r].all.value_or(0) + all[r];
    }
    whole.best[job] = count.lines().best();
    map.add(space.wires[wire], count.lines().cells());
}

}  // namespace

Census search(const Space& space, const tolerance::Tables& tables, const SearchOptions& options) {
    const std::size_t jobs = space.wires.size() * space.ends.size();
    const GridValues grid(space);
    const bool is_all_counted = options.counts_rejections && space.lines() <= options.most_lines_counted;
    const std::vector<Rejections> none(options.counts_rejections ? check::rules().size() : 0,
                                       {is_all_counted ? std::optional<Count>(0) : std::nullopt, 0});
    std::vector<Census> parts(worker_count(options.threads, jobs));
    for (Census& part : parts) part.rejections = none;
    Census census;
    census.looked_at = space.size();
    census.best.resize(jobs);
    SharedMap map(space);
    share_out(jobs, static_cast<unsigned>(parts.size()), [&](std::size_t job, std::size_t worker) {
        const auto look = options.counts_rejections ? look_through<true> : look_through<false>;
        look(space, grid, tables, job, is_all_counted, parts[worker], census, map);
        if (worker == 0 && options.progress) options.progress(static_cast<double>(job) / static_cast<double>(jobs));
    });
    census.rejections = none;
    for (const Census& part : parts) {
        census.fit += part.fit;
        add(census.rejections, part.rejections);
        census.front.merge(part.front);
    }
    census.map = map.take();
    return census;
}

const Candidate* first_ranked(const Census& census, const demand::Order& order) {
    const Candidate* first = nullptr;
    for (const auto& each : census.best)
        if (each && (first == nullptr || better(each->merit, first->merit, order))) first = &*each;
    return first;
}

}  // namespace seatload::sizing
