// SPDX-License-Identifier: MIT
#include <seatload/record/counter_offer.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::record;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// An invented latch: works in a bore, on a sliding seat, hot.
demand::Requirement latch() {
    demand::Requirement r;
    r.identity.number = "OM14-LAT-AHD";
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.limits.buckling_margin = 1.1;
    r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.space.seats = demand::Seats::slides;
    r.seated_load = {4.8 * newton, 6.5 * newton};
    r.full_travel_load = {std::nullopt, 13.5 * newton};
    r.surroundings.temperature = {120.0};
    r.wire.grades = {"EN10270-2-FDSiCr"};
    r.wire.diameters = {0.7 * mm};
    return r;
}

const Spec& spec() {
    static const Spec found = [] {
        const demand::Requirement r = latch();
        const sizing::Space space = sizing::search_space(r, test::wires());
        const auto best = sizing::spread(space, sizing::search(space, test::tolerances()), 1);
        return specify(r, space, best.at(0), "A");
    }();
    return found;
}

CounterOffer judged(const Offer& offer, const Spec& enquired = spec()) {
    const wire::Grade& grade = *test::wires().find(enquired.wire_grade);
    auto out = judge_offer(enquired, grade, offer, {test::wires(), test::tolerances()});
    REQUIRE(out.has_value());
    return std::move(out).value();
}

bool fails_by(const CounterOffer& offer, std::string_view rule) {
    return std::any_of(offer.failures.begin(), offer.failures.end(),
                       [&](const Failure& each) { return each.rule == rule; });
}

/// The same spec with nothing for the maker to adjust.
Spec fixed_spec() {
    Spec fixed = spec();
    fixed.adjustable.clear();
    return fixed;
}

/// F = G d^4 (L0 - L) / (8 D^3 n), EN 13906-1 eq. (3): with the moduli and the dead turns told by the caller.
double load_n(const spring::Spring& s, double shear_modulus_mpa, double dead_turns, double length_mm) {
    const double d = in_mm(s.wire_diameter);
    const double D = in_mm(s.mean_diameter);
    return shear_modulus_mpa * std::pow(d, 4) * (in_mm(s.free_length) - length_mm) /
           (8.0 * std::pow(D, 3) * (s.total_coils - dead_turns));
}

}  // namespace

TEST_CASE("An offer that asks for nothing, or for what stands on the sheet, is the spring enquired for") {
    Offer offer;
    CHECK(judged(offer).fit == Fit::as_enquired);
    offer.wire = {"EN 10270-2 FDSiCr", 0.7 * mm, {}};
    offer.changes.free_length = spec().spring.free_length;
    offer.changes.total_coils = spec().spring.total_coils;
    offer.changes.ends = spec().spring.ends;
    const CounterOffer same = judged(offer);
    CHECK(same.asked.empty());
    CHECK_FALSE(same.is_altered);
    CHECK(same.merit.tolerance_room == same.enquired.tolerance_room);
    CHECK(in_newton(same.spec.seated.nominal) == in_newton(spec().seated.nominal));
}

TEST_CASE("With another wire the coil diameter that the sheet requires stays, and the loads are ordered anew") {
    Offer offer;
    offer.wire.diameter = 0.75 * mm;
    const CounterOffer other = judged(offer, fixed_spec());
    const spring::Spring& s = other.spec.spring;
    CHECK_THAT(in_mm(s.outside_diameter()), WithinAbs(in_mm(spec().spring.outside_diameter()), 1e-12));
    CHECK(other.is_altered);
    REQUIRE(other.asked.size() == 1);
    CHECK(other.asked[0].words() == "wire diameter d 0.75 mm instead of 0.70 mm");
    // G = 79 500 MPa for FDSiCr (EN 10270-2); two dead turns of closed ends: EN 13906-1, n = nt - 2.
    const double half_a_step = 0.005 + 1e-9;
    CHECK_THAT(in_newton(other.spec.seated.nominal), WithinAbs(load_n(s, 79500.0, 2.0, 15.0), half_a_step));
    CHECK_THAT(in_newton(other.spec.full_travel.nominal), WithinAbs(load_n(s, 79500.0, 2.0, 9.0), half_a_step));
}

