// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// One of several requirements that one order is to serve, searched.
struct Member {
    const demand::Requirement& requirement;
    const Space& space;
    const Census& census;
};
using Family = std::span<const Member>;

/// A wire that several spaces hold: its index in Space::wires of each, in their order.
using WirePlaces = std::vector<std::size_t>;

/// The wires that all spaces hold, by grade and diameter. A wire of the same name counts only when its strength, moduli
/// and density are the same: each requirement can describe a wire of its own.
std::vector<WirePlaces> wires_of_all(std::span<const Space* const> spaces);

/// The best spring of a wire by the requirement's preference, whatever its ends; nothing when none fits.
std::optional<Candidate> best_of_wire(const Space& space, const Census& census, std::size_t wire);

/// The worse of two merits in each respect.
Merit worse_of_each(const Merit& a, const Merit& b);

/// One wire that serves all requirements of a family, so that the maker buys one coil.
struct CommonWire {
    WirePlaces places;
    std::string grade;  ///< its id
    Length diameter;
    std::vector<Candidate> springs;  ///< the best of this wire for each requirement
    Merit merit;                     ///< the worst among them in each respect; the cost of one of each together
};

/// Every wire with which something fits each requirement, best first: the more tolerance room in whole tenths where it
/// is least, then the more stress margin, then the cheaper. The same whatever the order of the requirements.
std::vector<CommonWire> common_wires(Family family);

}  // namespace seatload::sizing
