// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <seatload/sizing/what_if.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "varied_requirements.hpp"

using namespace seatload;
using demand::Requirement;

namespace {

/// A latch spring over a stated play of its seat, on a grid that is searched in a moment.
Requirement latch() {
    Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.space.free_length = demand::LengthRange{15.0 * mm, 24.0 * mm};
    r.space.seats = demand::Seats::slides;
    r.space.sideways_play = 0.3 * mm;
    r.seated_load = {4.8 * newton, 6.5 * newton};
    r.full_travel_load = {std::nullopt, 13.5 * newton};
    r.surroundings.temperature = {120.0};
    r.wire.grades = {"ASTM-A401", "EN10270-2-FDSiCr", "EN10270-3-1.4310-NS"};
    r.wire.diameters = {0.65 * mm, 0.7 * mm, 0.8 * mm};
    r.grid.total_coils = {4.0, 12.0};
    r.grid.free_length_step = 0.2 * mm;
    return r;
}

sizing::Setting setting(unsigned threads = 2) {
    sizing::SearchOptions options;
    options.threads = threads;
    return {test::wires(), test::tolerances(), options};
}

std::vector<sizing::WhatIfRow> rows_of(const Requirement& r, const std::string& question, unsigned threads = 2) {
    const auto asked = sizing::read_what_if(question, r);
    INFO(question);
    REQUIRE(asked.has_value());
    return sizing::what_if(r, *asked, setting(threads));
}

std::string complaint_of(const std::string& question, const Requirement& r = latch()) {
    const auto asked = sizing::read_what_if(question, r);
    INFO(question);
    REQUIRE(!asked.has_value());
    REQUIRE(asked.error().size() == 1);
    return asked.error()[0].message + '|' + asked.error()[0].hint;
}

bool has(const std::string& text, const std::string& piece) { return text.find(piece) != std::string::npos; }

/// The row is what the search finds for the requirement changed by hand.
void check_row(const sizing::WhatIfRow& row, const Requirement& changed) {
    const sizing::Space space = sizing::search_space(changed, test::wires());
    const sizing::Census census = sizing::search(space, test::tolerances());
    CHECK(row.looked_at == census.looked_at);
    CHECK(row.fit == census.fit);
    REQUIRE(row.best.has_value() == (census.fit > 0));
    if (!row.best) return;
    bool is_among = false;
    for (const auto& each : census.best) {
        if (!each) continue;
        CHECK(!sizing::better(each->merit, row.best->merit));
        const auto& wire = space.wires[each->wire];
        is_among = is_among || (space.grades[wire.grade].id == row.best->grade &&
                                wire.size.diameter == row.best->spring.wire_diameter &&
                                each->mean_diameter_mm == in_mm(row.best->spring.mean_diameter) &&
                                each->total_coils == row.best->spring.total_coils &&
                                each->free_length_mm == in_mm(row.best->spring.free_length));
    }
    CHECK(is_among);
}

}  // namespace

TEST_CASE("each row of a what-if is the search of the requirement with that value") {
    struct Case {
        const char* question;
        void (*change)(Requirement&, double);
    };
    const Case cases[] = {
        {"bore=8.6 mm..9.4 mm",
         [](Requirement& r, double v) {
             r.space.bore = demand::Fit{v * mm, (v + 0.05) * mm, v * mm};
         }},
        {"seated_height=13 mm..17 mm", [](Requirement& r, double v) { r.space.seated_height = v * mm; }},
        {"space.full_travel_height=8 mm..12 mm", [](Requirement& r, double v) { r.space.full_travel_height = v * mm; }},
        {"seated load at least=4 N..6.5 N", [](Requirement& r, double v) { r.seated_load.at_least = v * newton; }},
        {"load.full_travel.at_least=5 N..15 N",
         [](Requirement& r, double v) { r.full_travel_load.at_least = v * newton; }},
        {"temperature=20 °C..200 °C", [](Requirement& r, double v) { r.surroundings.temperature.degrees = v; }},
        {"buckling_margin=1..1.5", [](Requirement& r, double v) { r.limits.buckling_margin = v; }},
        {"load_loss=0 %..10 %", [](Requirement& r, double v) { r.limits.load_loss = Share{v}; }},
        {"mass=0.5 g..1 g", [](Requirement& r, double v) { r.limits.largest_mass = v * gram; }},
    };
    for (const Case& each : cases) {
        INFO(each.question);
        const auto rows = rows_of(latch(), each.question);
        bool any = false;
        for (const sizing::WhatIfRow& row : rows) {
            INFO(row.value);
            Requirement changed = latch();
            if (!row.is_stated) each.change(changed, row.value);
            check_row(row, changed);
            any = any || row.fit > 0;
        }
        CHECK(any);
        CHECK(sizing::lets_in_any(rows) == any);
    }
}

