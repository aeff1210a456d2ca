// SPDX-License-Identifier: MIT
#include <seatload/sizing/made_quantity.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

#include <seatload/check/rule.hpp>
#include <seatload/core/wide.hpp>
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/gap.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>

namespace seatload::sizing {
namespace {

using check::Coil;
using tolerance::MadeColumn;
using tolerance::MadeSprings;
constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// Fills a column with what `value` says of each spring. The loops are plain ones that a compiler can run in parallel:
/// what they fill can be nothing they read.
template <class Value>
SEATLOAD_INLINE void fill(MadeColumn& out, const Value& value) {
    MadeColumn own;
    for (std::size_t i = 0; i < tolerance::kMadeChunk; ++i) own[i] = value(i);
    out = own;
}

/// std::max and std::min by value: over references a loop is not run several springs at once.
constexpr double larger(double a, double b) { return a < b ? b : a; }
constexpr double smaller(double a, double b) { return b < a ? b : a; }

// ---- the coil's own lengths ----------------------------------------------------------------------------------------

/// What is added to the active coils for the length of the pressed coil, in wires: the same for any number of coils.
double solid_wires_beyond(const Coil& c) {
    const double dead = spring::dead_coils(c.ends);
    return c.demand.limits.solid_form == demand::SolidForm::en ? spring::en_solid_wires(c.ends, dead)
                                                               : spring::textbook_solid_wires(c.ends, dead);
}

double gap_factor(const Coil& c) { return c.demand.dynamic ? spring::kDynamicGapFactor : 1.0; }

// ---- measures ------------------------------------------------------------------------------------------------------

void seated_load(const Coil&, const MadeSprings& s, MadeColumn& out) { out = s.seated; }
void full_travel_load(const Coil&, const MadeSprings& s, MadeColumn& out) { out = s.full; }
void free_length(const Coil&, const MadeSprings& s, MadeColumn& out) { out = s.L0; }

SEATLOAD_WIDE void bore_clearance(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double bore = *c.demand.bore_smallest_mm;
    const double end_wires = spring::end_wires(c.ends);
    const double turns_beyond = c.ends == spring::Ends::open_ground ? 1.0 : 0.0;
    const auto clearance = [&](std::size_t i, const auto& growth) {
        const double pitch = (s.L0[i] - s.d[i] * end_wires) / (s.n[i] + turns_beyond);
        const double widening = growth(pitch, s.d[i], s.D[i]);
        return bore - (s.D[i] + s.d[i]) - (pitch > s.d[i] ? widening : 0.0);
    };
    if (c.demand.limits.growth_form == demand::GrowthForm::ends_free)
        fill(out, [&](std::size_t i) { return clearance(i, spring::growth_ends_free<double>); });
    else
        fill(out, [&](std::size_t i) { return clearance(i, spring::growth_ends_held<double>); });
}

SEATLOAD_WIDE void rod_clearance(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double rod = *c.demand.rod_largest_mm;
    fill(out, [&](std::size_t i) { return s.D[i] - s.d[i] - rod; });
}

SEATLOAD_WIDE void room_above_solid(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double L2 = c.demand.full_travel_height_mm;
    const double beyond = solid_wires_beyond(c);
    if (c.demand.limits.gap_rule == demand::GapRule::en_sa) {
        const double factor = gap_factor(c);
        fill(out, [&](std::size_t i) {
            return L2 - (s.n[i] + beyond) * s.d[i] - factor * spring::smallest_gaps(s.d[i], s.D[i], s.n[i]);
        });
    } else {
        const double share = c.demand.limits.gap_share;
        fill(out, [&](std::size_t i) { return L2 - (s.n[i] + beyond) * s.d[i] - larger(0.0, share * (s.L0[i] - L2)); });
    }
}

/// Uncorrected stress at the length at which the static stress is judged.
template <class Factor>
SEATLOAD_INLINE void judged_stress(const Coil& c, const MadeSprings& s, MadeColumn& out, const Factor& factor) {
    const double beyond = solid_wires_beyond(c);
    const double gaps = c.demand.limits.stress_length == demand::StressLength::solid ? 0.0 : gap_factor(c);
    const auto stress = [&](std::size_t i, double length) {
        return s.rate[i] * (s.L0[i] - length) * spring::stress(1.0, s.d[i], s.D[i]) * factor(s.D[i] / s.d[i]);
    };
    if (c.demand.limits.stress_length == demand::StressLength::full_travel) {
        const double L2 = c.demand.full_travel_height_mm;
        fill(out, [&](std::size_t i) { return stress(i, L2); });
    } else {
        fill(out, [&](std::size_t i) {
            return stress(i, (s.n[i] + beyond) * s.d[i] + gaps * spring::smallest_gaps(s.d[i], s.D[i], s.n[i]));
        });
    }
}

SEATLOAD_WIDE void static_stress(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    switch (c.demand.limits.stress_factor) {
        case demand::StressFactor::none:
            return judged_stress(c, s, out, [](double) { return 1.0; });
        case demand::StressFactor::bergstraesser:
            return judged_stress(c, s, out, [](double w) { return spring::bergstraesser_factor(w); });
        case demand::StressFactor::wahl:
            return judged_stress(c, s, out, [](double w) { return spring::wahl_factor(w); });
    }
}

/// Working deflection over the deflection at which the spring buckles; 0 when it never does.
SEATLOAD_INLINE void buckling_use(const Coil& c, const MadeSprings& s, MadeColumn& out, double seating_coefficient) {
    const double L2 = c.demand.full_travel_height_mm;
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    const double stable = spring::stable_slenderness(moduli, seating_coefficient);
    fill(out, [&](std::size_t i) {
        const double q = stable * s.D[i] / s.L0[i];
        const double root = 1.0 - q * q;
        const double share = 0.5 / (1.0 - moduli) * (1.0 - std::sqrt(larger(0.0, root)));
        const double use = (s.L0[i] - L2) / (s.L0[i] * share);
        return root < 0.0 || use < 0.0 ? 0.0 : use;
    });
}

SEATLOAD_WIDE void buckling(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    buckling_use(c, s, out, c.demand.seating_coefficient);
}
SEATLOAD_WIDE void sideways_stiffness(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    buckling_use(c, s, out, 1.0);
}

/// Sine and cosine of an angle up to a right one, within 6e-8: sums and products alone, as a library's last digits
/// differ between machines.
struct SineCosine {
    double sine, cosine;
};
SineCosine sine_cosine(double x) {
    constexpr double s3 = -1.0 / 6, s5 = 1.0 / 120, s7 = -1.0 / 5040, s9 = 1.0 / 362880, s11 = -1.0 / 39916800;
    constexpr double c2 = -0.5, c4 = 1.0 / 24, c6 = -1.0 / 720, c8 = 1.0 / 40320, c10 = -1.0 / 3628800,
                     c12 = 1.0 / 479001600;
    const double y = x * x;
    return {x * (1.0 + y * (s3 + y * (s5 + y * (s7 + y * (s9 + y * s11))))),
            1.0 + y * (c2 + y * (c4 + y * (c6 + y * (c8 + y * (c10 + y * c12)))))};
}

/// spring::sideways_lean() of a made spring, its turns those of its tips.
class MadeLean {
  public:
    explicit MadeLean(const Coil& c)
        : L2_(c.demand.full_travel_height_mm),
          moduli_(c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa),
          end_wires_(spring::end_wires(c.ends)),
          turns_beyond_(c.ends == spring::Ends::open_ground ? 1.0 : 0.0) {}

