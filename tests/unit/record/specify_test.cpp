// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;

namespace {

demand::Requirement latch_requirement() {
    demand::Requirement r;
    r.identity = {"Ottermere M14", "ahead latch plunger", "OM14-LAT-AHD", "A",
                  "2026-11-25",    "Ottermere Rebuilds",  "Workshop",     ""};
    r.revisions = {{"A", "2026-11-25", "first issue", "Workshop"}};
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.space.seats = demand::Seats::slides;
    r.seated_load = {4.8 * newton, 6.5 * newton};
    r.full_travel_load = {std::nullopt, 13.5 * newton};
    r.surroundings.temperature = {120.0};
    r.wire.grades = {"ASTM-A401", "EN10270-3-1.4310-NS", "EN10270-2-FDSiCr", "ASTM-A313-302"};
    return r;
}

std::vector<record::Spec> specs(const demand::Requirement& r) {
    const sizing::Space space = sizing::search_space(r, test::wires());
    const sizing::Census census = sizing::search(space, test::tolerances());
    std::vector<record::Spec> all;
    for (const auto& alternative : sizing::spread(space, census, 8))
        all.push_back(record::specify(r, space, alternative, "A"));
    return all;
}

}  // namespace

TEST_CASE("a spring accepted by its ordered loads gives what the mechanism needs, hot, worn and cold") {
    const demand::Requirement r = latch_requirement();
    const auto all = specs(r);
    REQUIRE(all.size() >= 4);
    for (const record::Spec& spec : all) {
        CAPTURE(spec.wire_grade, in_mm(spec.spring.wire_diameter));
        const wire::Grade& grade = *test::wires().find(spec.wire_grade);
        const auto e = check::evaluate(spec.spring, grade, r, test::tolerances()).value();
        const check::AtLength& seated = e.seated.value();
        const double kept = seated.load_in_service / seated.load;
        const Force weakest = spec.seated.nominal - spec.seated.minus;
        CHECK(in_newton(weakest) * kept >= 4.8 - 1e-9);
        CHECK(in_newton(spec.seated.nominal + spec.seated.plus) <= 6.5 + 1e-9);
        CHECK(spec.revisions == r.revisions);
        CHECK(in_newton(spec.full_travel.nominal + spec.full_travel.plus) <= 13.5 + 1e-9);
    }
}

TEST_CASE("the grade named for a load is the coarsest whose tolerance stays inside") {
    for (const record::Spec& spec : specs(latch_requirement()))
        for (const record::LoadAtLength& load : {spec.seated, spec.full_travel}) {
            const double n = spring::active_coils(spec.spring.ends, spec.spring.total_coils);
            const Force inside = std::min(load.plus, load.minus) + 0.01 * newton;
            const auto tolerance = [&](int grade) {
                return tolerance::load_tolerance(spec.spring.wire_diameter, spec.spring.mean_diameter, n, load.nominal,
                                                 grade);
            };
            if (load.grade) CHECK(tolerance(*load.grade) <= inside);
            if (load.grade && *load.grade < 3) CHECK(tolerance(*load.grade + 1) > inside);
            if (!load.grade) CHECK(tolerance(1) > inside);
        }
}

TEST_CASE("a spec carries enough to be judged again as it was") {
    const demand::Requirement r = latch_requirement();
    for (const record::Spec& spec : specs(r)) {
        const wire::Grade& grade = *test::wires().find(spec.wire_grade);
        const auto first = check::evaluate(spec.spring, grade, r, test::tolerances()).value();
        const auto again =
            check::evaluate(spec.spring, grade, record::requirement_of(spec), test::tolerances()).value();
        REQUIRE(first.verdicts.size() == again.verdicts.size());
        for (std::size_t i = 0; i < first.verdicts.size(); ++i)
            CHECK(first.verdicts[i].reason == again.verdicts[i].reason);
    }
}

TEST_CASE("loads below 1 N are ordered in finer steps, so that three significant digits are left") {
    demand::Requirement r = latch_requirement();
    r.seated_load = {0.30 * newton, 0.80 * newton};
    r.full_travel_load = {std::nullopt, 1.60 * newton};
    r.wire.grades = {"EN10270-1-SH"};
    r.surroundings.temperature = {20.0};
    const auto all = specs(r);
    REQUIRE_FALSE(all.empty());
    bool is_finer = false;
    for (const record::Spec& spec : all) {
        for (const Force& force : {spec.seated.nominal, spec.seated.plus, spec.seated.minus}) {
            const double thousandths = 1000.0 * in_newton(force);
            CHECK_THAT(thousandths, WithinAbs(std::round(thousandths), 1e-9));
            is_finer = is_finer || std::abs(thousandths / 10.0 - std::round(thousandths / 10.0)) > 0.05;
        }
        CHECK(in_newton(spec.seated.nominal - spec.seated.minus) >= 0.30 - 1e-9);
        CHECK(in_newton(spec.seated.nominal + spec.seated.plus) <= 0.80 + 1e-9);
    }
    CHECK(is_finer);
}

TEST_CASE("a spec that says how its end tips are ordered goes on saying it, and one that does not is given them") {
    for (record::Spec spec : specs(latch_requirement())) {
        const wire::Grade& grade = *test::wires().find(spec.wire_grade);
        const auto tips_of = [&](const record::Spec& s) {
            return check::evaluate(s.spring, grade, record::requirement_of(s), test::tolerances()).value().tips;
        };
        CHECK_FALSE(spec.limits.tips_degrees);
        const record::Spec given = record::with_tips_ordered(spec, grade, test::tolerances());
        const auto tips = tips_of(spec);
        REQUIRE(given.limits.tips_degrees.has_value() == tips.has_value());
        if (!tips) continue;
        CHECK_THAT(*given.limits.tips_degrees, WithinAbs(360.0 * tips->ordered, 1e-6));
        CHECK_THAT(tips_of(given)->ordered, WithinAbs(tips->ordered, 1e-9));
        // As another rule would have had them.
        spec.limits.tips_degrees = 12.5;
        CHECK(record::with_tips_ordered(spec, grade, test::tolerances()).limits.tips_degrees == 12.5);
        CHECK_THAT(tips_of(spec)->ordered, WithinAbs(12.5 / 360.0, 1e-12));
    }
}
