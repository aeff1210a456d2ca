// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <vector>

#include <seatload/check/numbers.hpp>
#include <seatload/sizing/made_allowance.hpp>
#include <seatload/sizing/made_count.hpp>
#include <seatload/sizing/made_quantity.hpp>
#include <support/builtin.hpp>
#include <support/spring_a.hpp>

namespace seatload::test {

inline constexpr double kRate = 81500.0 * 81.0 / (8.0 * 13824.0 * 6.5);  // EN 13906-1 cl. 9.4

/// Spring A counted with an allowance of the test's own.
struct CountA {
    explicit CountA(const demand::Requirement& r, const tolerance::MadeAllowance& own)
        : demand(check::numbers(r)),
          wire(check::numbers(wire_a(), 3.0 * mm, r).value()),
          coil(demand, wire, tolerances(), 24.0, spring::Ends::closed_ground, 8.5),
          quantities(sizing::made_quantities(coil)),
          order(sizing::made_order(coil, 60.0, true, {kRate * 12.0, kRate * 24.0})),
          allowance(own),
          counter(coil, order, allowance, quantities),
          tally(quantities.size()) {
        tolerance::MadeStrays strays;
        for (long first = 0; first < kSprings; first += static_cast<long>(tolerance::kMadeChunk)) {
            tolerance::draw_strays(17, static_cast<std::uint64_t>(first), strays);
            counter.count(strays, tolerance::kMadeChunk, tally);
        }
    }
    double share() const { return static_cast<double>(tally.good) / static_cast<double>(tally.springs); }

    static constexpr long kSprings = 1024 * static_cast<long>(tolerance::kMadeChunk);
    check::DemandNumbers demand;
    check::WireNumbers wire;
    check::Coil coil;
    std::vector<sizing::MadeQuantity> quantities;
    tolerance::MadeOrder order;
    tolerance::MadeAllowance allowance;
    sizing::MadeCounter counter;
    sizing::MadeTally tally;
};

/// Five standard errors of a share.
inline double noise(double share) { return 5.0 * std::sqrt(share * (1.0 - share) / CountA::kSprings) + 1e-6; }

}  // namespace seatload::test
