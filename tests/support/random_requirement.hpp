// SPDX-License-Identifier: MIT
#pragma once

#include <random>

#include <seatload/demand/requirement.hpp>

namespace seatload::test {

/// A requirement written about a spring drawn at random, so that most have springs that fit: its loads as bands, a bore
/// it goes into, three wire sizes of up to three grades, on a grid of some ten thousand combinations. The same for the
/// same seed on every machine.
demand::Requirement random_requirement(unsigned seed);

/// Numbers drawn in the same order on every machine, as the standard's distributions are not.
class Draw {
  public:
    explicit Draw(unsigned seed) : engine_(seed) {}
    /// Evenly spread over [low, high).
    double between(double low, double high) {
        constexpr double kAllWords = 4294967296.0;
        return low + (high - low) * static_cast<double>(engine_()) / kAllWords;
    }
    /// One of 0 ... count - 1.
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(between(0.0, static_cast<double>(count))); }

  private:
    std::mt19937 engine_;
};

}  // namespace seatload::test
