// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <seatload/sizing/candidate.hpp>
#include <seatload/sizing/fit_map.hpp>
#include <seatload/sizing/front.hpp>

namespace seatload::sizing {

/// What is kept of the lines of one wire with one kind of ends. A line is a coil with the free lengths that fit it;
/// only those at which something fits come here, in no order that anything may depend on.
class BestOfLines {
  public:
    /// `free_lengths` [mm] and `front` must outlive this. The front is offered what fits; what is in it already spares
    /// looking at what is no better.
    BestOfLines(std::span<const double> free_lengths, std::size_t wire, long mean_diameters, Front& front);

    /// Takes the free lengths with indices `from` up to, not with, `to`; all of them fit the coil, and there is at
    /// least one. `diameter` is the index of the coil's mean diameter.
    void take(const check::Coil& coil, long diameter, long from, long to);

    unsigned long long fit() const { return fit_; }
    const std::optional<Candidate>& best() const { return best_; }
    const std::vector<MapCell>& cells() const { return cells_; }

  private:
    double free_length(long index) const { return free_lengths_[static_cast<std::size_t>(index)]; }
    void walk(const check::Coil& coil, const ToleranceRooms& rooms, long from, long to);
    bool is_hopeless(const Candidate& best_possible, const demand::Order& order) const;
    Candidate candidate(const check::Coil& coil, const ToleranceRooms& rooms, long index) const;

    std::span<const double> free_lengths_;
    std::size_t wire_;
    Front& front_;
    unsigned long long fit_ = 0;
    std::optional<Candidate> best_;
    std::vector<MapCell> cells_;  ///< one a mean diameter
};

}  // namespace seatload::sizing
