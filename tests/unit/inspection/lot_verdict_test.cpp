// SPDX-License-Identifier: MIT
#include <seatload/inspection/lot_verdict.hpp>

#include <seatload/io/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::inspection;

namespace {

const std::vector<Characteristic> kSheet{
    {Kind::seated_load, Role::load, 5.0, {4.0, 6.0}, false},
    {Kind::full_travel_load, Role::load, 10.0, {9.0, 11.0}, false},
    {Kind::outside_diameter, Role::dimension, 8.4, {8.2, 8.6}, false},
    {Kind::free_length, Role::noted, 20.0, {}, false},
    {Kind::total_coils, Role::condition, 6.5, {6.4, 6.6}, true},
};

/// A lot of good pieces, all of them measured.
Samples good_lot(int pieces) {
    Samples s;
    s.name = "lot";
    s.lot_size = pieces;
    s.expanded = {{Kind::seated_load, 0.1}, {Kind::full_travel_load, 0.1}, {Kind::outside_diameter, 0.02}};
    for (int i = 0; i < pieces; ++i)
        s.pieces.push_back(
            {std::to_string(i + 1),
             {{Kind::seated_load, 5.0 + 0.01 * (i % 3)}, {Kind::full_travel_load, 10.0}, {Kind::outside_diameter, 8.4}},
             {},
             {}});
    return s;
}

LotPlan every(int pieces) {
    return {true, pieces, 0, 1, std::nullopt, {true, Level::two, 1.0, inspection::Severity::normal}};
}

LotPlan sampled(int lot, double aql, inspection::Severity severity = inspection::Severity::normal) {
    return lot_plan({false, Level::two, aql, severity}, lot, io::builtin_sampling().value()).value();
}

}  // namespace

TEST_CASE("A lot whose pieces all conform is accepted") {
    const LotInspection lot = inspect(good_lot(20), kSheet, every(20));
    CHECK(lot.verdict == Verdict::accept);
    CHECK(lot.reasons.empty());
    CHECK(lot.characteristics[0].inside == 20);
}

TEST_CASE("One piece outside rejects a lot of which every piece counts, and the piece is named") {
    Samples s = good_lot(20);
    s.pieces[6].values[Kind::seated_load] = 3.8;
    const LotInspection lot = inspect(s, kSheet, every(20));
    CHECK(lot.verdict == Verdict::reject);
    CHECK(lot.bad == std::vector<std::size_t>{6});
    REQUIRE(lot.reasons.size() == 1);
    CHECK(lot.reasons[0] == "seated load F1: 1 piece outside");
    REQUIRE(lot.remarks.size() == 1);
    CHECK_THAT(lot.remarks[0], ContainsSubstring("7 is bad; the other 19"));
}

TEST_CASE("A piece nearer to a limit than U leaves the lot unproven, on either side of the limit") {
    for (const double load : {3.95, 4.05}) {
        Samples s = good_lot(20);
        s.pieces[2].values[Kind::seated_load] = load;
        const LotInspection lot = inspect(s, kSheet, every(20));
        CHECK(lot.verdict == Verdict::not_proven);
        CHECK(lot.unproven == std::vector<std::size_t>{2});
    }
}

TEST_CASE("Pieces that were to be measured and were not leave the lot unproven") {
    Samples s = good_lot(20);
    s.pieces[3].values.erase(Kind::full_travel_load);
    CHECK(inspect(s, kSheet, every(20)).verdict == Verdict::not_proven);
    s = good_lot(20);
    for (std::size_t i = 4; i < 20; ++i) s.pieces[i].values.erase(Kind::outside_diameter);
    const LotInspection lot = inspect(s, kSheet, every(20));
    CHECK(lot.verdict == Verdict::not_proven);
    CHECK(lot.reasons == std::vector<std::string>{"outside diameter De: measured on 4 of the 5 pieces it takes"});
}

