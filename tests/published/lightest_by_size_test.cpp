// SPDX-License-Identifier: MIT
// Two families of optimisation problems whose least spring is known, posed as requirements: our search finds that
// spring, and none that fits has less wire. Examples OPT-SANDGREN, OPT-SANDGREN-RESULTS, OPT-SANDGREN-CEC2020,
// OPT-SANDGREN-SCALE, OPT-TCS-71785 and OPT-TCS-RESULTS of accounts.toml. A limit on mass would count the wire along
// the helix; the papers count flat turns, pi D (N + 2). So the volume is bounded by the diameter: of a wire and a
// number of coils only the diameters are looked at that make it no more.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/units/parse.hpp>
#include <support/builtin.hpp>

#include "published/inch.hpp"
#include "support/check.hpp"

using namespace seatload;

namespace {

constexpr double kSquare = std::numbers::pi * std::numbers::pi / 4.0;

template <class Q>
Q light_stated(const char* text) {
    return units::parse<Q>(text).value.value();
}

/// Steel as these problems state it: one modulus, one permitted stress with Wahl's factor.
wire::Grade steel(const char* permitted) {
    wire::Grade grade;
    grade.id = "as published";
    grade.strength = wire::StrengthGiven{light_stated<Stress>(permitted), 0.01 * mm, 20.0 * mm};
    grade.moduli = {{20.0 * mm, light_stated<Stress>("11.5 Mpsi"), light_stated<Stress>("30 Mpsi")}};
    grade.density = light_stated<Density>("7890.58 kg/m3");  // 7.38342e-4 lbf s2/in4; Sandgren states none
    grade.service_limit = Celsius{100.0};
    return grade;
}

/// A load at full travel, met from below to a share of it, and no other limit than those set later.
demand::Requirement loaded(const char* load, double share, const wire::Grade& grade) {
    demand::Requirement r;
    r.space.seats = demand::Seats::guided;
    r.full_travel_load = {(1.0 - share) * light_stated<Force>(load), light_stated<Force>(load)};
    r.wire.own_grades = {grade};
    r.surroundings.temperature = Celsius{20.0};
    r.limits = demand::school_defaults(spring::School::handbook);
    r.limits.stress_share = 1.0;
    r.limits.stress_safety = 1.0;
    r.limits.stress_length = demand::StressLength::full_travel;
    r.limits.stress_factor = demand::StressFactor::wahl;
    r.limits.gap_share = 0.0;
    r.limits.smallest_index = 1.5;
    r.limits.largest_index = 1000.0;
    r.limits.largest_ground_index = 1000.0;
    r.limits.smallest_ground_wire = 0.0 * mm;
    r.limits.fewest_active_coils = 1.0;
    r.limits.most_active_coils = 1000.0;
    return r;
}

/// A design of a paper [in].
struct LightDesign {
    double d = 0.0, D = 0.0, N = 0.0;
    /// (N + 2) D d^2, the volume of its wire without pi^2/4.
    double wire() const { return (N + 2.0) * D * d * d; }
    double volume() const { return kSquare * wire(); }
};

/// Deflection [in] under a load [lbf]: F = G d^4 s / (8 D^3 n). Only grids are made with it.
double deflection(double load, const LightDesign& x) {
    return load * 8.0 * std::pow(x.D, 3) * x.N / (11.5e6 * std::pow(x.d, 4));
}

demand::LengthRange inches(double from, double to) {
    return {from * published::kInch * mm, to * published::kInch * mm};
}

/// Looks at one wire and number of coils only.
void narrow(demand::Requirement& r, const LightDesign& x) {
    r.wire.diameters = {x.d * published::kInch * mm};
    r.grid.total_coils = {x.N + 2.0, x.N + 2.0};
    r.grid.total_coils_step = x.N + 2.0;
}

/// Looks at that one spring only.
void narrow_to(demand::Requirement& r, const LightDesign& x, double free_length) {
    narrow(r, x);
    r.grid.mean_diameter = inches(x.D, x.D);
    r.grid.mean_diameter_step = x.D * published::kInch * mm;
    r.grid.free_length = inches(free_length, free_length);
    r.grid.free_length_step = free_length * published::kInch * mm;
}

std::optional<sizing::Candidate> any_of(const demand::Requirement& r) {
    const sizing::Space space = sizing::search_space(r, test::wires());
    sizing::SearchOptions options;
    options.threads = 1;
    return sizing::any_fit(space, test::tolerances(), options);
}

/// The rules a spring of which the grid has no other breaks.
std::set<std::string> broken(const demand::Requirement& r) {
    const sizing::Space space = sizing::search_space(r, test::wires());
    sizing::Candidate only{
        0, space.ends.at(0), space.wires.at(0).mean_diameters.at(0), space.total_coils.at(0), space.free_lengths.at(0),
        {}};
    std::set<std::string> ids;
    for (const std::size_t i : sizing::indices(sizing::broken_rules(space, test::tolerances(), only)))
        ids.insert(std::string(check::rules()[i].id));
    return ids;
}

// ---- Sandgren's spring ---------------------------------------------------------------------------------------------

constexpr std::array kWires{0.009, 0.0095, 0.0104, 0.0118, 0.0128, 0.0132, 0.014, 0.015,  0.0162, 0.0173, 0.018,
                            0.020, 0.023,  0.025,  0.028,  0.032,  0.035,  0.041, 0.047,  0.054,  0.063,  0.072,
                            0.080, 0.092,  0.105,  0.120,  0.135,  0.148,  0.162, 0.177,  0.192,  0.207,  0.225,
                            0.244, 0.263,  0.283,  0.307,  0.331,  0.362,  0.394, 0.4375, 0.500};
constexpr double kTravel = 1.25;

/// Two coils for the ends, and 5 % above solid at full travel.
double full_travel_height(const LightDesign& x) { return 1.05 * (x.N + 2.0) * x.d; }

/// At least 300 lbf at the seat and 1000 lbf 1.25 in further on; at most 189 000 psi, 14 in free, an index of 3 or
/// more.
demand::Requirement sandgren(double height) {
    demand::Requirement r = loaded("1000 lbf", 1e-4, steel("189000 psi"));
    r.space.full_travel_height = height * published::kInch * mm;
    r.space.seated_height = (height + kTravel) * published::kInch * mm;
    r.seated_load.at_least = light_stated<Force>("300 lbf");
    r.space.free_length = inches(0.01, 14.0);
    r.limits.smallest_index = 3.0;
    r.grid.free_length_step = 1e-4 * published::kInch * mm;
    return r;
}

/// A spring of a wire and a number of coils that fits and has no more than a volume [in3], D by 0.0001 in. The
/// problem's bound of 6 in on the deflection at the seat is left out, so that more fit, if anything; the least is 0.54
/// in down.
std::optional<LightDesign> no_heavier(double volume, double d, double N) {
    const LightDesign largest{d, std::min(3.0 - d, volume / kSquare / ((N + 2.0) * d * d)), N};
    const double narrowest = std::max(0.6, 3.0 * d), height = full_travel_height(largest);
    if (largest.D < narrowest || height + kTravel >= 14.0) return std::nullopt;
    demand::Requirement r = sandgren(height);
    narrow(r, largest);
    r.grid.mean_diameter = inches(narrowest, largest.D);
    r.grid.mean_diameter_step = 1e-4 * published::kInch * mm;
    r.grid.free_length = inches(height + kTravel, std::min(14.0, height + deflection(1000.0, largest) + 1e-3));
    const auto found = any_of(r);
    return found ? std::optional(LightDesign{d, found->mean_diameter_mm / published::kInch, N}) : std::nullopt;
}

std::vector<LightDesign> all_no_heavier(double volume) {
    std::vector<LightDesign> found;
    for (const double d : kWires)
        for (int N = 1; N <= 70 && d >= 0.2; ++N)
            if (const auto one = no_heavier(volume, d, N)) found.push_back(*one);
    return found;
}

// ---- the tension and compression spring ----------------------------------------------------------------------------

// The half inch of the problem, made less by the constant 71785 that came to stand for 71875 (see
// tension_compression_test.cpp).
constexpr double kLightDeflection = 0.5 * 71785.0 / 71875.0;

/// 10 lbf, half an inch down or more; at most 80 000 psi and at least 100 Hz.
demand::Requirement tension_compression(double least_deflection) {
    demand::Requirement r = loaded("10 lbf", 1e-6, steel("80000 psi"));
    r.space.full_travel_height = 3.0 * published::kInch * mm;
    r.space.seated_height = (3.0 + least_deflection) * published::kInch * mm;
    r.duty.cycles = 1.0;  // static, but with a frequency
    r.duty.frequency = light_stated<Frequency>("100 Hz");
    r.limits.smallest_surge_ratio = 1.0;
    r.grid.free_length_step = 4e-7 * published::kInch * mm;
    return r;
}

bool fits_with(double objective, double d, double N) {
    const LightDesign largest{d, std::min(1.3, objective / ((N + 2.0) * d * d)), N};
    const double longest = std::min(deflection(10.0, largest) + 1e-6, kLightDeflection + 0.02);
    if (largest.D < 0.25 || longest < kLightDeflection) return false;
    demand::Requirement r = tension_compression(kLightDeflection);
    narrow(r, largest);
    r.grid.mean_diameter = inches(0.25, largest.D);
    r.grid.mean_diameter_step = 1e-5 * published::kInch * mm;
    r.grid.free_length = inches(3.0 + kLightDeflection, 3.0 + longest);
    return any_of(r).has_value();
}

int count_with(double objective) {
    int count = 0;
    for (int i = 0; i <= 25; ++i)
        for (int k = 20; k <= 150; ++k) count += fits_with(objective, 0.05 + 0.0004 * i, 0.1 * k);
    return count;
}

}  // namespace

