// SPDX-License-Identifier: MIT
#pragma once

#include <limits>

#include <seatload/check/numbers.hpp>

namespace seatload::sizing {

/// How many times what tolerances do to a spring fits between the spring as drawn and its limits, by the side to which
/// the free length must not go. The first grows with the free length, the second falls.
struct Rooms {
    double below = std::numeric_limits<double>::infinity();
    double above = std::numeric_limits<double>::infinity();

    double least() const { return below < above ? below : above; }
};

/// Of one coil, what does not hang on its free length worked out once.
///
/// A load is let stray by its EN 15800 tolerance, in the requirement's grade. Each other limit that tolerances can
/// break (bore, rod, room to solid, free length, static stress, buckling, lean) is let stray by the root of the sum of
/// squares of what the tolerances of coil diameter, wire, coils, free length and, in the lot the maker brings in,
/// modulus do to it, as the springs of `outlook` stray. Surge, fatigue and mass are left out: they judge the spring as
/// ordered.
class ToleranceRooms {
  public:
    explicit ToleranceRooms(const check::Coil& coil);

    Rooms at(double free_length_mm) const;

  private:
    void set_solid();
    void set_stability();
    void add_loads(Rooms& rooms, double L0) const;
    void add_lengths(Rooms& rooms, double L0) const;
    double play_in_bore(double L0) const;
    double play_over_rod(double L0) const;
    double play(double L0) const;
    double bore_and_rod(double L0) const;
    double gap(double L0) const;
    double stress(double L0) const;
    double lean(double L0) const;
    double whole_lean(double L0) const;

    const check::Coil& coil_;
    double load_base_n_;       ///< the part of a load's tolerance that does not grow with it
    double load_share_;        ///< and the other, of the load
    double length_mm_;         ///< tolerance of the free length
    double diameter_mm_;       ///< tolerance of the coil diameter
    double solid_mm_ = 0.0;    ///< solid length as drawn
    double solid_strays_ = 0;  ///< and how far it strays [mm]
    /// Free length at which it buckles, and how far that strays with the coil diameter and the free length itself [mm].
    struct Stable {
        double longest_mm = std::numeric_limits<double>::infinity();
        double strays_mm = 1.0;
    };
    Stable buckling_, pushed_away_;
    double tips_ = 0.0;  ///< share of the lean of whole turns that the tips, off by their tolerance, let in
};

}  // namespace seatload::sizing
