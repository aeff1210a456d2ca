// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include <seatload/core/file.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/demand/leakage.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/plunger_requirement.hpp>
#include <seatload/io/requirement_file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;

namespace {

const std::string kHead = R"(
[plunger]
seat_area = "50 mm2"
full_area = "100 mm2"
stroke    = "6 mm"
friction  = "0.2 N .. 0.5 N"
)";
const std::string kPressures = R"(
[plunger.pressures]
release = "1.6 bar"
)";

record::PlungerFile read_plunger_text(const std::string& text) {
    auto file = io::read_plunger(text, "x.toml");
    INFO(render(file.error()));
    REQUIRE(file.has_value());
    return std::move(file).value();
}

std::string template_text(const std::string& name) {
    const auto text = read_text_file(std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name);
    REQUIRE(text.has_value());
    return *text;
}

bool same(const demand::LoadBand& a, const demand::LoadBand& b) {
    return a.at_least == b.at_least && a.at_most == b.at_most;
}

}  // namespace

TEST_CASE("the plungers of the templates ask of their springs what the requirements of the templates say") {
    for (const std::string name : {"ahead_latch", "astern_latch"}) {
        INFO(name);
        const auto plunger = io::read_plunger(template_text(name + "_plunger.toml"), name);
        REQUIRE(plunger.has_value());
        CHECK(plunger.error().empty());
        const auto requirement = io::read_requirement(template_text(name + ".toml"), name, io::catalogue());
        REQUIRE(requirement.has_value());
        const demand::Budget budget = demand::plunger_budget(plunger->plunger);
        CHECK(budget.is_possible());
        CHECK(same(budget.seated_rounded, requirement->seated_load));
        CHECK(same(budget.full_travel_rounded, requirement->full_travel_load));
        REQUIRE(plunger->space.has_value());
        CHECK(plunger->space->seated_height == requirement->space.seated_height);
        CHECK(plunger->space->full_travel_height == requirement->space.full_travel_height);
        CHECK(plunger->space->bore->largest == requirement->space.bore->largest);
        CHECK(plunger->identity.number == requirement->identity.number);
    }
}

TEST_CASE("the requirement written of a plunger is read back with the loads of its budget") {
    const auto plunger = read_plunger_text(template_text("ahead_latch_plunger.toml"));
    const demand::Budget budget = demand::plunger_budget(plunger.plunger);
    const std::string text = io::write_budget_requirement(plunger, budget, "ahead_latch_plunger.toml");
    const auto requirement = io::read_requirement(text, "x.toml", io::catalogue());
    INFO(text << render(requirement.error()));
    REQUIRE(requirement.has_value());
    CHECK(same(requirement->seated_load, budget.seated_rounded));
    CHECK(same(requirement->full_travel_load, budget.full_travel_rounded));
    CHECK(requirement->surroundings.temperature == Celsius{120.0});
    CHECK(requirement->identity.date == "2026-11-25");
}

TEST_CASE("a requirement that holds a plunger has the loads of its budget") {
    const std::string space = "[space]\nseated_height = \"15 mm\"\nfull_travel_height = \"9 mm\"\n";
    const auto requirement = io::read_requirement(space + kHead + kPressures, "x.toml", io::catalogue());
    INFO(render(requirement.error()));
    REQUIRE(requirement.has_value());
    REQUIRE(requirement->plunger.has_value());
    CHECK(in_newton(*requirement->seated_load.at_most) == 7.5);        // 0.16 * 50 - 0.5
    CHECK(in_newton(*requirement->full_travel_load.at_most) == 15.5);  // 0.16 * 100 - 0.5
}

TEST_CASE("a budget is made of a requirement's plunger as of a plunger file") {
    const std::string requirement =
        "format = \"seatload requirement 1\"\n[space]\nseated_height = \"15 mm\"\n"
        "full_travel_height = \"9 mm\"\n" +
        kHead + kPressures + "\n[order]\nquantities = [20]\n";
    CHECK(read_plunger_text(requirement).plunger.stroke == 6.0 * mm);
}

TEST_CASE("the stroke follows from the heights of the spring") {
    const std::string without =
        "[space]\nseated_height = \"15 mm\"\nfull_travel_height = \"9.5 mm\"\n[plunger]\n"
        "seat_area = \"50 mm2\"\nfull_area = \"100 mm2\"\nfriction = \"0 N\"\n";
    CHECK(read_plunger_text(without + kPressures).plunger.stroke == 5.5 * mm);
}

