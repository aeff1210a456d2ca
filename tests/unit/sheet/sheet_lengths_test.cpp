// SPDX-License-Identifier: MIT
// The lengths a sheet promises: Ln, L2, and how long L0 may be.
#include <seatload/check/evaluation.hpp>
#include <seatload/demand/limits.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("Ln follows the gap rule, so that L2 does not lie below it", "[sheet]") {
    // Worked by hand: closed and ground, Lc = nt dmax = 14.5 (0.63 + 0.008) = 9.251, or nt d = 9.135 by the textbook
    // form (Shigley Table 10-1); gap 0.15 (18.2 - 10.4) = 1.17 (Shigley Eq. 10-20): Ln = 10.305. EN's Sa would be
    // 12.5 (0.0015 4.45^2/0.63 + 0.1 0.63) = 1.377 and Ln = 10.51, above L2.
    record::Spec spec = specimen({"ASTM-A228", 0.63, 4.45, 14.5, 18.2, spring::Ends::closed_ground, 12.0, 10.4});
    spec.limits = demand::school_defaults(spring::School::handbook);
    const std::string words = sheet_words(spec);
    // What no spring is to exceed has the thickest wire, in the diagram as in the table.
    CHECK_THAT(words, ContainsSubstring("Lc (9.25)\n"));
    CHECK_THAT(words, ContainsSubstring("\n(≤ 9.25)\n"));
    CHECK_THAT(words, !ContainsSubstring("9.13"));
    CHECK((words.find("(10.3)") != std::string::npos || words.find("(10.31)") != std::string::npos));
    CHECK_THAT(joined(words), ContainsSubstring("Keep Ln at or below L2"));
    CHECK_THAT(words, ContainsSubstring("handbook rules"));
}

TEST_CASE("a spring whose L2 lies below Ln says so and does not promise otherwise", "[sheet]") {
    record::Spec spec = specimen({"EN10270-1-SH", 1.0, 8.0, 10.0, 22.0, spring::Ends::closed_ground, 12.5, 10.4});
    const std::string words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("L2 lies below Ln"));
    CHECK(words.find("Ln at or below L2") == std::string::npos);
}

TEST_CASE("on a sliding seat the tips stand half a turn apart, and the coils keep it", "[sheet]") {
    // A spring with whole turns leans when an end slides (design); nt = 9.5 closed has n = 7.5, tips 180 deg apart. In
    // its bore of 9 mm there is room for its lean with 20 deg to either side, not with 25.
    record::Spec spec = specimen(latch());
    demand::Requirement cold = record::requirement_of(spec);
    cold.space.seated_height = spec.seated.length;
    cold.space.full_travel_height = spec.full_travel.length;
    const auto leans_too_far = [&](double degrees) {
        bool too_far = false;
        for (const double turns : {-degrees / 360.0, degrees / 360.0}) {
            spring::Spring other = spec.spring;
            other.total_coils += turns;
            const auto evaluation = check::evaluate(other, grade_of(spec), cold, tolerances());
            REQUIRE(evaluation.has_value());
            for (const check::Verdict& verdict : evaluation->verdicts)
                if (verdict.rule->id == "lean") too_far = too_far || !verdict.passed;
        }
        return too_far;
    };
    CHECK_FALSE(leans_too_far(20.0));
    CHECK(leans_too_far(25.0));
    std::string words = joined(sheet_words(spec));
    // 20 deg are closer than is usual; what can be held is an estimate, and one limit of the angle is enough.
    CHECK_THAT(words, ContainsSubstring("end tips apart 180° ± 20° as delivered (our estimate; to be agreed)"));
    CHECK_THAT(words, ContainsSubstring("nt a whole number and a half, the end tips as given"));
    CHECK_THAT(words, ContainsSubstring("End tips: the same 5 pieces as delivered, protractor along the axis, between "
                                        "the run-outs of the ground ends."));
    // With room for any lean the tips are as is usual: a slack of 0.1 turn is 36 deg.
    spec.space.bore.reset();
    spec.limits.lean_share = 1.0;
    words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("end tips apart 180° ± 36° as delivered"));
    CHECK(words.find("to be agreed with the maker)") == std::string::npos);
    spec.spring.ends = spring::Ends::closed;
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("between the cut ends"));
    spec.space.seats = demand::Seats::fixed;
    words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("hand; end tips apart right; (any angle)"));
    CHECK(words.find("half a turn") == std::string::npos);
    CHECK(words.find("protractor") == std::string::npos);
}

