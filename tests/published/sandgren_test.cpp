// SPDX-License-Identifier: MIT
// A mixed-discrete design problem with a known answer: the coil spring of least wire among 42 wire sizes and whole coil
// counts. E. Sandgren, ASME J. Mech. Design 112 (1990) 223; constraints as J. Lampinen and I. Zelinka (1999)
// state them. Examples OPT-SANDGREN, OPT-SANDGREN-RESULTS, OPT-SANDGREN-CEC2020 and OPT-SANDGREN-SCALE of
// accounts.toml.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

#include <seatload/spring/helix.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/units/parse.hpp>

#include "published/inch.hpp"
#include "support/check.hpp"
#include "support/solve.hpp"

namespace {

namespace published = seatload::published;
namespace spring = seatload::spring;

template <class Q>
double stated(const char* text) {
    return seatload::in_base_unit(seatload::units::parse<Q>(text).value.value());
}

struct Problem {
    double largest_load_n = stated<seatload::Force>("1000 lbf");
    double preload_n = stated<seatload::Force>("300 lbf");
    double permitted_mpa = stated<seatload::Stress>("189000 psi");
    double shear_modulus_mpa = stated<seatload::Stress>("11.5 Mpsi");
    double longest_mm = stated<seatload::Length>("14 in");
    double thinnest_wire_mm = stated<seatload::Length>("0.2 in");
    double widest_mm = stated<seatload::Length>("3.0 in");
    double narrowest_mm = stated<seatload::Length>("0.6 in");
    double largest_preload_deflection_mm = stated<seatload::Length>("6.0 in");
    double travel_mm = stated<seatload::Length>("1.25 in");

    double stiffest_n_per_mm() const { return (largest_load_n - preload_n) / travel_mm; }
};

struct SandgrenDesign {
    double d_mm = 0.0;
    double D_mm = 0.0;
    double coils = 0.0;
};

constexpr std::array kWiresInch{0.009, 0.0095, 0.0104, 0.0118, 0.0128, 0.0132, 0.014, 0.015,  0.0162, 0.0173, 0.018,
                                0.020, 0.023,  0.025,  0.028,  0.032,  0.035,  0.041, 0.047,  0.054,  0.063,  0.072,
                                0.080, 0.092,  0.105,  0.120,  0.135,  0.148,  0.162, 0.177,  0.192,  0.207,  0.225,
                                0.244, 0.263,  0.283,  0.307,  0.331,  0.362,  0.394, 0.4375, 0.500};
constexpr int kMostCoils = 70;

/// Volume of the wire with two more coils for the ends [in3].
double volume_in3(const SandgrenDesign& x) {
    const double coils = x.coils + 2.0;
    return spring::wire_mass(1.0, x.d_mm, spring::wire_length(0.0, 0.0, x.D_mm, coils, coils)) /
           (published::kInch * published::kInch * published::kInch);
}

double rate(const Problem& p, const SandgrenDesign& x) {
    return spring::rate(p.shear_modulus_mpa, x.d_mm, x.D_mm, x.coils);
}
double stress_mpa(const Problem& p, const SandgrenDesign& x) {
    return spring::wahl_factor(x.D_mm / x.d_mm) * spring::stress(p.largest_load_n, x.d_mm, x.D_mm);
}
/// How far the travel between the loads falls short of what is asked for [mm].
double travel_short_mm(const Problem& p, const SandgrenDesign& x) {
    return p.travel_mm - (p.largest_load_n - p.preload_n) / rate(p, x);
}

bool is_feasible(const Problem& p, const SandgrenDesign& x) {
    constexpr double kRounding = 1e-9;  // a bound met by solving for it is met to the last bits only
    const double R = rate(p, x);
    const double free_length = p.largest_load_n / R + 1.05 * (x.coils + 2.0) * x.d_mm;
    return x.d_mm >= p.thinnest_wire_mm && x.D_mm >= p.narrowest_mm * (1.0 - kRounding) &&
           x.D_mm + x.d_mm <= p.widest_mm && x.D_mm >= 3.0 * x.d_mm * (1.0 - kRounding) &&
           stress_mpa(p, x) <= p.permitted_mpa * (1.0 + kRounding) && free_length <= p.longest_mm &&
           p.preload_n / R <= p.largest_preload_deflection_mm && travel_short_mm(p, x) <= kRounding * p.travel_mm;
}

/// The least design of a wire and coil count: the narrowest coil that gives the travel, when it meets the rest. Volume
/// grows with D, and every other limit but the two lower bounds is an upper one.
std::optional<SandgrenDesign> least_design(const Problem& p, double d_mm, int coils) {
    SandgrenDesign x{d_mm, 0.0, static_cast<double>(coils)};
    const double wanted = p.stiffest_n_per_mm();
    const auto too_stiff = [&](double D_mm) { return rate(p, {d_mm, D_mm, x.coils}) - wanted; };
    const double D_mm = seatload::test::root_between(1e-3, 1e6, too_stiff);
    x.D_mm = std::max({D_mm, 3.0 * d_mm, p.narrowest_mm});
    return is_feasible(p, x) ? std::optional(x) : std::nullopt;
}

std::vector<SandgrenDesign> all_least_designs(const Problem& p) {
    std::vector<SandgrenDesign> designs;
    for (const double wire : kWiresInch)
        for (int coils = 1; coils <= kMostCoils; ++coils)
            if (const auto found = least_design(p, wire * published::kInch, coils)) designs.push_back(*found);
    std::sort(designs.begin(), designs.end(),
              [](const SandgrenDesign& a, const SandgrenDesign& b) { return volume_in3(a) < volume_in3(b); });
    return designs;
}

/// With the wire and the coils continuous: stress and travel both at their limits.
SandgrenDesign stressed_to_the_limit(const Problem& p, double d_mm) {
    const double D_mm = seatload::test::root_between(1.5 * d_mm, p.widest_mm, [&](double tried) {
        return stress_mpa(p, {d_mm, tried, 1.0}) - p.permitted_mpa;
    });
    return {d_mm, D_mm, spring::active_coils_for_rate(p.shear_modulus_mpa, d_mm, D_mm, p.stiffest_n_per_mm())};
}

struct Reported {
    const char* paper;
    SandgrenDesign design;  ///< as Lampinen and Zelinka tabulate them, d in mm here
    double volume_in3;      ///< as printed
    double half_unit;
};

// d = 0.283 in throughout; designs and volumes as tabulated by J. Lampinen and I. Zelinka (1999).
const std::array<Reported, 6> kReported{{
    {"Sandgren 1990", {0.283 * published::kInch, 1.180701 * published::kInch, 10.0}, 2.7995, 0.00005},
    {"Chen and Tsao 1993", {0.283 * published::kInch, 1.2287 * published::kInch, 9.0}, 2.6709, 0.00005},
    {"Wu and Chow 1995", {0.283 * published::kInch, 1.227411 * published::kInch, 9.0}, 2.6681, 0.00005},
    {"Deb and Goyal 1997", {0.283 * published::kInch, 1.226 * published::kInch, 9.0}, 2.665, 0.0005},
    {"Lampinen and Zelinka 1999", {0.283 * published::kInch, 1.223041010 * published::kInch, 9.0}, 2.65856, 0.000005},
    {"Kannan and Kramer 1994", {0.283 * published::kInch, 1.329 * published::kInch, 7.0}, 2.365, 0.0005},
}};

const Reported& reported(const std::string& paper) {
    return *std::find_if(kReported.begin(), kReported.end(), [&](const Reported& r) { return r.paper == paper; });
}

}  // namespace

