// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/estimate.hpp>

namespace seatload::record {

/// A load measured at a height; plus-minus is the expanded uncertainty.
struct MeasuredLoad {
    Length height;
    bench::Stated<Force> load;
};

/// What the bench found of a spring; plus-minus is the expanded uncertainty.
struct Measured {
    std::string date;      ///< empty when it was not given
    std::string readings;  ///< the file of readings it rests on
    std::optional<bench::Stated<Rate>> rate;
    std::vector<MeasuredLoad> loads;  ///< at the heights asked for
    bool wire_is_guessed = false;     ///< the grade is not known: taken by the stiffness alone
};

}  // namespace seatload::record