TEST_CASE("the free length is bounded where the spring would buckle", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.limits.buckling_margin = 1.1;
    spec.seated.plus = spec.seated.minus = 1.0 * newton;
    spec.space.bore.reset();  // so that there is room for any lean
    spec.limits.lean_share = 10.0;
    const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
    REQUIRE(facts.has_value());
    REQUIRE(facts->longest_free_length.has_value());
    const auto buckles = [&](double longer_mm) {
        record::Spec other = spec;
        other.spring.free_length = *facts->longest_free_length + longer_mm * mm;
        demand::Requirement requirement = record::requirement_of(other);
        requirement.space.seated_height = spec.seated.length;
        requirement.space.full_travel_height = spec.full_travel.length;
        const auto evaluation = check::evaluate(other.spring, grade_of(spec), requirement, tolerances());
        REQUIRE(evaluation.has_value());
        for (const check::Verdict& verdict : evaluation->verdicts)
            if (verdict.rule->id == "buckling") return !verdict.passed;
        FAIL("no verdict on buckling");
        return false;
    };
    CHECK_FALSE(buckles(0.0));
    CHECK(buckles(0.11));
    // What is inspected is marked so, and not in brackets.
    const std::string words = sheet_words(spec);
    CHECK_THAT(words, ContainsSubstring("■\nL0 at most\n" + sheet::number(*facts->longest_free_length) + " mm\n"));
    CHECK_THAT(joined(words), ContainsSubstring("De, L0 and ends: 5 pieces, all inside."));
    CHECK_THAT(joined(words), ContainsSubstring("L0 within its bound"));
    // A guided spring cannot buckle; the room for it is a bound all the same.
    spec.space.seats = demand::Seats::guided;
    CHECK_FALSE(sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length.has_value());
    spec.space.free_length = demand::LengthRange{15.0 * mm, 19.5 * mm};
    CHECK(*sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length == 19.5 * mm);
}

/// Whether the lean of a spec's spring has room at a free length with its coils so many turns from those drawn, by the
/// rule itself.
bool has_room_to_lean(const record::Spec& spec, const spring::Spring& like, Length free_length, double turns) {
    spring::Spring other = like;
    other.free_length = free_length;
    other.total_coils += turns;
    demand::Requirement requirement = record::requirement_of(spec);
    requirement.space.seated_height = spec.seated.length;
    requirement.space.full_travel_height = spec.full_travel.length;
    const auto evaluation = check::evaluate(other, grade_of(spec), requirement, tolerances());
    REQUIRE(evaluation.has_value());
    for (const check::Verdict& verdict : evaluation->verdicts)
        if (verdict.rule->id == "lean") return verdict.passed;
    FAIL("no verdict on lean");
    return false;
}

TEST_CASE("a spring as long as its sheet allows has room to lean, its tips at either end of what is ordered",
          "[sheet]") {
    bool seen_bound_by_lean = false, seen_closer = false, seen_bound_by_buckling = false;
    for (const double bore : {8.75, 8.8, 8.9, 9.0, 9.2, 9.6, 10.4})
        for (const double L0 : {18.4, 19.3, 19.8})
            for (const auto ends : {spring::Ends::closed_ground, spring::Ends::closed}) {
                Shape shape = latch();
                shape.free_length = L0;
                shape.ends = ends;
                record::Spec spec = specimen(shape);
                spec.space.bore = demand::Fit{bore * mm, bore * mm, bore * mm};
                spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_wire};
                for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel})
                    load->plus = load->minus = 2.0 * newton;
                CAPTURE(bore, L0, spring::word(ends));
                const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
                REQUIRE(facts.has_value());
                const auto& tips = facts->values.tips;
                REQUIRE(tips.has_value());
                if (!tips->is_enough()) continue;
                REQUIRE(facts->longest_free_length.has_value());
                const auto has_room = [&](const spring::Spring& like, Length longest, double turns) {
                    return has_room_to_lean(spec, like, longest, turns) &&
                           has_room_to_lean(spec, like, longest, -turns);
                };
                const Length longest = *facts->longest_free_length;
                CHECK(longest >= spec.spring.free_length);
                CHECK(has_room(spec.spring, longest, tips->ordered));
                const bool is_by_lean = !has_room(spec.spring, longest + 0.11 * mm, tips->ordered);
                (is_by_lean ? seen_bound_by_lean : seen_bound_by_buckling) = true;
                if (!facts->closer_tips) continue;
                seen_closer = true;
                CHECK(is_by_lean);
                CHECK(facts->closer_tips->turns < tips->ordered);
                CHECK(360.0 * facts->closer_tips->turns > 15.0 - 1e-6);  // what a winder holds (estimate)
                CHECK(facts->closer_tips->longest_free_length > longest);
                CHECK(has_room(spec.spring, facts->closer_tips->longest_free_length, facts->closer_tips->turns));
                CHECK_THAT(joined(sheet_words(spec)),
                           ContainsSubstring("L0 at most " + sheet::number(longest) + " mm; " +
                                             sheet::number(facts->closer_tips->longest_free_length) +
                                             " mm with end tips 180° ± "));
            }
    CHECK(seen_bound_by_lean);
    CHECK(seen_closer);
    CHECK(seen_bound_by_buckling);
}

