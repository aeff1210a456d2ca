// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/sizing/family.hpp>
#include <seatload/sizing/shortfall.hpp>

namespace seatload::sizing {

/// What a wire lacks for one requirement.
struct WireLack {
    std::size_t member = 0;
    Shortfall why;  ///< of the requirement with this wire alone; changes that bring in another wire are left out
};

/// A wire that serves some requirements of a family, and what it lacks for the others.
struct NearWire {
    WirePlaces places;
    std::string grade;
    Length diameter;
    std::vector<std::optional<Candidate>> springs;  ///< the best of this wire for each requirement it serves
    std::vector<WireLack> lacks;                    ///< in the order of the requirements
};

/// The wire that comes closest to serving all requirements when none does: it serves as many as any, and of the few
/// that have the most combinations that only one limit keeps out (of equals those nearest in diameter to wire that
/// serves) it needs the smallest change of a number. Nothing when no wire that all requirements allow serves any.
std::optional<NearWire> near_wire(Family family, const Setting& setting);

/// A requirement that allows one wire alone.
demand::Requirement with_wire_alone(const demand::Requirement& requirement, const std::string& grade,
                                    Length wire_diameter);

}  // namespace seatload::sizing
