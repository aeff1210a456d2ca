// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <functional>
#include <string_view>

namespace seatload::test {

/// A point of the unit cube: wire, ends, mean diameter, coils and free length, each as a share of its range.
using UnitPoint = std::array<double, 5>;

/// A global optimiser of NLopt.
struct Optimiser {
    std::string_view name;
    int algorithm;  ///< an nlopt_algorithm
};

/// Those that need no derivatives and take a black box.
std::array<Optimiser, 4> optimisers();

/// Lets an optimiser look for the least of a function in the unit cube with so many questions. The same for the same
/// seed. Throws std::runtime_error when the library reports a failure.
void minimise(const Optimiser& optimiser, const std::function<double(const UnitPoint&)>& function, int questions,
              unsigned long seed);

}  // namespace seatload::test
