// SPDX-License-Identifier: MIT
#include <seatload/tolerance/made_springs.hpp>

#include <algorithm>

#include <seatload/core/wide.hpp>
#include <seatload/tolerance/counter_random.hpp>
#include <seatload/tolerance/cut_normal.hpp>

namespace seatload::tolerance {
namespace {

constexpr std::uint64_t kWordsPerSpring = 3;                  // two numbers a word; the tips have a stream of their own
constexpr std::uint64_t kTipsStream = 0x6A09E667F3BCC908ULL;  // any other seed: fraction of the root of 2

/// Numbers of an order that are the same for all its springs.
struct Aim {
    explicit Aim(const MadeOrder& o)
        : rate((o.loads[1] - o.loads[0]) / (o.lengths[0] - o.lengths[1])),
          load(0.5 * (o.loads[0] + o.loads[1])),
          length(0.5 * (o.lengths[0] + o.lengths[1])),
          side(o.outside_rules ? -1.0 : 1.0) {}

    double rate;    ///< that gives both loads
    double load;    ///< half way between the two
    double length;  ///< where the spring gives it
    double side;    ///< of the wire's diameter in D = De - d or Di + d
};

/// std::clamp by value: over references a loop is not run several springs at once.
constexpr double held(double value, double least, double most) {
    value = value < least ? least : value;
    return most < value ? most : value;
}

/// 1 + x to the power of a third, for x that a tolerance brings about: good to 5e-5 at x = 0.1, and what is missed the
/// free length takes up.
double cube_root_of_one_and(double x) { return 1.0 + x * (1.0 / 3.0 - x * (1.0 / 9.0)); }

}  // namespace

void draw_strays(std::uint64_t seed, std::uint64_t first, MadeStrays& strays) {
    const CutNormal& curve = CutNormal::table();
    for (std::size_t i = 0; i < kMadeChunk; ++i)
        for (std::size_t k = 0; k < kWordsPerSpring; ++k) {
            const std::uint64_t word = counter_random(seed, (first + i) * kWordsPerSpring + k);
            strays[2 * k][i] = curve(static_cast<std::uint32_t>(word));
            strays[2 * k + 1][i] = curve(static_cast<std::uint32_t>(word >> 32));
        }
    MadeColumn& tips = strays[static_cast<std::size_t>(MadeNumber::tips)];
    for (std::size_t i = 0; i < kMadeChunk; ++i)
        tips[i] = curve(static_cast<std::uint32_t>(counter_random(seed ^ kTipsStream, first + i)));
}

std::size_t corner_strays(MadeStrays& strays) {
    constexpr std::size_t kCorners = std::size_t{1} << kMadeNumbers;
    for (std::size_t i = 0; i < kMadeChunk; ++i)
        for (std::size_t k = 0; k < kMadeNumbers; ++k)
            strays[k][i] = (std::min(i, kCorners - 1) >> k & 1) != 0 ? 1.0 : -1.0;
    return kCorners;
}

SEATLOAD_WIDE void make_springs(const MadeOrder& order, const MadeAllowance& allowance, const MadeStrays& strays,
                                MadeSprings& out) {
    const Aim aim(order);
    const MadeOrder o = order;  // copies, which nothing written to `out` can change
    const MadeAllowance by = allowance;
    const auto& [by_wire, by_modulus, by_lot, by_coil, by_coils, by_length, by_tips] = strays;
    const double smallest_lot = o.coil_diameter - by.lot_coil_diameter;
    const double largest_lot = o.coil_diameter + by.lot_coil_diameter;
    for (std::size_t i = 0; i < kMadeChunk; ++i) {
        const double d = o.wire_diameter + by.wire_diameter * by_wire[i];
        const double G = o.shear_modulus + by.shear_modulus * by_modulus[i];
        const double stiffness = 0.125 * G * (d * d) * (d * d);
        const double found = o.coil_diameter + by.lot_coil_diameter * by_lot[i];
        const double found_D = found + aim.side * d;
        const double wanted_n = stiffness / (found_D * found_D * found_D * aim.rate);
        const double n = held(wanted_n, o.fewest_coils, o.most_coils);
        const double wanted = found_D * cube_root_of_one_and(wanted_n / n - 1.0) - aim.side * d;
        const double lot_D = held(wanted, smallest_lot, largest_lot) + aim.side * d;
        const double softness = lot_D * lot_D * lot_D * n / stiffness;
        const double D = lot_D + by.coil_diameter * by_coil[i];
        const double piece_n = n + by.active_coils * by_coils[i];
        const double L0 = aim.length + aim.load * softness + by.free_length * by_length[i];
        const double rate = stiffness / (D * D * D * piece_n);
        out.d[i] = d;
        out.modulus[i] = G;
        out.D[i] = D;
        out.n[i] = piece_n;
        out.turns[i] = n;
        out.L0[i] = L0;
        out.rate[i] = rate;
        out.seated[i] = rate * (L0 - o.lengths[0]);
        out.full[i] = rate * (L0 - o.lengths[1]);
    }
    if (!o.tips) {
        out.turns = out.n;
        return;
    }
    const double tips = *o.tips;
    for (std::size_t i = 0; i < kMadeChunk; ++i) out.turns[i] += tips * by_tips[i];
}

}  // namespace seatload::tolerance
