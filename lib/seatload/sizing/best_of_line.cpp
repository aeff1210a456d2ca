// SPDX-License-Identifier: MIT
#include <seatload/sizing/best_of_line.hpp>

#include <algorithm>
#include <tuple>

namespace seatload::sizing {
namespace {

/// The first index from `low` on at which a question that changes its answer once is true; `high` when none before
/// it is.
template <class Question>
long first_true(long low, long high, const Question& question) {
    while (low < high) {
        const long middle = low + (high - low) / 2;
        if (question(middle))
            high = middle;
        else
            low = middle + 1;
    }
    return low;
}

/// Of two that are equally good the one of the smaller coil, then of fewer coils: whichever line came first.
bool comes_before(const Candidate& a, const Candidate& b) {
    if (better(a.merit, b.merit)) return true;
    if (better(b.merit, a.merit)) return false;
    return std::tie(a.mean_diameter_mm, a.total_coils) < std::tie(b.mean_diameter_mm, b.total_coils);
}

}  // namespace

BestOfLines::BestOfLines(std::span<const double> free_lengths, std::size_t wire, long mean_diameters)
    : free_lengths_(free_lengths), wire_(wire), cells_(static_cast<std::size_t>(mean_diameters)) {}

void BestOfLines::take(const check::Coil& coil, long diameter, long from, long to) {
    MapCell& cell = cells_[static_cast<std::size_t>(diameter)];
    fit_ += static_cast<unsigned long long>(to - from);
    cell.fit += static_cast<unsigned long long>(to - from);
    keep_best(coil, cell, from, to);
}

/// Room towards the lower load limits grows with the free length and that towards the upper ones falls, so the most
/// room stands where they meet. Of the free lengths with as many tenths of room the shortest has the most stress
/// margin.
void BestOfLines::keep_best(const check::Coil& coil, MapCell& cell, long from, long to) {
    const auto rooms = [&](long index) { return tolerance_rooms(coil, free_length(index)); };
    const auto tenths = [&](long index) {
        const Rooms r = rooms(index);
        return room_in_tenths(std::min(r.below, r.above));
    };
    long peak = first_true(from, to - 1, [&](long index) {
        const Rooms r = rooms(index);
        return r.below >= r.above;
    });
    if (peak > from && tenths(peak - 1) >= tenths(peak)) --peak;
    const double most = tenths(peak);
    cell.room_in_tenths = std::max(cell.room_in_tenths, most);
    offer(coil, free_length(first_true(from, peak, [&](long index) { return tenths(index) >= most; })));
}

void BestOfLines::offer(const check::Coil& coil, double L0) {
    const Candidate found{wire_, coil.ends, coil.D_mm, coil.total_coils, L0, merit(coil, L0)};
    if (!best_ || comes_before(found, *best_)) best_ = found;
}

}  // namespace seatload::sizing