TEST_CASE("Five pieces do for dimensions, all of a smaller lot") {
    Samples s = good_lot(20);
    for (std::size_t i = 5; i < 20; ++i) s.pieces[i].values.erase(Kind::outside_diameter);
    CHECK(inspect(s, kSheet, every(20)).verdict == Verdict::accept);
    CHECK(inspect(good_lot(3), kSheet, every(3)).verdict == Verdict::accept);
}

TEST_CASE("A dimension outside rejects the lot whatever the plan for loads allows") {
    Samples s = good_lot(50);
    s.lot_size = 400;
    s.pieces[0].values[Kind::outside_diameter] = 8.7;
    CHECK(inspect(s, kSheet, sampled(400, 2.5)).verdict == Verdict::reject);
}

TEST_CASE("A sample with as many bad pieces as allowed passes, with one more it does not") {
    // lot 400, AQL 2.5: 50 pieces, Ac 3
    Samples s = good_lot(50);
    s.lot_size = 400;
    for (std::size_t i = 0; i < 3; ++i) s.pieces[i].values[Kind::seated_load] = 3.0;
    CHECK(inspect(s, kSheet, sampled(400, 2.5)).verdict == Verdict::accept);
    s.pieces[3].values[Kind::seated_load] = 3.0;
    CHECK(inspect(s, kSheet, sampled(400, 2.5)).verdict == Verdict::reject);
    s.pieces[3].values[Kind::seated_load] = 4.05;
    CHECK(inspect(s, kSheet, sampled(400, 2.5)).verdict == Verdict::not_proven);
}

TEST_CASE("Pieces bad by one load and pieces bad by the other count together") {
    Samples s = good_lot(50);
    s.lot_size = 400;
    for (std::size_t i = 0; i < 2; ++i) s.pieces[i].values[Kind::seated_load] = 3.0;
    for (std::size_t i = 2; i < 4; ++i) s.pieces[i].values[Kind::full_travel_load] = 12.0;
    const LotInspection lot = inspect(s, kSheet, sampled(400, 2.5));
    CHECK(lot.characteristics[0].verdict == Verdict::accept);
    CHECK(lot.verdict == Verdict::reject);
}

TEST_CASE("Between Ac and Re a lot under reduced inspection passes, and the next goes back to normal") {
    // letter H reduced at AQL 2.5: 20 pieces, Ac 1, Re 4 (MIL-STD-105E table II-C, from memory)
    const LotPlan plan = sampled(400, 2.5, inspection::Severity::reduced);
    REQUIRE(plan.size == 20);
    REQUIRE(plan.accept == 1);
    REQUIRE(plan.reject == 4);
    Samples s = good_lot(20);
    s.lot_size = 400;
    for (std::size_t i = 0; i < 2; ++i) s.pieces[i].values[Kind::seated_load] = 3.0;
    const LotInspection lot = inspect(s, kSheet, plan);
    CHECK(lot.verdict == Verdict::accept);
    REQUIRE_FALSE(lot.remarks.empty());
    CHECK_THAT(lot.remarks[0], ContainsSubstring("under the normal table"));
}

TEST_CASE("Whole turns are the maker's to choose, parts of a turn are not") {
    Samples s = good_lot(5);
    s.expanded[Kind::total_coils] = 0.02;
    s.pieces[0].values[Kind::total_coils] = 7.48;
    CHECK(inspect(s, kSheet, every(5)).verdict == Verdict::accept);
    s.pieces[0].values[Kind::total_coils] = 7.0;
    CHECK(inspect(s, kSheet, every(5)).verdict == Verdict::reject);
}

TEST_CASE("A reference value is told and decides nothing") {
    Samples s = good_lot(5);
    s.expanded[Kind::free_length] = 0.1;
    for (Piece& piece : s.pieces) piece.values[Kind::free_length] = 35.0;
    const LotInspection lot = inspect(s, kSheet, every(5));
    CHECK(lot.verdict == Verdict::accept);
    CHECK(lot.characteristics[3].measured() == 5);
    CHECK_FALSE(lot.characteristics[3].decides());
}