TEST_CASE("ranges are read in every way they are written") {
    const auto p = read_plunger_text(kHead + R"(annulus_share = "60 % .. 0.9"
[plunger.pressures]
release   = "1.6 bar ±0.1 bar"
hold_open = "20 psi"
leak      = "at most 0.4 bar"
mechanism = "0.25 MPa .. 0.3 MPa"
residual  = "10 kPa"
[plunger.margins]
hold    = 0.1
release = "20 %"
[plunger.trust]
friction = "memory"
leak     = "estimate"
)")
                       .plunger;
    CHECK(p.annulus_share == demand::Interval<double>{0.6, 0.9});
    CHECK_THAT(in_bar(p.pressures.release.low), WithinRel(1.5, 1e-12));
    CHECK_THAT(in_bar(p.pressures.release.high), WithinRel(1.7, 1e-12));
    CHECK_THAT(in_bar(p.pressures.hold_open->low), WithinRel(1.378951458633672, 1e-12));  // 20 lbf/in2
    CHECK(in_bar(p.pressures.leak->low) == 0.0);
    CHECK_THAT(in_bar(p.pressures.leak->high), WithinRel(0.4, 1e-12));
    CHECK(p.pressures.mechanism == demand::Interval<Stress>{0.25 * MPa, 0.3 * MPa});
    CHECK_THAT(in_bar(p.pressures.residual.low), WithinRel(0.1, 1e-12));
    CHECK(p.margins.hold.value == 0.1);
    CHECK_THAT(p.margins.release.value, WithinRel(0.2, 1e-12));
    CHECK(p.trust.friction == wire::Evidence::memory);
    CHECK(p.trust.leakage == wire::Evidence::estimate);
    CHECK(p.trust.areas == wire::Evidence::given);
}

TEST_CASE("a diameter makes the area of its circle") {
    const std::string diameters =
        "[plunger]\nseat_diameter = \"8 mm\"\nfull_diameter = \"12 mm ±0.1 mm\"\nstroke = \"6 mm\"\n"
        "friction = \"0 N\"\n";
    const auto p = read_plunger_text(diameters + kPressures).plunger;
    CHECK_THAT(in_square_mm(p.seat.area.low), WithinRel(16.0 * std::numbers::pi, 1e-12));
    CHECK_THAT(in_square_mm(p.full.area.high), WithinRel(12.1 * 12.1 * std::numbers::pi / 4.0, 1e-12));
}

TEST_CASE("a side load is a force, or a torque at a radius") {
    const auto side = [](const std::string& lines) {
        return *read_plunger_text(kHead + kPressures +
                                  "[plunger.side_load]\nhalf_angle = \"12 deg\"\nflank_friction = 0.1\n" + lines)
                    .plunger.side_load;
    };
    const auto force = side("force = \"10 N .. 50 N\"\n");
    CHECK(force.parked == demand::Interval<Force>{10.0 * newton, 50.0 * newton});
    CHECK(force.released == demand::Interval<Force>{});
    CHECK_THAT(in_base_unit(force.half_angle.low), WithinRel(12.0 * std::numbers::pi / 180.0, 1e-12));
    const auto torque = side(
        "torque = \"1 N m .. 2 N m\"\nradius = \"40 mm .. 50 mm\"\nrelease_torque = \"0 N mm .. 400 N mm\"\n"
        "clear_at_full_travel = true\nacts_with_leak_pressure = false\n");
    CHECK_THAT(in_newton(torque.parked.low), WithinRel(20.0, 1e-12));
    CHECK_THAT(in_newton(torque.parked.high), WithinRel(50.0, 1e-12));
    CHECK_THAT(in_newton(torque.released.high), WithinRel(10.0, 1e-12));
    CHECK(torque.clear_at_full_travel);
    CHECK_FALSE(torque.acts_with_leak_pressure);
}

