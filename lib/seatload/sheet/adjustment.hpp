// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/sheet/facts.hpp>

// What the maker may alter without asking, and what must hold whatever he alters (EN 15800 compensation rule, from
// memory).

namespace seatload::sheet {

/// What the maker may alter: "free length L0, and either ... or ...".
std::string adjustable_quantities(const Facts& facts);

/// What must hold whatever the maker alters: "Ln at or below L2, τ at Lc within its limit and ...". May be empty.
std::string kept_bounds(const Facts& facts);

/// The bounds among them that can be measured on a piece, as printed; nothing where none is. The coil diameter has one
/// only when the maker may alter it.
std::optional<Amount> longest_free_length(const Facts& facts);
/// The same for pieces whose tips are within `Facts::closer_tips`.
std::optional<Amount> longest_with_closer_tips(const Facts& facts);
std::optional<Amount> coil_diameter_bound(const Facts& facts);
/// The bound of the free length in words, with that for pieces of close end tips; only where there is a bound.
std::string longest_free_length_words(const Facts& facts);

/// The free length to aim at where the one drawn leaves pieces less room under the bound than they stray by; nothing
/// where it leaves as much. Both loads are within their limits at it with the drawn rate.
std::optional<Length> aimed_free_length(const Facts& facts);

/// The free length as drawn. Beside a bound it is rounded down as the bound is, or in inches it could come out above
/// it.
Amount drawn_free_length(const Facts& facts, Decimals decimals = {});

/// The static stress that is limited, "τ at Lc", and its value for the nominal spring.
std::string limited_stress(const Facts& facts);
Stress stress_at_limit(const Facts& facts);

}  // namespace seatload::sheet