TEST_CASE("the wire a maker may go to has room to lean at the longest free length of the sheet", "[sheet]") {
    bool seen_range = false;
    for (const double bore : {8.9, 9.2, 9.6, 10.4}) {
        record::Spec spec = specimen(latch());
        spec.space.bore = demand::Fit{bore * mm, bore * mm, bore * mm};
        spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_wire};
        for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel}) load->plus = load->minus = 2.0 * newton;
        CAPTURE(bore);
        const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
        REQUIRE(facts.has_value());
        if (!facts->values.lean_bounds || !facts->wire_range) continue;
        seen_range = true;
        for (const Length& d : {facts->wire_range->smallest, facts->wire_range->largest}) {
            // Wound by hand: De and the loads stay, so that the coils follow from R = G d^4/(8 D^3 n), the nearest half
            // turn of them, as the sheet wants.
            spring::Spring other = spec.spring;
            other.mean_diameter = spec.spring.outside_diameter() - d;
            other.wire_diameter = d;
            const double ratio = std::pow(d / spec.spring.wire_diameter, 4.0) *
                                 std::pow(spec.spring.mean_diameter / other.mean_diameter, 3.0);
            const double n = std::floor(7.5 * ratio) + 0.5;
            other.total_coils = n + 2.0;
            CAPTURE(in_mm(d), n);
            for (const double turns : {-facts->values.tips->ordered, facts->values.tips->ordered})
                CHECK(has_room_to_lean(spec, other, *facts->longest_free_length, turns));
        }
    }
    CHECK(seen_range);
}

TEST_CASE("where the drawn free length leaves pieces no room to stray, the sheet says what to aim at", "[sheet]") {
    bool seen_aim = false, seen_none = false;
    for (const double longest : {19.3, 19.4, 19.5, 20.2}) {
        record::Spec spec = specimen(latch());
        spec.limits.lean_share = 10.0;  // room for any lean, so that the room for the free spring is the bound
        spec.space.bore.reset();
        spec.space.free_length = demand::LengthRange{15.0 * mm, longest * mm};
        for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel}) load->plus = load->minus = 2.0 * newton;
        const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
        REQUIRE(facts.has_value());
        CAPTURE(longest);
        REQUIRE(facts->longest_free_length == longest * mm);
        const auto aim = sheet::aimed_free_length(*facts);
        // EN 15800 grade 1 (from memory): L0 strays by a_F k_F Q/R, 99 of 100 pieces by 0.86 of it (normal curve).
        const spring::Spring& s = spec.spring;
        const double stray = 0.86 * tolerance::free_length_tolerance_mm(in_mm(s.wire_diameter), in_mm(s.mean_diameter),
                                                                        facts->values.active_coils,
                                                                        in_newton_per_mm(facts->values.rate), 1);
        CHECK(aim.has_value() == (std::floor(10.0 * (longest - stray)) / 10.0 < in_mm(s.free_length)));
        (aim ? seen_aim : seen_none) = true;
        const std::string words = joined(sheet_words(spec));
        CHECK((words.find("Aim for L0 near ") != std::string::npos) == aim.has_value());
        if (!aim) continue;
        CHECK_THAT(words, ContainsSubstring("Aim for L0 near " + sheet::number(*aim) + " mm, as pieces stray."));
        CHECK(in_mm(*aim) <= longest - stray + 1e-9);
        // A spring of that length and of the drawn rate gives both loads within their tolerances: F = R (L0 - L).
        for (const record::LoadAtLength& load : {spec.seated, spec.full_travel}) {
            const Force given = facts->values.rate * (*aim - load.length);
            CHECK(given >= load.nominal - load.minus);
            CHECK(given <= load.nominal + load.plus);
        }
    }
    CHECK(seen_aim);
    CHECK(seen_none);
}

TEST_CASE("in inches, too, the free length as drawn is within the bound printed beside it", "[sheet]") {
    sheet::Paper inches = paper();
    inches.units = sheet::Units::inch;
    int bounds = 0;
    for (const double room : {0.4, 0.6, 0.8, 1.2})
        for (int tenths = 185; tenths <= 196; ++tenths) {
            Shape shape = latch();
            shape.free_length = 0.1 * tenths;
            record::Spec spec = specimen(shape);
            const Length bore = spec.spring.outside_diameter() + room * mm;
            spec.space.bore = demand::Fit{bore, bore, bore};
            const auto known = sheet::facts(spec, grade_of(spec), tolerances(), inches);
            REQUIRE(known.has_value());
            const auto bound = sheet::longest_free_length(*known);
            if (!bound) continue;
            CAPTURE(room, tenths, bound->inch, bound->metric);
            const sheet::Amount shown = sheet::drawn_free_length(*known);
            CHECK(std::stod(shown.inch) <= std::stod(bound->inch));
            CHECK(std::stod(shown.metric) <= std::stod(bound->metric));
            CHECK_THAT(std::stod(shown.inch), WithinAbs(in_mm(spec.spring.free_length) / 25.4, 0.001));
            ++bounds;
        }
    CHECK(bounds > 0);
}

}  // namespace
}  // namespace seatload::test