TEST_CASE("a leak pressure is worked out from orifices or from gaps") {
    const auto leak = [](const std::string& lines) {
        return *demand::leak_pressure(
            read_plunger_text(kHead + kPressures + "[plunger.leak]\nsupply = \"1 MPa\"\n" + lines).plunger.pressures);
    };
    // an inlet of twice the area: 4/(1 + 4)
    const auto orifices = leak("inlet_orifice = \"1.4142135623730951 mm\"\noutlet_orifice = \"1 mm\"\n");
    CHECK_THAT(in_mpa(orifices.high), WithinRel(0.8, 1e-12));
    // eight times the conductance by twice the clearance: 1/(1 + 8)
    const std::string gap = "diameter = \"12 mm\"\nlength = \"5 mm\"\n";
    const auto gaps = leak("[plunger.leak.inlet]\nclearance = \"0.02 mm\"\n" + gap +
                           "[plunger.leak.outlet]\nclearance = \"0.04 mm\"\n" + gap);
    CHECK_THAT(in_mpa(gaps.high), WithinRel(1.0 / 9.0, 1e-12));
}

TEST_CASE("a vented back has no pressure, a drain has its oil and its time") {
    const auto p = read_plunger_text(
                       kHead + kPressures +
                       "[plunger.back]\nvented = true\n[plunger.drain]\ndiameter = \"12 mm\"\nclearance = \"0.2 mm\"\n"
                       "length = \"3 mm\"\neccentricity = \"0 .. 1\"\nviscosity = \"0.6 Pa s .. 800 "
                       "cP\"\nlongest_time = \"1500 ms\"\n")
                       .plunger;
    CHECK_FALSE(p.back.has_value());
    REQUIRE(p.drain.has_value());
    CHECK(p.drain->gap.eccentricity == demand::Interval<double>{0.0, 1.0});
    CHECK_THAT(in_millipascal_second(p.drain->gap.viscosity->low), WithinRel(600.0, 1e-12));
    CHECK_THAT(in_millipascal_second(p.drain->gap.viscosity->high), WithinRel(800.0, 1e-12));
    CHECK_THAT(in_second(p.drain->longest_time), WithinRel(1.5, 1e-12));
}

TEST_CASE("a single changed letter of a sound plunger never crashes, and never passes with a diagnostic") {
    const std::string sound = kHead + kPressures +
                              "leak = \"0.5 bar\"\n[plunger.side_load]\nforce = \"40 N\"\nhalf_angle = \"12 deg\"\n"
                              "flank_friction = 0.1\n[plunger.drain]\ndiameter = \"12 mm\"\nclearance = \"0.2 mm\"\n"
                              "length = \"3 mm\"\nviscosity = \"800 mPa s\"\nlongest_time = \"3 s\"\n";
    REQUIRE(io::read_plunger(sound, "x.toml").has_value());
    for (std::size_t at = 0; at < sound.size(); ++at)
        for (const char letter : {'\0', '"', '[', ']', '=', '.', '\n', '#', '\xC3', '0', '9', 'e', '-'}) {
            std::string changed = sound;
            changed[at] = letter;
            const auto file = io::read_plunger(changed, "x.toml");
            CHECK(file.has_value() != has_error(file.error()));
            if (!file) continue;
            const demand::Budget budget = demand::plunger_budget(file->plunger, file->spring);
            CHECK(std::isfinite(in_newton(budget.seated.at_most.value())));
        }
}

TEST_CASE("the farthest numbers a plunger file may state make a budget") {
    const std::string small =
        "[plunger]\nseat_diameter = \"0.0001 mm\"\nfull_diameter = \"10 m\"\nstroke = \"10 m\"\n"
        "friction = \"0 N .. 1000 kN\"\n[plunger.pressures]\nrelease = \"10000 bar\"\n"
        "leak = \"10000 bar\"\n[plunger.drain]\ndiameter = \"0.0001 mm\"\n"
        "clearance = \"0.0001 mm\"\nlength = \"10 m\"\nviscosity = \"10000 Pa s\"\n"
        "longest_time = \"1 ms\"\n";
    const std::string large =
        "[plunger]\nseat_diameter = \"0.0001 mm\"\nfull_diameter = \"0.0002 mm\"\n"
        "stroke = \"0.0001 mm\"\nfriction = \"0 N\"\n[plunger.pressures]\nrelease = \"10000 bar\"\n"
        "[plunger.drain]\ndiameter = \"10 m\"\nclearance = \"10 m\"\nlength = \"0.0001 mm\"\n"
        "viscosity = \"0.001 mPa s\"\nlongest_time = \"1000000 s\"\n";
    for (const std::string& text : {small, large}) {
        const demand::Budget budget = demand::plunger_budget(read_plunger_text(text).plunger);
        for (const demand::BudgetLimit& limit : budget.limits) {
            INFO(limit.id);
            CHECK(std::isfinite(in_newton(limit.value)));
        }
    }
}
