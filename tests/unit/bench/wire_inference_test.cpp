// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <seatload/bench/wire_inference.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <unit/bench/simulated_bench.hpp>

using namespace seatload;
using namespace seatload::bench;

namespace {

Readings inferred_session(double temperature = 20.0) {
    Readings s = test::usual_bench();
    s.load_path = {};
    s.temperature = {temperature, 2.0};
    return s;
}

/// Spring A of the reference calculations (EN 13906-1 cl. 9.4): d 3, D 24, n 6.5, L0 60, of wire with this modulus.
SpringRun spring_a(double shear_modulus_mpa) {
    test::TrueSpring truth;
    truth.rate_n_mm = shear_modulus_mpa * 81.0 / (8.0 * 13824.0 * 6.5);
    truth.free_length_mm = 60.0;
    std::vector<Reading> readings;
    for (const double height : {55.0, 50.0, 45.0, 40.0, 35.0}) readings.push_back(test::sound_reading(truth, height));
    auto run = test::run_of(readings);
    run.dimensions.wire_diameter = {3.0 * mm, 0.005 * mm};
    run.dimensions.outside_diameter = {27.0 * mm, 0.03 * mm};
    run.dimensions.total_coils = {8.5, 0.05};
    run.dimensions.ends = spring::Ends::closed_ground;
    return run;
}

WireInference inferred(const Readings& s, const SpringRun& run) {
    const auto answer = infer_wire(s, run, measure(s, run).spring.value(), test::wires());
    REQUIRE(answer.wire);
    return *answer.wire;
}

const GradeMatch& match(const WireInference& wire, const std::string& grade) {
    const auto found =
        std::find_if(wire.matches.begin(), wire.matches.end(), [&](auto& m) { return m.grade == grade; });
    REQUIRE(found != wire.matches.end());
    return *found;
}

}  // namespace

TEST_CASE("rate and dimensions give back the modulus the spring was reckoned with") {
    const auto wire = inferred(inferred_session(), spring_a(81500.0));
    CHECK_THAT(in_mpa(wire.shear_modulus.value), WithinRel(81500.0, 1e-9));
}

TEST_CASE("the wire diameter counts more than four times in the modulus, the outside diameter three times") {
    const Readings s = inferred_session();
    const auto run = spring_a(81500.0);
    const auto wire = inferred(s, run);
    const auto part = [&](const std::string& name) {
        for (const auto& c : wire.shear_modulus.budget)
            if (c.name == name) return in_mpa(c.standard) / 81500.0;
        return 0.0;
    };
    const double root3 = std::sqrt(3.0);
    // With De measured, a thicker d also makes D = De - d smaller: (4 + 3 d/D) dd/d.
    CHECK_THAT(part("wire diameter d"), WithinRel((4.0 + 3.0 / 8.0) * 0.005 / 3.0 / root3, 1e-9));
    CHECK_THAT(part("outside diameter De"), WithinRel(3.0 * 0.03 / 24.0 / root3, 1e-9));
    CHECK_THAT(part("active coils n"), WithinRel(0.05 / 6.5 / root3, 1e-9));
    CHECK(wire.shear_modulus.budget[0].name == "active coils n");
}

TEST_CASE("patented wire is told from stainless and from bronze, and each grade says how far off it is") {
    const auto wire = inferred(inferred_session(), spring_a(81500.0));
    CHECK(wire.matches.size() == test::wires().grades.size());
    CHECK(wire.any_consistent);
    CHECK(match(wire, "EN10270-1-SH").consistent);
    CHECK_THAT(wire.verdict, ContainsSubstring("It fits cold-drawn carbon steel") &&
                                 ContainsSubstring("does not fit") && ContainsSubstring("austenitic stainless steel"));
    for (const wire::Grade& grade : test::wires().grades) {
        if (grade.family != wire::Family::austenitic_stainless && grade.family != wire::Family::copper_alloy) continue;
        CAPTURE(grade.id);
        CHECK_FALSE(match(wire, grade.id).consistent);
        CHECK(match(wire, grade.id).expanded_away > 1.0);
    }
    // Of the grades drawn in this diameter the nearest comes first.
    double last = 0.0;
    for (const GradeMatch& m : wire.matches) {
        if (!m.in_range) break;
        CHECK(std::abs(m.expanded_away) >= last);
        last = std::abs(m.expanded_away);
    }
}

