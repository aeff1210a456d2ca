// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <random>

#include <seatload/demand/plunger.hpp>
#include <seatload/demand/plunger_point.hpp>

namespace seatload::test {

/// Numbers that come out the same everywhere, whatever the standard library's distributions do.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_() >> 11) / 9007199254740992.0);
    }
    bool is_heads() { return (engine_() & 1U) != 0; }

  private:
    std::mt19937_64 engine_;
};

/// A plunger of some size with ranges for all that can have one, and any of the tables that may be left out.
demand::Plunger random_plunger(Dice& dice);

/// A point inside the ranges of a box, any end with some chance.
demand::PlungerPoint random_point(const demand::PlungerBox& box, Dice& dice);

}  // namespace seatload::test
