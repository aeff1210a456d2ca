// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <string>
#include <vector>

#include <seatload/units/quantities.hpp>

namespace seatload::bench {

/// A value as a workshop states it; the true one lies anywhere within plus-minus (rectangular, GUM 4.3.7).
template <class Q>
struct Stated {
    Q value{};
    Q plus_minus{};
};

/// One source of doubt in a result.
template <class Q>
struct Contribution {
    std::string name;    ///< "scale: step of a reading", "height: zero", ... (English)
    Q standard{};        ///< standard uncertainty it brings to the result, in the result's unit
    double share = 0.0;  ///< of the result's variance, 0 to 1
    double degrees_of_freedom = std::numeric_limits<double>::infinity();
    bool common = false;  ///< the same error in every reading, which averaging does not lessen
};

/// A measured quantity with its uncertainty after the GUM (JCGM 100:2008).
template <class Q>
struct Estimate {
    Q value{};
    Q standard{};                                                         ///< combined standard uncertainty u
    double degrees_of_freedom = std::numeric_limits<double>::infinity();  ///< effective, Welch-Satterthwaite
    double coverage_factor = 2.0;                                         ///< k, from t where few readings dominate
    Q expanded{};                                                         ///< U = k u
    std::vector<Contribution<Q>> budget;                                  ///< largest first; shares add up to 1
};

}  // namespace seatload::bench