TEST_CASE("a what-if tries eleven evenly spaced values, and the stated one in its place among them") {
    const auto rows = rows_of(latch(), "bore = 8.5 mm .. 9.5 mm");
    REQUIRE(rows.size() == 11);
    const double expected[] = {8.5, 8.6, 8.7, 8.8, 8.9, 9.0, 9.1, 9.2, 9.3, 9.4, 9.5};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(rows[i].value == expected[i]);
        CHECK(rows[i].is_stated == (i == 5));
    }
    for (const char* range : {"8.4 mm..8.9 mm", "8.93 mm..9.13 mm", "9.1 mm..9.6 mm"}) {
        const auto others = rows_of(latch(), std::string("bore=") + range);
        REQUIRE(others.size() == 12);
        CHECK(std::is_sorted(others.begin(), others.end(), [](auto& a, auto& b) { return a.value < b.value; }));
        const auto stated = std::find_if(others.begin(), others.end(), [](auto& row) { return row.is_stated; });
        REQUIRE(stated != others.end());
        CHECK(stated->value == 9.0);
        check_row(*stated, latch());
    }
}

TEST_CASE("nothing is marked as stated for a number that the requirement leaves open") {
    const auto rows = rows_of(latch(), "load.full_travel.at_least=5 N..15 N");
    CHECK(rows.size() == 11);
    CHECK(std::none_of(rows.begin(), rows.end(), [](auto& row) { return row.is_stated; }));
}

TEST_CASE("a wider bore, a lower least load and a higher greatest load let in no fewer springs") {
    const auto bores = rows_of(latch(), "bore=8.5 mm..9.5 mm");
    const auto least = rows_of(latch(), "load.seated.at_least=4 N..6.5 N");
    const auto most = rows_of(latch(), "load.full_travel.at_most=10 N..15 N");
    const auto rises = [](auto& a, auto& b) { return a.fit < b.fit; };
    CHECK(std::is_sorted(bores.begin(), bores.end(), rises));
    CHECK(std::is_sorted(least.rbegin(), least.rend(), rises));
    CHECK(std::is_sorted(most.begin(), most.end(), rises));
    CHECK(bores.front().fit < bores.back().fit);
    CHECK(least.front().fit > least.back().fit);
    CHECK(most.front().fit < most.back().fit);
}

TEST_CASE("a what-if answers the same whatever the number of threads") {
    const auto one = rows_of(latch(), "seated_height=13 mm..17 mm", 1);
    for (const unsigned threads : {2U, 3U, 7U}) {
        const auto more = rows_of(latch(), "seated_height=13 mm..17 mm", threads);
        REQUIRE(more.size() == one.size());
        for (std::size_t i = 0; i < one.size(); ++i) {
            CHECK(more[i].fit == one[i].fit);
            REQUIRE(more[i].best.has_value() == one[i].best.has_value());
            if (!one[i].best) continue;
            CHECK(more[i].best->grade == one[i].best->grade);
            CHECK(more[i].best->spring.free_length == one[i].best->spring.free_length);
            CHECK(more[i].best->merit.tolerance_room == one[i].best->merit.tolerance_room);
        }
    }
}

