// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <vector>

namespace seatload::sheet {

/// A label that would like to stand at `wanted` and takes `size` along a line.
struct Spot {
    double wanted = 0.0;
    double size = 0.0;
};

/// Places of the labels, in the order given, so that none overlaps its neighbour and all lie between two ends as far as
/// they fit; each as near its wanted place as its neighbours let it. The spots must come by rising wanted place.
inline std::vector<double> spread(const std::vector<Spot>& spots, double low, double high) {
    std::vector<double> places(spots.size());
    double edge = low;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        places[i] = std::max(spots[i].wanted, edge + 0.5 * spots[i].size);
        edge = places[i] + 0.5 * spots[i].size;
    }
    edge = high;
    for (std::size_t i = spots.size(); i-- > 0;) {
        places[i] = std::min(places[i], edge - 0.5 * spots[i].size);
        edge = places[i] - 0.5 * spots[i].size;
    }
    return places;
}

}  // namespace seatload::sheet