TEST_CASE("of all springs that fit, the one of least wire is Sandgren's of 0.283 in and nine coils") {
    // OPT-SANDGREN: f = 2.65856 in3, N = 9, D = 1.223041 in, d = 0.283 in, Lampinen and Zelinka (1999), printed digits.
    CHECK(all_no_heavier(2.658555).empty());
    const auto found = all_no_heavier(2.65856 + 0.0003);  // a step of D is worth 0.00022 in3
    REQUIRE(found.size() == 1);
    CHECK(found[0].d == 0.283);
    CHECK(found[0].N == 9.0);
    CHECK_THAT(found[0].D, WithinAbs(1.223041, 1e-4));
    CHECK_THAT(found[0].volume() / std::numbers::pi, WithinAbs(0.85, 0.005));  // as OPT-SANDGREN-SCALE lists it
    // The next ones, from an independent enumeration: 2.699494 (N = 5, d = 0.307), 2.800157 (10, 0.283).
    CHECK(all_no_heavier(2.6990).size() == 1);
    CHECK(all_no_heavier(2.6999).size() == 2);
}

TEST_CASE("a limit on mass closes in on Sandgren's spring") {
    // At the heights his spring has. Wire is counted along the helix here, 0.8 % more than flat turns.
    demand::Requirement r = sandgren(full_travel_height({0.283, 1.223041, 9.0}));
    for (const double d : kWires)
        if (d >= 0.2) r.wire.diameters.push_back(d * published::kInch * mm);
    r.grid.total_coils = {3.0, 72.0};
    r.grid.total_coils_step = 1.0;
    r.grid.mean_diameter = inches(0.6, 3.0);
    r.grid.mean_diameter_step = 5e-4 * published::kInch * mm;
    r.grid.free_length = inches(full_travel_height({0.283, 1.223041, 9.0}) + kTravel, 14.0);
    double none = 0.0, some = 1000.0;
    std::optional<sizing::Candidate> lightest;
    while (some - none > 1e-3) {
        r.limits.largest_mass = light_stated<Mass>("1 g") * (0.5 * (none + some));
        const auto found = any_of(r);
        (found ? some : none) = 0.5 * (none + some);
        if (found) lightest = found;
    }
    REQUIRE(lightest);
    CHECK_THAT(r.wire.diameters.at(lightest->wire) / (published::kInch * mm), WithinRel(0.283, 1e-12));
    CHECK(lightest->total_coils == 11.0);
    CHECK_THAT(lightest->mean_diameter_mm / published::kInch, WithinAbs(1.223041, 6e-4));
}

