// SPDX-License-Identifier: MIT
#include "comparison.hpp"

#include <cstdlib>

namespace seatload::test {

Comparison compare(const Picture& expected, const Picture& found) {
    Comparison out;
    out.same_size = expected.width == found.width && expected.height == found.height && !found.grey.empty();
    if (!out.same_size) return out;
    out.difference = found;
    for (std::size_t i = 0; i < found.grey.size(); ++i) {
        const bool differs = std::abs(int{expected.grey[i]} - int{found.grey[i]}) > kGreyStep;
        if (differs) ++out.different;
        constexpr int kLightest = 255;
        out.difference.grey[i] =
            differs ? std::uint8_t{0} : static_cast<std::uint8_t>(kLightest - (kLightest - found.grey[i]) / 4);
    }
    out.share = static_cast<double>(out.different) / static_cast<double>(found.grey.size());
    return out;
}

}  // namespace seatload::test
