// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <string_view>
#include <vector>

#include <seatload/check/numbers.hpp>
#include <seatload/tolerance/made_springs.hpp>

namespace seatload::sizing {

/// A number that tolerances move, and the bounds the demand sets it. It is that of check/*_measures.cpp, reckoned with
/// the dimensions a spring was made with in place of the nominal ones and their tolerances; a test holds the two
/// together.
struct MadeQuantity {
    std::string_view id;    ///< key in JSON and tests
    std::string_view name;  ///< for people
    std::string_view unit;
    void (*measure)(const check::Coil& nominal, const tolerance::MadeSprings& made, tolerance::MadeColumn& out);
    double least = -std::numeric_limits<double>::infinity();
    double most = std::numeric_limits<double>::infinity();
    /// What is measured is one over the number told (a reserve that may be without bound).
    bool inverse = false;

    bool is_bounded() const {
        return least > -std::numeric_limits<double>::infinity() || most < std::numeric_limits<double>::infinity();
    }
};

/// The quantities in play, both loads first. Needs the two heights. Left out, as tolerances hardly move it or the maker
/// is bound to keep it: index, number of coils and their half turn, grinding, and whether ends rock on their seats.
std::vector<MadeQuantity> made_quantities(const check::Coil& nominal);

}  // namespace seatload::sizing