// The sheet's words: "L0 at or below 20.1 mm, or 20.4 mm on pieces whose end tips are within 180 deg +-18 deg"; a
// degree is 1/360 of a turn, so that 18 degrees are 0.05 turns.
std::vector<Characteristic> sheet_with_tips() {
    std::vector<Characteristic> sheet = kSheet;
    sheet[3] = {Kind::free_length,    Role::condition, 20.0,
                {std::nullopt, 20.1}, false,           Characteristic::FurtherByTips{20.4, 18.0}};
    return sheet;
}

Samples lot_of_lengths(double free_length) {
    Samples s = good_lot(20);
    s.expanded[Kind::free_length] = 0.05;
    s.expanded[Kind::total_coils] = 0.01;
    for (Piece& piece : s.pieces) piece.values[Kind::free_length] = 20.0;
    s.pieces[4].values[Kind::free_length] = free_length;
    return s;
}

TEST_CASE("A piece longer than the nearer bound passes by end tips alone that were measured") {
    const std::vector<Characteristic> sheet = sheet_with_tips();
    Samples s = lot_of_lengths(20.3);
    const LotInspection untold = inspect(s, sheet, every(20));
    CHECK(untold.verdict == Verdict::not_proven);
    CHECK(untold.reasons ==
          std::vector<std::string>{"free length L0: 1 piece not proven to be at or below 20.1 mm, and longer ones pass "
                                   "only with end tips measured within 180° ±18°"});
    s.pieces[4].values[Kind::total_coils] = 7.53;  // 10.8 deg off, U 3.6 deg
    const LotInspection close = inspect(s, sheet, every(20));
    CHECK(close.verdict == Verdict::accept);
    CHECK(close.remarks.back() ==
          "1 piece is not proven to have a free length L0 at or below 20.1 mm, and passes by "
          "end tips within 180° ±18°.");
    s.pieces[4].values[Kind::total_coils] = 6.57;  // 25.2 deg: beyond 18 by more than U
    CHECK(inspect(s, sheet, every(20)).verdict == Verdict::reject);
    s.pieces[4].values[Kind::total_coils] = 6.545;  // 16.2 deg: within U of 18
    CHECK(inspect(s, sheet, every(20)).verdict == Verdict::not_proven);
}

TEST_CASE("No end tips help a piece beyond the further bound, and none are asked of one below the nearer") {
    const std::vector<Characteristic> sheet = sheet_with_tips();
    CHECK(inspect(lot_of_lengths(20.5), sheet, every(20)).verdict == Verdict::reject);
    CHECK(inspect(lot_of_lengths(20.05), sheet, every(20)).verdict == Verdict::accept);
    CHECK(inspect(lot_of_lengths(20.08), sheet, every(20)).verdict == Verdict::not_proven);  // within U of 20.1
}

TEST_CASE("A good lot whose ordered end tips were not measured is accepted on that condition") {
    Samples s = good_lot(20);
    s.expanded[Kind::total_coils] = 0.02;
    const LotInspection untold = inspect(s, kSheet, every(20));
    CHECK(untold.verdict == Verdict::accept);
    CHECK(untold.conditions == std::vector<std::string>{"end tips stand within 180° ±36°"});  // 0.1 turn
    for (std::size_t i = 0; i < 5; ++i) s.pieces[i].values[Kind::total_coils] = 6.5;
    CHECK(inspect(s, kSheet, every(20)).conditions.empty());
    CHECK(inspect(s, sheet_with_tips(), every(20)).conditions ==
          std::vector<std::string>{"free length L0 is at most 20.1 mm"});
    s.pieces[6].values[Kind::seated_load] = 3.8;
    CHECK(inspect(s, kSheet, every(20)).conditions.empty());  // rejected, whatever the tips
}
