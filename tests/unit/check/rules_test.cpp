// SPDX-License-Identifier: MIT
#include <map>
#include <set>

#include <seatload/check/evaluation.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/spring_a.hpp>

using namespace seatload;
using test::spring_a;
using test::wire_a;

namespace {

demand::Requirement requirement_a() {
    demand::Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.seated_height = 50.0 * mm;
    r.space.full_travel_height = 40.0 * mm;
    return r;
}

check::Evaluation evaluated(const demand::Requirement& r, const spring::Spring& s = spring_a(),
                            const wire::Grade& g = wire_a()) {
    return check::evaluate(s, g, r, test::tolerances()).value();
}

const check::Verdict* verdict(const check::Evaluation& e, std::string_view rule) {
    for (const check::Verdict& v : e.verdicts)
        if (v.rule->id == rule) return &v;
    return nullptr;
}

}  // namespace

// EN 13906-1 forms; the numbers are those of an independent calculation with numpy (six digits printed).
TEST_CASE("an evaluation gives the values of the independent calculation of spring A") {
    const check::Evaluation e = evaluated(requirement_a());
    CHECK_THAT(in_newton_per_mm(e.rate), WithinAbs(9.18344, 0.5e-5));
    CHECK_THAT(in_mm(e.pitch), WithinAbs(8.30769, 0.5e-5));
    CHECK_THAT(in_mm(e.wire_length), WithinAbs(643.97, 0.5e-2));
    CHECK_THAT(in_gram(e.mass), WithinAbs(35.7329, 0.5e-4));
    CHECK_THAT(in_mm(e.solid_length), WithinAbs(25.7125, 0.5e-4));
    CHECK_THAT(in_mm(e.smallest_gaps), WithinAbs(3.822, 0.5e-3));
    CHECK_THAT(in_mm(e.smallest_length), WithinAbs(29.5345, 0.5e-4));
    CHECK_THAT(in_newton(e.at_smallest_length.load), WithinAbs(279.778, 0.5e-3));
    CHECK_THAT(in_mpa(e.at_smallest_length.stress), WithinAbs(633.288, 0.5e-3));
    CHECK_THAT(in_newton(e.at_solid.load), WithinAbs(314.877, 0.5e-3));
    CHECK_THAT(in_mpa(e.at_solid.stress), WithinAbs(712.736, 0.5e-3));
    CHECK_THAT(in_newton(e.full_travel->load), WithinAbs(183.669, 0.5e-3));
    CHECK_THAT(in_mm(e.growth_ends_free), WithinAbs(0.196997, 0.5e-6));
    CHECK_THAT(in_mm(e.growth_ends_held), WithinAbs(0.126356, 0.5e-6));
    CHECK_THAT(in_hertz(e.natural_frequency), WithinAbs(290.559, 0.5e-3));
    CHECK_THAT(e.stable_slenderness, WithinAbs(5.16139, 0.5e-5));
    CHECK_FALSE(e.buckling_deflection.has_value());
    CHECK_THAT(verdict(e, "stress")->measure.limit, WithinAbs(1030.4, 0.5e-1));
    CHECK(e.fits());
}

TEST_CASE("on a sliding seat the transverse stiffness is that of the independent calculation of spring A") {
    demand::Requirement r = requirement_a();
    r.space.full_travel_height = 42.0 * mm;  // s = 18 mm
    r.space.seats = demand::Seats::slides;
    r.space.sideways_play = 2.0 * mm;
    const check::Evaluation e = evaluated(r);
    REQUIRE(e.sideways.has_value());
    REQUIRE(e.sideways->stiffness.has_value());
    CHECK_THAT(in_newton_per_mm(*e.sideways->stiffness), WithinAbs(2.87139, 0.5e-5));
    CHECK_THAT(in_mpa(e.sideways->combined_stress), WithinAbs(426.471, 0.5e-3));
    // F_Q L / (F (D - s_Q)) = 241.196 / 3636.64, both printed to six digits.
    const check::Verdict* seats = verdict(e, "seats_flat");
    REQUIRE(seats != nullptr);
    CHECK(seats->measure.value >= 241.196 / 3636.64 - 1e-6);
    CHECK(seats->passed);
}

