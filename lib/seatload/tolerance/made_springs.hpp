// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>

namespace seatload::tolerance {

// Springs as a maker delivers them, in mm, N and MPa. Each is of a lot of its own: the wire of one coil, a mean coil
// diameter as the tooling happens to give it. The maker then brings the lot's two mean loads to those ordered by what
// the compensation rule leaves him (EN 15800, from memory): the number of coils sets the rate and, where that is bound
// (half a turn over, on a sliding seat), the mean coil diameter within its tolerance does the rest; the free length
// sets the load. What is left is what strays from piece to piece.

/// What is ordered.
struct MadeOrder {
    double wire_diameter = 0.0;       ///< d
    double coil_diameter = 0.0;       ///< De, or Di
    bool outside_rules = true;        ///< it is De
    double shear_modulus = 0.0;       ///< G
    std::array<double, 2> lengths{};  ///< L1, L2; not equal
    std::array<double, 2> loads{};    ///< mean loads the maker brings the lot to; not equal
    /// Active coils the maker may go to.
    double fewest_coils = 0.0;
    double most_coils = std::numeric_limits<double>::infinity();
    /// Turns that the end tips of a piece stray from where its lot has them, plus-minus, three standard deviations;
    /// nothing: tips stand anyhow, as the coils of the piece come out.
    std::optional<double> tips;
};

/// How far the numbers of a spring may stray, plus-minus, all of it three standard deviations.
struct MadeAllowance {
    double wire_diameter = 0.0;    ///< of the coil of wire a lot is made of
    double shear_modulus = 0.0;    ///< the same
    double lot_coil_diameter = 0;  ///< of a lot's mean De or Di from the nominal
    double coil_diameter = 0.0;    ///< of a piece from its lot's mean
    double active_coils = 0.0;     ///< the same
    double free_length = 0.0;      ///< the same
};

/// What strays, in the order of MadeAllowance, and last the tips.
inline constexpr std::size_t kMadeNumbers = 7;
enum class MadeNumber {
    wire_diameter,
    shear_modulus,
    lot_coil_diameter,
    coil_diameter,
    active_coils,
    free_length,
    tips
};

/// Springs handled at one go: few enough to stay in the first cache.
inline constexpr std::size_t kMadeChunk = 256;
using MadeColumn = std::array<double, kMadeChunk>;

/// Where each number of each spring lies in its allowance, -1 to 1.
using MadeStrays = std::array<MadeColumn, kMadeNumbers>;

/// Springs made, a column a number.
struct MadeSprings {
    MadeColumn d;        ///< wire diameter [mm]
    MadeColumn D;        ///< mean coil diameter [mm]
    MadeColumn n;        ///< active coils
    MadeColumn L0;       ///< free length [mm]
    MadeColumn rate;     ///< [N/mm], cold
    MadeColumn seated;   ///< load at L1 [N], cold and new
    MadeColumn full;     ///< load at L2 [N]
    MadeColumn modulus;  ///< G [MPa]
    MadeColumn turns;    ///< active coils as the tips have them: by these it leans
};

/// Fills the strays of kMadeChunk springs, from spring number `first` of the seed's stream on: each spring's are the
/// same whatever is asked for with it.
void draw_strays(std::uint64_t seed, std::uint64_t first, MadeStrays& strays);

/// Fills the 2^7 corners of the allowances, then repeats the last; their count comes back.
std::size_t corner_strays(MadeStrays& strays);

/// Makes kMadeChunk springs.
void make_springs(const MadeOrder& order, const MadeAllowance& allowance, const MadeStrays& strays, MadeSprings& out);

}  // namespace seatload::tolerance