TEST_CASE("What the sheet lets the maker adjust brings the loads of another wire in again, by no worse a spring") {
    Offer offer;
    offer.wire.diameter = 0.75 * mm;
    const CounterOffer fixed = judged(offer, fixed_spec());
    const CounterOffer free = judged(offer);
    CHECK(fixed.adjusted.empty());
    REQUIRE(free.can_be_ordered());
    REQUIRE_FALSE(free.adjusted.empty());
    CHECK(free.merit.tolerance_room > fixed.merit.tolerance_room);
    CHECK(free.evaluation->fits());
    // No spring of the grid that only moves free length and coils is better; tried one by one.
    double best = 0.0;
    for (double nt = spec().spring.total_coils - 2.0; nt <= spec().spring.total_coils + 2.0; nt += 0.5)
        for (int tenths = 150; tenths <= 450; ++tenths) {
            Offer tried = offer;
            tried.changes.total_coils = nt;
            tried.changes.free_length = static_cast<double>(tenths) / 10.0 * mm;
            const CounterOffer one = judged(tried, fixed_spec());
            if (one.can_be_ordered()) best = std::max(best, sizing::room_in_tenths(one.merit.tolerance_room));
        }
    CHECK(sizing::room_in_tenths(free.merit.tolerance_room) == best);
}

TEST_CASE("What the maker states himself is not adjusted") {
    Offer offer;
    offer.wire.diameter = 0.75 * mm;
    offer.changes.free_length = 20.0 * mm;
    offer.changes.total_coils = 7.5;
    const CounterOffer out = judged(offer);
    CHECK(out.adjusted.empty());
    CHECK(in_mm(out.spec.spring.free_length) == 20.0);
    CHECK(out.spec.spring.total_coils == 7.5);
}

TEST_CASE("A longer and softer spring is refused for buckling, by the limit and its number") {
    Offer offer;
    offer.changes.free_length = 32.0 * mm;
    offer.changes.total_coils = 14.5;
    const CounterOffer out = judged(offer);
    CHECK(out.fit == Fit::fails);
    REQUIRE(fails_by(out, "buckling"));
    // EN 13906-1 eq. (21) for nu = 1, worked out here: s_K = L0 0.5/(1-G/E) [1 - sqrt(1 - (1-G/E)/(0.5+G/E) (pi
    // D/L0)^2)].
    const double L0 = 32.0;
    const double D = in_mm(out.spec.spring.mean_diameter);
    const double moduli = 79500.0 / 206000.0;
    const double under = 1.0 - (1.0 - moduli) / (0.5 + moduli) * std::pow(std::acos(-1.0) * D / L0, 2);
    const double buckles = L0 * 0.5 / (1.0 - moduli) * (1.0 - std::sqrt(std::max(0.0, under)));
    const auto& verdicts = out.evaluation->verdicts;
    const auto verdict =
        std::find_if(verdicts.begin(), verdicts.end(), [](const auto& v) { return v.rule->id == "buckling"; });
    CHECK_THAT(verdict->measure.value, WithinRel(buckles / (L0 - 9.0), 1e-6));
    CHECK_FALSE(out.can_be_ordered());
}

TEST_CASE("Unground ends are looked at as the maker would wind them") {
    Offer offer;
    offer.changes.ends =
        spec().spring.ends == spring::Ends::closed ? spring::Ends::closed_ground : spring::Ends::closed;
    const CounterOffer out = judged(offer);
    CHECK(out.spec.spring.ends == *offer.changes.ends);
    CHECK(out.asked.at(0).name == "ends");
    CHECK(out.evaluation.has_value());
}

TEST_CASE("A grade of load tolerance must find room on both sides of both loads") {
    Offer offer;
    offer.changes.load_grade = 3;
    const CounterOffer out = judged(offer);
    // The band of the seated load, 4.8 N to 6.5 N less heat and load loss, is narrower than twice the coarse tolerance.
    CHECK(out.fit == Fit::fails);
    CHECK(fails_by(out, "load_grade"));
    Spec wide = spec();
    for (LoadAtLength* load : {&wide.seated, &wide.full_travel}) {
        load->plus = load->minus = 5.0 * newton;
        load->grade = 3;
    }
    CHECK(judged(offer, wide).fit == Fit::as_enquired);
}

