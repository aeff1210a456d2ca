// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <bit>
#include <cstdint>

namespace seatload::tolerance {

/// A tolerance in standard deviations; nothing lies beyond it (common practice, no source).
inline constexpr double kDeviations = 3.0;

/// The normal curve cut off at three standard deviations, as a table of its upper half: from it a number of the curve
/// is read off for each random word, without a call into a library of mathematics, whose last digits differ between
/// machines. Nodes are exact to rounding; a straight line between two of them is within 3e-4 standard deviations at
/// the very end of the curve, within 1e-5 over its inner 98 %.
class CutNormal {
  public:
    CutNormal();

    /// A number between -1 and 1, as shares of the tolerance, for 32 random bits.
    double operator()(std::uint32_t word) const {
        const std::uint32_t cell = (word >> kFractionBits) & (kCells - 1);
        const double within = (static_cast<double>(word & kFractionMask) + 0.5) * (1.0 / (kFractionMask + 1.0));
        const double low = nodes_[cell];
        const double share = low + within * (nodes_[cell + 1] - low);
        // The highest bit is the sign: laid in as a bit, as a branch on it would be guessed wrong every other time.
        const std::uint64_t sign = static_cast<std::uint64_t>(word >> 31) << 63;
        return std::bit_cast<double>(std::bit_cast<std::uint64_t>(share) | sign);
    }

    static const CutNormal& table();

  private:
    static constexpr int kFractionBits = 19;
    static constexpr std::uint32_t kCells = 1u << 12;
    static constexpr std::uint32_t kFractionMask = (1u << kFractionBits) - 1;
    std::array<double, kCells + 1> nodes_;
};

}  // namespace seatload::tolerance
