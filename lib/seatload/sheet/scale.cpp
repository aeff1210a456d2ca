// SPDX-License-Identifier: MIT
#include <seatload/sheet/scale.hpp>

#include <array>

namespace seatload::sheet {

Scale largest_scale(double largest_factor) {
    constexpr std::array kScales{Scale{100, 1}, Scale{50, 1}, Scale{20, 1},  Scale{10, 1},  Scale{5, 1},
                                 Scale{2, 1},   Scale{1, 1},  Scale{1, 2},   Scale{1, 5},   Scale{1, 10},
                                 Scale{1, 20},  Scale{1, 50}, Scale{1, 100}, Scale{1, 200}, Scale{1, 500}};
    for (const Scale& scale : kScales)
        if (scale.factor() <= largest_factor) return scale;
    return {1, 1000};
}

}  // namespace seatload::sheet