TEST_CASE("the lightest spring of 42 wires is Sandgren's with d = 0.283 in and nine coils") {
    const SandgrenDesign best = all_least_designs({}).at(0);
    // f = 2.65856 in3, N = 9, D = 1.223041 in, d = 0.283 in: Lampinen and Zelinka (1999), printed digits.
    CHECK_THAT(volume_in3(best), WithinAbs(2.65856, 0.000005));
    CHECK(best.coils == 9.0);
    CHECK(best.d_mm == 0.283 * published::kInch);
    CHECK_THAT(best.D_mm / published::kInch, WithinAbs(1.223041, 0.0000005));
    CHECK_THAT(travel_short_mm({}, best), WithinAbs(0.0, 1e-9));  // the travel is the limit that decides
}

TEST_CASE("the three next lightest are those another program enumerates") {
    // Volumes from an independent enumeration, not printed in a paper.
    const auto designs = all_least_designs({});
    CHECK_THAT(volume_in3(designs.at(1)), WithinAbs(2.699493709, 5e-10));
    CHECK_THAT(volume_in3(designs.at(2)), WithinAbs(2.800157076, 5e-10));
    CHECK_THAT(volume_in3(designs.at(3)), WithinAbs(2.903223817, 5e-10));
    CHECK(designs.at(1).coils == 5.0);
    CHECK(designs.at(2).coils == 10.0);
    CHECK(designs.at(3).coils == 6.0);
}

