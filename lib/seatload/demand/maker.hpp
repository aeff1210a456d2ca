// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <seatload/demand/limits.hpp>

namespace seatload::demand {

/// What a spring maker can wind and grind. What he does not state is not limited by him.
struct Maker {
    std::string name;
    std::string note;
    std::optional<double> smallest_index;        ///< w
    std::optional<double> largest_index;         ///< w
    std::optional<Length> smallest_ground_wire;  ///< thinner wire he does not grind
    std::optional<double> largest_ground_index;  ///< w
    std::optional<double> coil_step;             ///< turns: he winds total coils that are multiples of it
    std::optional<Length> longest_free_length;   ///< that he winds and grinds
    std::map<std::string, std::string> sources;  ///< by key ("largest_index"): where the number is from
};

/// The makers that may be asked.
struct Makers {
    std::vector<Maker> all;              ///< the first one is meant when none is named
    std::optional<std::size_t> instead;  ///< meant whatever a requirement names: index into `all`

    const Maker* find(const std::string& name) const;  ///< case does not matter
};

/// Holds limits to what a maker can do. A limit of the school that is tighter stays; limits that he sets name him as
/// their source.
void lay_on(Limits& limits, const Maker& maker);

}  // namespace seatload::demand
