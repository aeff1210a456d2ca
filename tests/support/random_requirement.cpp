// SPDX-License-Identifier: MIT
#include "random_requirement.hpp"

#include <array>
#include <numbers>
#include <string>

#include <seatload/spring/rate.hpp>

namespace seatload::test {
namespace {

using demand::Requirement;
using spring::Ends;

struct DrawnSpring {
    double d, D, n, Lc, L0, rate;
    double load(double length) const { return rate * (L0 - length); }
};

/// A spring whose stress at solid length is a third to a half of what its wire can bear.
DrawnSpring drawn_spring(Draw& draw) {
    constexpr double kShearModulus = 79000.0;  // MPa, near enough for a spring to write a requirement about
    DrawnSpring s{};
    s.d = draw.between(0.6, 5.0);
    s.D = s.d * draw.between(5.5, 11.0);
    s.n = draw.between(3.5, 11.0);
    s.Lc = (s.n + 2.5) * s.d;
    s.rate = spring::rate(kShearModulus, s.d, s.D, s.n);
    const double stress = draw.between(450.0, 750.0);
    const double solid_load = stress * std::numbers::pi * s.d * s.d * s.d / (8.0 * s.D);
    s.L0 = s.Lc + solid_load / s.rate;
    return s;
}

void ask_for_loads(Requirement& r, const DrawnSpring& s, Draw& draw) {
    const double travel = s.L0 - s.Lc;
    const double L1 = s.L0 - draw.between(0.2, 0.45) * travel;
    const double L2 = s.L0 - draw.between(0.6, 0.85) * travel;
    r.space.seated_height = L1 * mm;
    r.space.full_travel_height = L2 * mm;
    r.seated_load = {0.82 * s.load(L1) * newton, draw.between(1.02, 1.2) * s.load(L1) * newton};
    r.full_travel_load = {std::nullopt, draw.between(1.02, 1.2) * s.load(L2) * newton};
    r.grid.free_length_step = travel / 25.0 * mm;
    r.grid.free_length = demand::LengthRange{L1 * mm, (s.L0 + 0.3 * travel) * mm};
}

void choose_wires(Requirement& r, const DrawnSpring& s, Draw& draw) {
    const std::array<std::string, 6> grades{"ASTM-A228",        "ASTM-A401",           "EN10270-1-SH",
                                            "EN10270-2-FDSiCr", "EN10270-3-1.4310-NS", "ASTM-A229-II"};
    for (std::size_t first = draw.below(grades.size()), i = 0; i < 3; ++i)
        r.wire.grades.push_back(grades[(first + 2 * i) % grades.size()]);
    r.wire.diameters = {0.9 * s.d * mm, s.d * mm, 1.08 * s.d * mm};
}

}  // namespace

demand::Requirement random_requirement(unsigned seed) {
    Draw draw(seed);
    const DrawnSpring s = drawn_spring(draw);
    Requirement r;
    r.limits = demand::school_defaults(draw.below(2) == 0 ? spring::School::en_13906 : spring::School::handbook);
    ask_for_loads(r, s, draw);
    choose_wires(r, s, draw);
    const double bore = (s.D + s.d) * draw.between(1.04, 1.15);
    r.space.bore = demand::Fit{bore * mm, (bore + 0.05) * mm, bore * mm};
    constexpr std::array kSeats{demand::Seats::fixed, demand::Seats::pivots, demand::Seats::slides,
                                demand::Seats::guided};
    r.space.seats = kSeats[draw.below(kSeats.size())];
    r.surroundings.temperature = {draw.between(20.0, 110.0)};
    r.ends = draw.below(2) == 0 ? std::vector{Ends::closed_ground, Ends::closed}
                                : std::vector{Ends::closed, Ends::open_ground};
    r.grid.mean_diameter_step = s.D / 40.0 * mm;
    r.grid.mean_diameter = demand::LengthRange{0.8 * s.D * mm, 1.15 * s.D * mm};
    r.grid.total_coils = {s.n + 0.5, s.n + 4.5};
    r.grid.total_coils_step = 0.5;
    return r;
}

}  // namespace seatload::test
