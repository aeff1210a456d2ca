// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// What a seat that cannot slide would let in where no spring fits on one that slides.
struct HeldSeat {
    unsigned long long fit = 0;  ///< springs that would fit between two held ends, all else as required
    bool all_buckle = false;     ///< the best of them, one a wire and ends, all buckle on the seat that slides
};

/// What holding the seat would bring, found by searching again; nothing when the seat does not slide or no spring fits
/// between held ends either.
std::optional<HeldSeat> held_seat(const demand::Requirement& requirement, const wire::Catalogue& catalogue,
                                  const tolerance::Tables& tables, const SearchOptions& options = {});

}  // namespace seatload::sizing