TEST_CASE("no spring of a fine scan of every wire and coil count is lighter") {
    const Problem p;
    const double least = volume_in3(all_least_designs(p).at(0));
    long feasible = 0;
    double lightest = 1e9;
    for (const double wire : kWiresInch)
        for (int coils = 1; coils <= kMostCoils; ++coils)
            for (int step = 600; step <= 3000; step += 2) {
                const SandgrenDesign x{wire * published::kInch, 0.001 * step * published::kInch,
                                       static_cast<double>(coils)};
                if (!is_feasible(p, x)) continue;
                ++feasible;
                lightest = std::min(lightest, volume_in3(x));
            }
    CHECK(feasible > 1000);
    CHECK(lightest >= least);
    CHECK_THAT(lightest, WithinAbs(least, 0.002 * 2.2));  // one step of D is worth 2.17 in3/in
}

TEST_CASE("the designs of six papers have the volumes the papers print, with two known exceptions") {
    for (const Reported& r : kReported) {
        INFO(r.paper);
        const double off = volume_in3(r.design) - r.volume_in3;
        if (std::string(r.paper) == "Sandgren 1990")  // its own printed D gives 2.79985, not 2.7995
            CHECK_THAT(off, WithinAbs(0.00034, 0.00001));
        else if (std::string(r.paper) ==
                 "Kannan and Kramer 1994")  // D printed to three decimals gives 2.3636, not 2.365
            CHECK_THAT(off, WithinAbs(-0.00137, 0.00001));
        else
            CHECK_THAT(off, WithinAbs(0.0, r.half_unit));
    }
}

TEST_CASE("two of the six designs do not meet the limits as stated") {
    const Problem p;
    for (const char* paper :
         {"Chen and Tsao 1993", "Wu and Chow 1995", "Deb and Goyal 1997", "Lampinen and Zelinka 1999"}) {
        INFO(paper);
        CHECK(is_feasible(p, reported(paper).design));
    }
    // Sandgren's falls 4e-4 in short of the travel; Kannan and Kramer's is over the stress by 10 200 psi, for they had
    // other limits, so that their 2.365 in3 is not comparable.
    const SandgrenDesign& first = reported("Sandgren 1990").design;
    CHECK_FALSE(is_feasible(p, first));
    CHECK_THAT(travel_short_mm(p, first) / published::kInch, WithinAbs(4.2e-4, 5e-6));
    const SandgrenDesign& light = reported("Kannan and Kramer 1994").design;
    CHECK_FALSE(is_feasible(p, light));
    CHECK_THAT(stress_mpa(p, light) - p.permitted_mpa, WithinRel(stated<seatload::Stress>("10168.7 psi"), 1e-5));
}

TEST_CASE("the best value the CEC-2020 collection lists belongs to the continuous relaxation") {
    // Problem RC30 (case 2): the report states whole coils and the table of wires, and lists 2.6138840583 in3. That is
    // reached only when wire and coils are both continuous; nobody should take it for the target of the discrete
    // problem.
    const Problem p;
    const auto volume = [&](double d_mm) { return volume_in3(stressed_to_the_limit(p, d_mm)); };
    const SandgrenDesign relaxed = stressed_to_the_limit(
        p, seatload::test::lowest_between(0.25 * published::kInch, 0.33 * published::kInch, volume));
    CHECK_THAT(volume_in3(relaxed), WithinAbs(2.6138840583, 5e-11));
    CHECK_THAT(relaxed.d_mm / published::kInch, WithinAbs(0.290965, 5e-7));
    CHECK_THAT(relaxed.coils, WithinAbs(7.1176, 0.0001));
    CHECK_THAT(relaxed.D_mm / published::kInch, WithinAbs(1.372407, 1e-5));
    CHECK(std::none_of(kWiresInch.begin(), kWiresInch.end(),
                       [&](double wire) { return std::abs(wire - relaxed.d_mm / published::kInch) < 0.001; }));
    CHECK(volume_in3(relaxed) < volume_in3(all_least_designs(p).at(0)));
    // Wire out of the table and only the coils continuous, about 8.791 of them: noted as 2.62855 by another program,
    // whose last digit two separate solutions of the equations do not reach (2.62852).
    CHECK_THAT(volume(0.283 * published::kInch), WithinAbs(2.62855, 0.00004));
    CHECK_THAT(stressed_to_the_limit(p, 0.283 * published::kInch).coils, WithinAbs(8.791, 0.0005));
}

TEST_CASE("two collections state the same spring with another scale of the objective") {
    const double best = volume_in3(all_least_designs({}).at(0));
    // pi/4 (N + 2) D d^2, listed as 0.85 and, by memory, 0.84624570; a factor pi is missing from the volume there.
    CHECK_THAT(best / std::numbers::pi, WithinAbs(0.85, 0.005));
    CHECK_THAT(best / std::numbers::pi, WithinAbs(0.84624570, 5e-8));         // last digit recalled
    CHECK_THAT(2.0 * best / std::numbers::pi, WithinAbs(1.692491331, 5e-9));  // pi/2 (N + 2) D d^2, from a program
}
