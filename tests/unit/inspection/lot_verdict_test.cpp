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
    {Kind::total_coils, Role::bound, 6.5, {6.4, 6.6}, true},
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

TEST_CASE("Pieces so long that only closer tips allow it are told of, and the verdict stays") {
    std::vector<Characteristic> sheet = kSheet;
    sheet[3] = {Kind::free_length,    Role::bound, 20.0,
                {std::nullopt, 20.4}, false,       Characteristic::TipsAsked{20.1, 10.0}};
    Samples s = good_lot(20);
    s.expanded[Kind::free_length] = 0.05;
    for (Piece& piece : s.pieces) piece.values[Kind::free_length] = 20.0;
    CHECK(inspect(s, sheet, every(20)).remarks.empty());
    s.pieces[4].values[Kind::free_length] = 20.3;
    s.pieces[5].values[Kind::free_length] = 20.08;  // within U of it
    const LotInspection lot = inspect(s, sheet, every(20));
    CHECK(lot.verdict == Verdict::accept);
    REQUIRE_FALSE(lot.remarks.empty());
    CHECK(lot.remarks[0] ==
          "2 pieces may have a free length L0 above 20.1 mm and conform only with end tips within 180° ±10°: look at "
          "them "
          "with a protractor.");
}
