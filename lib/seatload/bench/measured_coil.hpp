// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// What a spring's rate depends on, as measured.
struct MeasuredCoil {
    Stated<double> wire_diameter_mm;
    Stated<double> outside_diameter_mm;
    Stated<double> active_coils;

    double mean_diameter_mm() const { return outside_diameter_mm.value - wire_diameter_mm.value; }
};

/// The coil, or what is missing or wrong, in words: "the wire diameter d and the ends".
struct CoilAnswer {
    std::optional<MeasuredCoil> coil;
    std::string missing;
};
CoilAnswer measured_coil(const Dimensions& dimensions);

/// The words as a list in a sentence: "a, b and c" with the conjunction given.
std::string listed(const std::vector<std::string>& words, const std::string& conjunction);

}  // namespace seatload::bench