TEST_CASE("a spring past its sideways buckling deflection has no transverse stiffness to show") {
    demand::Requirement r = requirement_a();
    r.space.seats = demand::Seats::slides;
    r.space.sideways_play = 1.0 * mm;
    const spring::Spring long_one{2.0 * mm,           16.0 * mm, 14.5, 100.0 * mm, spring::Ends::closed_ground,
                                  spring::Hand::right};
    const check::Evaluation e = evaluated(r, long_one);
    CHECK_THAT(in_mm(*e.buckling_deflection), WithinAbs(7.38196, 0.5e-5));  // spring B, nu = 1
    REQUIRE(e.sideways.has_value());
    CHECK_FALSE(e.sideways->stiffness.has_value());
    CHECK_FALSE(verdict(e, "buckling")->passed);
}

TEST_CASE("lower loads are judged hot and after load loss, upper ones cold and new") {
    demand::Requirement r = requirement_a();
    r.surroundings.temperature = {120.0};
    r.limits.load_loss = Share{0.05};
    r.seated_load = {80.0 * newton, 95.0 * newton};
    const check::Evaluation e = evaluated(r);
    // G(120 C) = 79462.5 MPa (0.25e-3/K, EN 13906-1 cl. 8), so 91.8344 N cold becomes 91.8344 * 0.975 * 0.95 N.
    CHECK_THAT(verdict(e, "seated_load_least")->measure.value, WithinAbs(91.8344 * 0.975 * 0.95, 1e-3));
    CHECK_THAT(verdict(e, "seated_load_most")->measure.value, WithinAbs(91.8344, 0.5e-4));
}

TEST_CASE("a bound may be met exactly") {
    demand::Requirement r = requirement_a();
    r.seated_load = {std::nullopt, evaluated(r).seated->load};
    CHECK(verdict(evaluated(r), "seated_load_most")->passed);
    r.seated_load.at_most = evaluated(r).seated->load - 1e-4 * newton;
    CHECK_FALSE(verdict(evaluated(r), "seated_load_most")->passed);
}

TEST_CASE("the handbook school judges by torsional yield with the curvature factor and a safety of 1.2") {
    demand::Requirement r = requirement_a();
    r.limits = demand::school_defaults(spring::School::handbook);
    const check::Evaluation e = evaluated(r);
    // Shigley Table 10-6: 0.45 Sut for cold-drawn carbon wire; Eq. 10-21: 1.2; Table 10-1: Ls = nt d = 25.5 mm.
    CHECK_THAT(in_mm(e.solid_length), WithinAbs(25.5, 1e-12));
    CHECK_THAT(verdict(e, "stress")->measure.limit, WithinAbs(0.45 * 1840.0 / 1.2, 1e-9));
    CHECK_THAT(verdict(e, "stress")->measure.value,
               WithinAbs(9.18344 * 34.5 * 8.0 * 24.0 / (3.141592654 * 27.0) * 1.17241, 2e-2));
}

TEST_CASE("a wire without a strength at the diameter is refused with the range it has") {
    spring::Spring s = spring_a();
    s.wire_diameter = 0.05 * mm;
    s.mean_diameter = 0.7 * mm;
    const auto refused = check::evaluate(s, wire_a(), requirement_a(), test::tolerances());
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().front().message == "wire own has no known strength at 0.05 mm");
    CHECK(refused.error().front().hint ==
          "its strengths are known from 0.10 mm to 10.00 mm; is the diameter right, or another grade meant?");
}

TEST_CASE("heat beyond the load-loss guidance is refused unless the loss is stated") {
    demand::Requirement r = requirement_a();
    r.surroundings.temperature = {100.0};
    CHECK_FALSE(check::evaluate(spring_a(), wire_a(), r, test::tolerances()).has_value());
    r.limits.load_loss = Share{0.02};
    CHECK(check::evaluate(spring_a(), wire_a(), r, test::tolerances()).has_value());
}

TEST_CASE("every rule has an id of its own, a name, a source and a subject") {
    std::set<std::string_view> ids, names;
    for (const check::Rule& rule : check::rules()) {
        CAPTURE(rule.id);
        CHECK(ids.insert(rule.id).second);
        CHECK(names.insert(rule.name).second);
        CHECK_FALSE(rule.subject.empty());
        CHECK_FALSE(rule.source.empty());
    }
}