TEST_CASE("a stainless spring is found to be none of the carbon steels") {
    const auto stainless =
        std::find_if(test::wires().grades.begin(), test::wires().grades.end(),
                     [](const wire::Grade& g) { return g.family == wire::Family::austenitic_stainless; });
    REQUIRE(stainless != test::wires().grades.end());
    const double G = in_mpa(modulus_of(*stainless, 3.0 * mm, 20.0));
    const auto wire = inferred(inferred_session(), spring_a(G));
    CHECK(match(wire, stainless->id).consistent);
    CHECK_FALSE(match(wire, "EN10270-1-SH").consistent);
    CHECK(match(wire, "EN10270-1-SH").expanded_away < -1.0);
}

TEST_CASE("the catalogue's moduli are taken at the temperature of the session") {
    // EN 13906-1 cl. 8 (memory): G falls by 0.25e-3 a kelvin for unalloyed wire.
    const auto* sh = test::wires().find("EN10270-1-SH");
    REQUIRE(sh);
    CHECK_THAT(in_mpa(modulus_of(*sh, 3.0 * mm, 20.0)), WithinRel(81500.0, 1e-12));
    CHECK_THAT(in_mpa(modulus_of(*sh, 3.0 * mm, 60.0)), WithinRel(81500.0 * (1.0 - 0.25e-3 * 40.0), 1e-12));
    const auto hot = inferred(inferred_session(60.0), spring_a(81500.0 * 0.99));
    CHECK_THAT(match(hot, "EN10270-1-SH").expanded_away, WithinAbs(0.0, 1e-6));
}

TEST_CASE("where no wire fits, the dimensions are to be looked at again") {
    const auto wire = inferred(inferred_session(), spring_a(120000.0));
    CHECK_FALSE(wire.any_consistent);
    CHECK_THAT(wire.verdict, ContainsSubstring("No wire of the catalogue fits: look again at d"));
}

TEST_CASE("what is missing of the dimensions is named") {
    const Readings s = inferred_session();
    auto run = spring_a(81500.0);
    const auto spring = measure(s, run).spring.value();
    run.dimensions.ends.reset();
    CHECK(infer_wire(s, run, spring, test::wires()).missing == "the ends");
    run.dimensions.wire_diameter.reset();
    CHECK(infer_wire(s, run, spring, test::wires()).missing == "the wire diameter d and the ends");
    run.dimensions = {};
    CHECK(infer_wire(s, run, spring, test::wires()).missing ==
          "the wire diameter d, the outside diameter De, the number of coils nt and the ends");
}

TEST_CASE("set is told against the free length when new, wear against the stated grade") {
    const Readings s = inferred_session();
    auto run = spring_a(81500.0);
    run.dimensions.free_length_new = {62.0 * mm, 0.3 * mm};
    run.dimensions.grade = "EN10270-1-SH";
    auto w = explain(s, run, measure(s, run).spring.value(), test::wires());
    REQUIRE(w.set);
    CHECK_THAT(in_mm(w.set->estimate.value), WithinAbs(2.0, 1e-9));
    CHECK(w.set->significant);
    REQUIRE(w.worn_wire);
    CHECK_THAT(in_mm(w.worn_wire->estimate.value), WithinAbs(0.0, 1e-9));
    CHECK_FALSE(w.worn_wire->significant);
    // A wire of 2.9 mm in the same coil, measured where it is not worn: D as before, R by (2.9/3)^4.
    auto worn = spring_a(81500.0 * std::pow(2.9 / 3.0, 4.0));
    worn.dimensions.grade = "EN10270-1-SH";
    w = explain(s, worn, measure(s, worn).spring.value(), test::wires());
    CHECK_FALSE(w.set);
    CHECK_THAT(in_mm(w.worn_wire->estimate.value), WithinAbs(0.1, 1e-9));
    CHECK(w.worn_wire->significant);
}