TEST_CASE("of the designs of six papers to Sandgren's problem four fit") {
    // OPT-SANDGREN-RESULTS, as tabulated by Lampinen and Zelinka (1999); that two of them break limits:
    // sandgren_test.cpp.
    struct Reported {
        const char* paper;
        LightDesign design;
        std::set<std::string> broken;
    };
    const std::array<Reported, 6> papers{{
        {"Sandgren 1990", {0.283, 1.180701, 10.0}, {"seated_load_least"}},
        {"Chen and Tsao 1993", {0.283, 1.2287, 9.0}, {}},
        {"Wu and Chow 1995", {0.283, 1.227411, 9.0}, {}},
        {"Deb and Goyal 1997", {0.283, 1.226, 9.0}, {}},
        {"Lampinen and Zelinka 1999", {0.283, 1.223041010, 9.0}, {}},
        {"Kannan and Kramer 1994", {0.283, 1.329, 7.0}, {"seated_load_least", "stress"}},
    }};
    for (const Reported& reported : papers) {
        CAPTURE(reported.paper);
        const double height = full_travel_height(reported.design);
        demand::Requirement r = sandgren(height);
        narrow_to(r, reported.design, height + deflection(1000.0, reported.design));
        CHECK(broken(r) == reported.broken);
        CHECK(any_of(r).has_value() == reported.broken.empty());
    }
}

