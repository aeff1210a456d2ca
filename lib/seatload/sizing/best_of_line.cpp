// SPDX-License-Identifier: MIT
#include <seatload/sizing/best_of_line.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sizing/known_edge.hpp>

namespace seatload::sizing {
namespace {

/// Of free lengths that fit a coil, the one with the most room. Room towards the limits below grows with the free
/// length and that towards the ones above falls, so it stands where they meet.
template <class RoomsAt>
long roomiest(Interval in, const Rooms& first, const Rooms& last, const RoomsAt& rooms) {
    const auto short_of = [](const Rooms& r) { return r.above - r.below; };
    const double share = short_of(first) / (short_of(first) - short_of(last));  // both run nearly straight
    const long guess = share > 0.0 && share < 1.0
                           ? in.from + static_cast<long>(std::ceil(share * static_cast<double>(in.to - 1 - in.from)))
                           : in.from;
    KnownEdge known;
    const long peak = known.first_changed({in.from, in.to - 1}, guess, [&](long index) {
        const Rooms r = rooms(index);
        return r.below >= r.above;
    });
    const auto tenths = [&](long index) { return room_in_tenths(rooms(index).least()); };
    return peak > in.from && tenths(peak - 1) >= tenths(peak) ? peak - 1 : peak;
}

}  // namespace

BestOfLines::BestOfLines(std::span<const double> free_lengths, std::size_t wire, long mean_diameters, Front& front)
    : free_lengths_(free_lengths), wire_(wire), front_(front), cells_(static_cast<std::size_t>(mean_diameters)) {}

Candidate BestOfLines::candidate(const check::Coil& coil, const ToleranceRooms& rooms, long index) const {
    const double L0 = free_length(index);
    return {wire_, coil.ends, coil.D_mm, coil.total_coils, L0, merit(coil, rooms, L0)};
}

void BestOfLines::take(const check::Coil& coil, long diameter, long from, long to) {
    MapCell& cell = cells_[static_cast<std::size_t>(diameter)];
    fit_ += static_cast<unsigned long long>(to - from);
    cell.fit += static_cast<unsigned long long>(to - from);
    const ToleranceRooms rooms(coil);
    const Rooms first = rooms.at(free_length(from)), last = rooms.at(free_length(to - 1));
    Candidate best_possible = candidate(coil, rooms, from);
    best_possible.merit.tolerance_room = std::min(first.above, last.below);
    if (room_in_tenths(best_possible.merit.tolerance_room) <= cell.room_in_tenths &&
        is_hopeless(best_possible, coil.demand.preference.order))
        return;
    const long peak = roomiest({from, to}, first, last, [&](long index) { return rooms.at(free_length(index)); });
    cell.room_in_tenths = std::max(cell.room_in_tenths, room_in_tenths(rooms.at(free_length(peak)).least()));
    // A longer spring than that has less room and is worse in all else too: more load, more stress, more wire.
    walk(coil, rooms, from, peak);
}

bool BestOfLines::is_hopeless(const Candidate& best_possible, const demand::Order& order) const {
    return best_ && front_.is_beyond(standing(best_possible.merit)) && !comes_before(best_possible, *best_, order);
}

/// Of the free lengths from `from` to `to`, over which the room grows, none can be better than one with the room of the
/// longest and all else of the shortest. The longer half comes first, as it is the one most likely to hold the best.
void BestOfLines::walk(const check::Coil& coil, const ToleranceRooms& rooms, long from, long to) {
    const Candidate shortest = candidate(coil, rooms, from);
    Candidate best_possible = shortest;
    if (to > from) best_possible.merit.tolerance_room = rooms.at(free_length(to)).least();
    const demand::Order& order = coil.demand.preference.order;
    if (is_hopeless(best_possible, order)) return;
    if (standing(shortest.merit) == standing(best_possible.merit)) {
        if (!best_ || comes_before(shortest, *best_, order)) best_ = shortest;
        return front_.offer(shortest);
    }
    const long middle = from + (to - from) / 2;
    walk(coil, rooms, middle + 1, to);
    walk(coil, rooms, from, middle);
}

}  // namespace seatload::sizing