TEST_CASE("A coarser coil diameter counts in the clearances of the bore") {
    Offer offer;
    offer.changes.diameter_grade = 3;
    const CounterOffer out = judged(offer, fixed_spec());
    CHECK(out.spec.limits.diameter_grade == 3);
    CHECK(out.spec.diameter_grade == 3);
    CHECK(out.asked.at(0).words() == "coil diameter to EN 15800 grade 3 instead of 2");
}

TEST_CASE("End tips held less closely are asked for, ordered so and refused where the spring may rub") {
    const Spec enquired = fixed_spec();
    const auto evaluation = check::evaluate(enquired.spring, *test::wires().find(enquired.wire_grade),
                                            requirement_of(enquired), test::tolerances());
    REQUIRE(evaluation.has_value());
    REQUIRE(evaluation->tips.has_value());
    const check::Tips& tips = *evaluation->tips;
    Offer offer;
    offer.changes.tips_degrees = std::ceil(360.0 * std::max(tips.leaves_room, tips.ordered)) + 1.0;
    const CounterOffer wide = judged(offer, enquired);
    REQUIRE(wide.asked.size() == 1);
    CHECK(wide.asked[0].name == "end tips from half a turn apart");
    CHECK(wide.spec.limits.tips_degrees == offer.changes.tips_degrees);
    CHECK(fails_by(wide, "tips"));
    CHECK(wide.fit == Fit::fails);
    // Closer than on the sheet is a change too, and no failure.
    offer.changes.tips_degrees = 5.0;
    const CounterOffer close = judged(offer, enquired);
    REQUIRE(close.asked.size() == 1);
    CHECK(close.asked[0].now == "±5°");
    CHECK(close.spec.limits.tips_degrees == 5.0);
    CHECK_FALSE(fails_by(close, "tips"));
}

TEST_CASE("A wire that is not known, or may be two, is told as missing and not judged") {
    Offer offer;
    offer.wire.grade = "spring steel from the shelf";
    const CounterOffer unknown = judged(offer);
    CHECK(unknown.fit == Fit::unknown);
    REQUIRE(unknown.missing.size() == 1);
    CHECK(unknown.missing[0].find("spring steel from the shelf") != std::string::npos);
    CHECK_FALSE(unknown.evaluation.has_value());
    offer.wire.grade = "EN 10270-1";
    const CounterOffer several = judged(offer);
    CHECK(several.fit == Fit::unknown);
    CHECK(several.missing.at(0).find("EN10270-1-SH") != std::string::npos);
    offer.wire.grade = "EN 10270-1 SH";
    offer.wire.diameter = 30.0 * mm;
    CHECK(judged(offer).missing.at(0).find("tensile strength of EN10270-1-SH") != std::string::npos);
}

TEST_CASE("A strength from a certificate counts where it is below the standard's, never above") {
    Offer offer;
    offer.wire.tensile_strength = 9000.0 * MPa;
    const CounterOffer strong = judged(offer);
    CHECK(strong.fit == Fit::as_enquired);
    CHECK(strong.remarks.size() == 1);
    offer.wire.tensile_strength = 600.0 * MPa;
    const CounterOffer weak = judged(offer);
    CHECK(weak.fit == Fit::fails);
    CHECK(fails_by(weak, "stress"));
    CHECK(in_mpa(weak.evaluation->strength.minimum) == 600.0);
}

TEST_CASE("A maker's own words are kept to be read") {
    Offer offer;
    offer.changes.note = "ends ground on one side only";
    const CounterOffer out = judged(offer);
    CHECK(out.fit == Fit::as_enquired);
    REQUIRE(out.remarks.size() == 1);
    CHECK(out.remarks[0].find("ends ground on one side only") != std::string::npos);
}

TEST_CASE("An outside diameter smaller than the wire is missing sense, not a crash") {
    Offer offer;
    offer.changes.outside_diameter = 0.5 * mm;
    CHECK(judged(offer).fit == Fit::unknown);
}
