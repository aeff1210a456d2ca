// SPDX-License-Identifier: MIT
// The lengths a sheet promises: Ln, L2, and how long L0 may be.
#include <seatload/check/evaluation.hpp>
#include <seatload/demand/limits.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/spring_sheet.hpp>
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
    CHECK_THAT(words, ContainsSubstring("(9.13)"));
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
    CHECK_THAT(words, ContainsSubstring("end tips apart 180° ± 20°"));
    CHECK_THAT(words, ContainsSubstring("nt half a turn over a whole number, within 0.05"));
    // With room for any lean the tips are as is usual: a slack of 0.1 turn is 36 deg.
    spec.space.bore.reset();
    spec.limits.lean_share = 1.0;
    words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("end tips apart 180° ± 36°"));
    CHECK_THAT(words, ContainsSubstring("nt half a turn over a whole number, within 0.1"));
    spec.space.seats = demand::Seats::fixed;
    words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("hand; end tips apart right; (any angle)"));
    CHECK(words.find("half a turn") == std::string::npos);
}

TEST_CASE("the free length is bounded where the spring would buckle", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.limits.buckling_margin = 1.1;
    spec.seated.plus = spec.seated.minus = 1.0 * newton;
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
    CHECK_THAT(joined(sheet_words(spec)),
               ContainsSubstring("L0 at or below " + sheet::number(*facts->longest_free_length) + " mm"));
    // A guided spring cannot buckle; the room for it is a bound all the same.
    spec.space.seats = demand::Seats::guided;
    CHECK_FALSE(sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length.has_value());
    spec.space.free_length = demand::LengthRange{15.0 * mm, 19.5 * mm};
    CHECK(*sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length == 19.5 * mm);
}

}  // namespace
}  // namespace seatload::test