TEST_CASE("with wire and coils in fine steps the least is the one CEC-2020 lists") {
    // OPT-SANDGREN-CEC2020: 2.6138840583 in3 at d = 0.290965 in and 7.1176 coils. The load is met to 1e-4, and so is
    // the stress, which is at its limit there.
    const auto any_below = [](double volume) {
        for (int i = 0; i <= 24; ++i)
            for (int k = 0; k <= 80; ++k)
                if (no_heavier(volume, 0.285 + 0.0005 * i, 5.0 + 0.05 * k)) return true;
        return false;
    };
    CHECK_FALSE(any_below(2.6138840583 * (1.0 - 2e-4)));
    CHECK(any_below(2.6138840583 * (1.0 + 1e-3)));
    CHECK(all_no_heavier(2.6138840583 * (1.0 + 1e-3)).empty());  // but not with the wires of the table
}

TEST_CASE("of all tension and compression springs that fit, none has less wire than the published one") {
    // OPT-TCS-71785: f = 0.012665232788 (CEC-2020, problem RC17). Not to the last digit: see
    // tension_compression_test.cpp.
    CHECK(count_with(0.012665232788 * (1.0 - 1e-4)) == 0);
    CHECK(fits_with(0.012665232788 * (1.0 + 1e-4), 0.05168906, 11.288965));
    CHECK(count_with(0.012665232788 * (1.0 + 2e-3)) > 0);  // and of the steps looked at
}

TEST_CASE("the eight published tension and compression springs fit, or break what is known of them") {
    // OPT-TCS-RESULTS, as tabulated by He and Wang (2007), from memory. Those made to the constant 71785 do not go down
    // half an inch (short by 0.002 % to 0.13 %); the last is over the stress by 0.001 %, by its own constants 0.004 %.
    struct Reported {
        const char* paper;
        LightDesign design;
        bool reaches_half_an_inch, keeps_stress;
    };
    const std::array<Reported, 8> papers{{
        {"Belegundu 1982", {0.05, 0.3159, 14.25}, true, true},
        {"Arora 1989", {0.053396, 0.39918, 9.1854}, false, true},
        {"Coello 2000", {0.05148, 0.351661, 11.632201}, true, true},
        {"Coello and Montes 2002", {0.051989, 0.363965, 10.890522}, true, true},
        {"Ray and Liew 2003", {0.052160217, 0.368158695, 10.648442259}, false, true},
        {"He and Wang 2007, first", {0.051728, 0.357644, 11.244543}, false, true},
        {"He and Wang 2007, second", {0.051706, 0.357126, 11.265083}, false, true},
        {"Cagnina 2008", {0.051583, 0.35419, 11.438675}, false, false},
    }};
    const auto broken_at = [](const LightDesign& design, double least_deflection) {
        demand::Requirement r = tension_compression(least_deflection);
        narrow_to(r, design, 3.0 + deflection(10.0, design));
        return broken(r);
    };
    for (const Reported& reported : papers) {
        CAPTURE(reported.paper);
        std::set<std::string> expected;
        if (!reported.keeps_stress) expected.insert("stress");
        CHECK(broken_at(reported.design, kLightDeflection) == expected);
        if (!reported.reaches_half_an_inch) expected.insert("reach");
        CHECK(broken_at(reported.design, 0.5) == expected);
    }
}