    /// Fills the lean of each spring, without a branch, and whether it is pushed away: then what it leans is no number.
    SEATLOAD_INLINE void fill(const MadeSprings& s, MadeColumn& lean, MadeColumn& pushed_away) const {
        const MadeLean by = *this;  // a copy, which nothing filled can change
        for (std::size_t i = 0; i < tolerance::kMadeChunk; ++i) {
            const double n = s.turns[i];
            const double active = larger(1e-9, (s.L0[i] - s.d[i] * by.end_wires_) * n / (n + by.turns_beyond_));
            const double slenderness = active / s.D[i];
            const double pressed = larger(0.0, (s.L0[i] - by.L2_) / active);
            const double square = larger(
                0.0, slenderness * slenderness * (0.5 + by.moduli_) * pressed * (1.0 - pressed * (1.0 - by.moduli_)));
            const double x = std::sqrt(smaller(square, kBuckled));
            const SineCosine wave = sine_cosine(x);
            const double whole = x * wave.sine / (wave.cosine * (std::numbers::pi * n * (0.5 + by.moduli_)));
            // With n = k + 1/2 + f, |cos(pi n)| is |sin(pi f)| and |sin(pi n)| is cos(pi f).
            const double below = static_cast<double>(static_cast<std::int32_t>(n));
            const SineCosine tips = sine_cosine(std::numbers::pi * (n - below - 0.5));
            const double rest = larger(1.06 - square * (1.0 / 3.0), square * (0.66 + 0.6 * pressed) - 0.93);
            lean[i] = s.D[i] * (whole * (std::abs(tips.sine) + tips.cosine * rest / (4.0 * n)));
            const double beyond_straight = pressed >= 1.0 ? 1.0 : 0.0;
            pushed_away[i] = square >= kBuckled ? 1.0 : beyond_straight;
        }
    }

