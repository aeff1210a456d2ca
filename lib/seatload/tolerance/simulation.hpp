// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <limits>
#include <vector>

namespace seatload::tolerance {

/// A number of a drawing and how far the spring made may lie from it.
struct Spread {
    double nominal = 0.0;
    double plus_minus = 0.0;
    /// Share of the tolerance used up from piece to piece within one lot, about the lot's own mean; the rest is what
    /// sets one lot apart from another. 0: the lot is all alike, as with wire of one coil.
    double within_lot = 1.0;
};

/// Springs made to one drawing, in mm, N and MPa. Each number is normal about its nominal, its tolerance three standard
/// deviations, and cut off at the tolerance (common practice, no source).
struct LotModel {
    Spread wire_diameter;             ///< d
    Spread coil_diameter;             ///< the one that is inspected
    bool outside_rules = true;        ///< it is De; else Di
    Spread active_coils;              ///< n
    Spread free_length;               ///< L0
    Spread shear_modulus;             ///< G
    std::array<double, 2> lengths{};  ///< L1, L2 at which the loads are looked at
};

/// Loads at both lengths that count as good [N]; bounds are inclusive.
struct LoadWindow {
    std::array<double, 2> least{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    std::array<double, 2> most{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
};

/// Whose springs are looked at.
enum class Lot {
    any,       ///< springs of many lots, each made to the tolerances and nothing brought in
    adjusted,  ///< springs of one lot whose mean loads the maker brought to `adjusted_to` by free length and coils
};

struct SimulationOptions {
    Lot lot = Lot::any;
    std::array<double, 2> adjusted_to{};  ///< mean loads of an adjusted lot [N]
    std::uint64_t seed = 1;
    long springs = 20000;
    unsigned threads = 1;                    ///< 0: as many as the machine has; the answer does not depend on it
    std::array<double, 2> histogram_from{};  ///< lower edge of the first bin, of each load [N]
    std::array<double, 2> histogram_to{};    ///< upper edge of the last one
    int bins = 40;
    std::vector<LoadWindow> windows;
};

/// The loads of the springs simulated.
struct Simulated {
    long springs = 0;
    std::array<double, 2> mean{};                ///< [N]
    std::array<double, 2> standard_deviation{};  ///< [N]
    double rate_mean = 0.0;                      ///< [N/mm]
    double rate_standard_deviation = 0.0;
    std::array<std::vector<long>, 2> histogram;  ///< springs a bin; those beyond the ends are in none
    std::vector<long> inside;                    ///< springs with both loads in each window
    double rate_factor = 1.0;                    ///< what the adjusting did to the rate of an adjusted lot
    double free_length_shift = 0.0;              ///< and to its free length [mm]
};

/// Loads of springs drawn at random from the model: the same numbers for the same seed, whatever the threads. Needs at
/// least two springs, and distinct lengths for an adjusted lot.
Simulated simulate(const LotModel& model, const SimulationOptions& options);

/// Spread of a load to first order, for springs of any lot or within one: the root of the sum of squares of what each
/// number does to it. From R = G d^4 / (8 D^3 n), F = R (L0 - L), D = De - d or Di + d.
double first_order_deviation_n(const LotModel& model, Lot lot, double length_mm);

}  // namespace seatload::tolerance
