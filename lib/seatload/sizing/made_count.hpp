// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include <seatload/sizing/made_quantity.hpp>

namespace seatload::sizing {

/// A lowest and a highest value.
struct MadeRange {
    double least = 0.0;
    double most = 0.0;
};

inline constexpr std::size_t kMadeBins = 400;

/// What is counted of one quantity. Sums are kept about a value near the mean, in lanes that are added up in a fixed
/// order.
struct MadeCount {
    static constexpr std::size_t kLanes = 4;
    std::array<double, kLanes> sums{};
    std::array<double, kLanes> squares{};
    long broken = 0;  ///< springs beyond a bound
    std::array<std::uint32_t, kMadeBins> bins{};

    void add(const MadeCount& other);
};

/// What is counted of springs made to one allowance.
struct MadeTally {
    explicit MadeTally(std::size_t quantities = 0) : counts(quantities) {}
    long springs = 0;
    long good = 0;  ///< springs that keep every bound
    std::vector<MadeCount> counts;

    void add(const MadeTally& other);
};

/// Makes springs to an order and counts them; stateless, so that blocks of springs can be counted by any thread.
class MadeCounter {
  public:
    MadeCounter(const check::Coil& nominal, const tolerance::MadeOrder& order,
                const tolerance::MadeAllowance& allowance, const std::vector<MadeQuantity>& quantities);

    /// The lowest and highest value of each quantity at the corners of the allowances.
    const std::vector<MadeRange>& corners() const { return corners_; }
    /// The value of each quantity when nothing strays.
    const std::vector<double>& middles() const { return middles_; }
    /// Counts the first `springs` of a chunk.
    void count(const tolerance::MadeStrays& strays, std::size_t springs, MadeTally& tally) const;

  private:
    const check::Coil& nominal_;
    const tolerance::MadeOrder& order_;
    const tolerance::MadeAllowance& allowance_;
    const std::vector<MadeQuantity>& quantities_;
    std::vector<MadeRange> corners_;
    std::vector<double> middles_;
};

/// The value below which a share of the springs counted lies, by a straight line within its bin.
double value_at_share(const MadeCount& count, const MadeRange& range, long springs, double share);

}  // namespace seatload::sizing