  private:
    static constexpr double kBuckled = 0.25 * std::numbers::pi * std::numbers::pi * (1.0 - 1e-6);
    double L2_, moduli_, end_wires_, turns_beyond_;
};

/// What bore and rod leave beside the coil, each with its clearance, or the stated share of D, less what it leans; a
/// mean diameter short of it at worst, so that it stays a number for coils that are pushed away.
SEATLOAD_WIDE void room_beside_lean(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const demand::Limits& limits = c.demand.limits;
    MadeColumn room;
    room.fill(kInfinite);
    if (c.demand.bore_smallest_mm) {
        bore_clearance(c, s, room);
        for (double& each : room) each -= in_mm(limits.bore_clearance);
    }
    if (c.demand.rod_largest_mm) {
        MadeColumn over_rod;
        rod_clearance(c, s, over_rod);
        for (std::size_t i = 0; i < tolerance::kMadeChunk; ++i)
            room[i] = smaller(room[i], over_rod[i] - in_mm(limits.rod_clearance));
    }
    const bool is_bounded = c.demand.bore_smallest_mm || c.demand.rod_largest_mm;
    const double share = limits.lean_share;
    if (!is_bounded) fill(room, [&](std::size_t i) { return share * s.D[i]; });
    MadeColumn lean, left, pushed_away;
    MadeLean(c).fill(s, lean, pushed_away);
    fill(left, [&](std::size_t i) { return larger(larger(0.0, room[i]) - lean[i], -s.D[i]); });
    fill(out, [&](std::size_t i) {
        const double most_left = pushed_away[i] > 0.0 ? -kInfinite : left[i];
        return larger(most_left, -s.D[i]);
    });
}

SEATLOAD_WIDE void surge(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double motion = *c.demand.frequency_hz;
    fill(out, [&](std::size_t i) {
        return spring::surge_frequency(s.modulus[i], c.wire.density_t_mm3, s.d[i], s.D[i], s.n[i]) / motion;
    });
}

/// One over the fatigue factor; 0 where nothing pulls.
template <class Use>
SEATLOAD_INLINE void fatigue_by(const MadeSprings& s, MadeColumn& out, const Use& use) {
    fill(out, [&](std::size_t i) {
        const double per_newton = spring::stress(1.0, s.d[i], s.D[i]) * spring::bergstraesser_factor(s.D[i] / s.d[i]);
        const double amplitude = 0.5 * (s.full[i] - s.seated[i]) * per_newton;
        const double mean = 0.5 * (s.full[i] + s.seated[i]) * per_newton;
        const double used = 1.0 / use(amplitude, mean);
        return mean <= 0.0 ? 0.0 : used;
    });
}

SEATLOAD_WIDE void fatigue(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double strength = spring::kShearStrengthShare * c.wire.tensile_strength_mpa;
    const auto& point = c.demand.endurance_mpa;
    switch (c.demand.limits.fatigue_line) {
        case demand::FatigueLine::goodman:
            return fatigue_by(s, out,
                              [&](double a, double m) { return spring::goodman_factor(a, m, point, strength); });
        case demand::FatigueLine::gerber:
            return fatigue_by(s, out, [&](double a, double m) { return spring::gerber_factor(a, m, point, strength); });
        case demand::FatigueLine::sines:
            return fatigue_by(s, out, [&](double a, double) { return spring::sines_factor(a, point); });
    }
}

SEATLOAD_WIDE void mass(const Coil& c, const MadeSprings& s, MadeColumn& out) {
    const double dead = spring::dead_coils(c.ends);
    fill(out, [&](std::size_t i) {
        const double pitch = spring::pitch(c.ends, s.L0[i], s.d[i], s.n[i]);
        const double length = spring::wire_length(pitch, s.d[i], s.D[i], s.n[i], s.n[i] + dead);
        return spring::wire_mass(c.wire.density_t_mm3, s.d[i], length) * 1e6;
    });
}

// ---- bounds --------------------------------------------------------------------------------------------------------

/// Inclusive bounds, with the slack of the rules.
double from(double least) { return least - check::kInclusive * std::abs(least); }
double up_to(double most) { return most + check::kInclusive * std::abs(most); }

MadeQuantity load(const Coil& c, std::string_view id, std::string_view name, decltype(MadeQuantity::measure) measure,
                  const std::optional<double>& at_least, const std::optional<double>& at_most) {
    MadeQuantity q{id, name, "N", measure};
    if (at_least) q.least = from(*at_least / (c.wire.hot_share * c.wire.load_kept));
    if (at_most) q.most = up_to(*at_most);
    return q;
}

void add_room(const Coil& c, std::vector<MadeQuantity>& out) {
    const demand::Limits& limits = c.demand.limits;
    if (c.demand.bore_smallest_mm) {
        // The slack is one of the bore, as that is what the rule's value is held to.
        const double slack = check::kInclusive * *c.demand.bore_smallest_mm;
        out.push_back({"bore_clearance", "clearance in the bore, compressed", "mm", bore_clearance,
                       in_mm(limits.bore_clearance) - slack});
    }
    if (c.demand.rod_largest_mm)
        out.push_back({"rod_clearance", "clearance over the rod", "mm", rod_clearance,
                       in_mm(limits.rod_clearance) - check::kInclusive * *c.demand.rod_largest_mm});
    out.push_back({"gap_to_solid", "room to solid beyond the gap asked for", "mm", room_above_solid,
                   -check::kInclusive * c.demand.full_travel_height_mm});
    MadeQuantity length{"free_length", "free length", "mm", free_length};
    length.least = from(std::max(c.demand.seated_height_mm, c.demand.shortest_mm.value_or(0.0)));
    length.most = up_to(c.demand.longest_mm.value_or(kInfinite));
    out.push_back(length);
}

void add_stability(const Coil& c, std::vector<MadeQuantity>& out) {
    const check::DemandNumbers& d = c.demand;
    if (d.slides)
        out.push_back({"lean", "room left beside the lean", "mm", room_beside_lean,
                       -check::kInclusive * d.full_travel_height_mm});
    if (d.guided) return;
    out.push_back(
        {"buckling", "buckling reserve", "", buckling, -kInfinite, up_to(1.0 / d.limits.buckling_margin), true});
    if (d.slides && (d.seating_coefficient < 1.0 || d.limits.buckling_margin < 1.0))
        out.push_back({"sideways_stiffness", "reserve before a sliding seat is pushed away", "", sideways_stiffness,
                       -kInfinite, up_to(1.0), true});
}

void add_motion(const Coil& c, std::vector<MadeQuantity>& out) {
    const demand::Limits& limits = c.demand.limits;
    if (c.demand.dynamic && c.wire.has_endurance)
        out.push_back({"fatigue", "fatigue factor", "", fatigue, -kInfinite, up_to(1.0 / limits.fatigue_factor), true});
    if (c.demand.frequency_hz)
        out.push_back(
            {"surge", "natural frequency over that of the motion", "", surge, from(limits.smallest_surge_ratio)});
    if (limits.largest_mass)
        out.push_back({"mass", "mass", "g", mass, -kInfinite, up_to(in_gram(*limits.largest_mass))});
}

}  // namespace

std::vector<MadeQuantity> made_quantities(const check::Coil& c) {
    std::vector<MadeQuantity> out{load(c, "seated_load", "seated load, cold and new", seated_load,
                                       c.demand.seated_at_least_n, c.demand.seated_at_most_n),
                                  load(c, "full_travel_load", "full-travel load, cold and new", full_travel_load,
                                       c.demand.full_at_least_n, c.demand.full_at_most_n)};
    add_room(c, out);
    out.push_back({"stress", "static stress", "MPa", static_stress, -kInfinite, up_to(c.wire.permissible_stress_mpa)});
    add_stability(c, out);
    add_motion(c, out);
    return out;
}

}  // namespace seatload::sizing