TEST_CASE("every number of a what-if can be set, and is then stated") {
    Requirement all = latch();
    all.space.rod = demand::Fit{4.9 * mm, 5.0 * mm, 5.0 * mm};
    all.limits.gap_rule = demand::GapRule::share_of_travel;
    CHECK(sizing::what_if_numbers().size() ==
          32);  // as many numbers as a requirement can state and that steer the search
    for (const sizing::WhatIfNumber& number : sizing::what_if_numbers()) {
        INFO(number.key);
        for (const double value : {1.0, 1.5}) {
            if (value > number.highest) continue;
            Requirement changed = all;
            number.easing->set(changed, value);
            const auto read_back = sizing::stated(number, changed);
            REQUIRE(read_back.has_value());
            CHECK_THAT(*read_back, Catch::Matchers::WithinAbs(value, 1e-12));
        }
    }
}

TEST_CASE("a number is found by its key, by a last part that no other has, and by its name") {
    const auto key = [](const std::string& words, const std::string& range) {
        const auto asked = sizing::read_what_if(words + '=' + range, latch());
        INFO(words);
        REQUIRE(asked.has_value());
        return asked->number->key;
    };
    CHECK(key("space.bore", "8 mm..9 mm") == "space.bore");
    CHECK(key("bore", "8 mm..9 mm") == "space.bore");
    CHECK(key(" Bore ", " 8 mm .. 9 mm ") == "space.bore");
    CHECK(key("seated height", "10 mm..12 mm") == "space.seated_height");
    CHECK(key("full_travel.at_most", "10 N..12 N") == "load.full_travel.at_most");
    CHECK(key("full-travel load at most", "10 N..12 N") == "load.full_travel.at_most");
    CHECK(key("free length at most", "20 mm..22 mm") == "space.free_length.at_most");
    CHECK(key("stress_share", "50 %..60 %") == "limits.stress_share");
    CHECK(key("limits.stress_share", "0.5..0.6") == "limits.stress_share");
}

TEST_CASE("a what-if that cannot be understood says what is wrong and what would do") {
    CHECK(has(complaint_of("bor=8 mm..9 mm"), "no number of a requirement is called so|did you mean \"bore\"?"));
    CHECK(has(complaint_of("height=8 mm..9 mm"), "write one of space.seated_height, space.full_travel_height"));
    CHECK(has(complaint_of("at_least=8 N..9 N"), "several numbers"));
    CHECK(has(complaint_of("=8 N..9 N"), "no number of a requirement is called so|numbers are load.seated.at_least, "));
    CHECK(has(complaint_of("bore"), "a number and a range are wanted"));
    CHECK(has(complaint_of("bore=9 mm"), "a range is wanted"));
    CHECK(has(complaint_of("bore=9..10 mm"), "the number has no unit"));
    CHECK(has(complaint_of("bore=9 mm..9 mm"), "does not rise"));
    CHECK(has(complaint_of("bore=0 mm..9 mm"), "0 mm is too small: space.bore is more than 0 mm"));
    CHECK(has(complaint_of("buckling_margin=0.5..2"), "0.5 is too small: limits.buckling_margin is at least 1"));
    CHECK(has(complaint_of("buckling_margin=1 mm..2 mm"), "not a plain number"));
    CHECK(has(complaint_of("load_loss=0 %..110 %"), "1.1 is too large: limits.load_loss is at most 1"));
    CHECK(has(complaint_of("seated_height=9 mm..12 mm"), "not above the full-travel height"));
    CHECK(has(complaint_of("free_length.at_most=14 mm..20 mm"), "above the greatest"));
    CHECK(has(complaint_of("temperature=20 °C..201 °C"), "no guidance"));
    CHECK(has(complaint_of("rod=2 mm..3 mm"), "states no rod"));
    CHECK(has(complaint_of("gap_share=0.1..0.2"), "gap_rule"));
}
