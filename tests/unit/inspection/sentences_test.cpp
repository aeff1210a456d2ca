// SPDX-License-Identifier: MIT
#include <seatload/inspection/sentences.hpp>

#include <cmath>

#include <support/check.hpp>

using namespace seatload;
using namespace seatload::inspection;

namespace {

LotInspection sampled_lot() {
    LotInspection lot;
    lot.samples.lot_size = 40;
    lot.plan = {false, 13, 0, 1, SamplingPlan{'D', 'E', 13, 0, 1}, {}};
    Judged j;
    j.characteristic = {Kind::seated_load, Role::load, 5.0, {4.0, 6.0}, false};
    j.inside = 13;
    lot.characteristics.push_back(j);
    return lot;
}

}  // namespace

// A lot of 40 with 4 bad passes 13 pieces without a bad one in 19.2 of 100 (hypergeometric, worked out by an
// independent program).
TEST_CASE("The weakness of a sample is told as a number") {
    const auto sentences = protection_sentences(sampled_lot());
    REQUIRE(sentences.size() == 2);
    CHECK_THAT(sentences[0], ContainsSubstring("Loads: 13 of 40, none of which may be bad"));
    CHECK_THAT(sentences[0], ContainsSubstring("a lot with 4 bad (10 %) passes with a chance of 19.2 %"));
    CHECK_THAT(sentences[1], ContainsSubstring("code letter is D"));
}

TEST_CASE("Of a lot that was measured in full no chance is told") {
    LotInspection lot = sampled_lot();
    lot.plan = {true, 40, 0, 1, std::nullopt, {}};
    lot.characteristics[0].inside = 40;
    CHECK(protection_sentences(lot) ==
          std::vector<std::string>{"Loads: every piece was measured, so that each bad one shows."});
}

TEST_CASE("What pieces lost by heat is told in the mean and at most, beside the guidance") {
    LotInspection lot;
    lot.samples.treatment = "heat";
    lot.samples.conditions = "24 h at 120 °C";
    lot.samples.pieces = {{"1", {{Kind::seated_load, 5.0}}, {{Kind::seated_load, 4.9}}, {}},
                          {"2", {{Kind::seated_load, 5.0}}, {{Kind::seated_load, 4.8}}, {}},
                          {"3", {{Kind::seated_load, 5.0}}, {}, {}}};
    Forecast forecast;
    forecast.load_loss = 0.06;
    const auto sentences = set_sentences(lot, &forecast);
    REQUIRE(sentences.size() == 2);
    // 2 % and 4 %: 3 % in the mean
    CHECK_THAT(sentences[0],
               ContainsSubstring("After heat (24 h at 120 °C) the seated load F1 of 2 pieces had lost 3 %"));
    CHECK_THAT(sentences[0], ContainsSubstring("at most 4 % (piece 2)"));
    CHECK_THAT(sentences[1], ContainsSubstring("6 %"));
}

// Chi-square of 9 degrees of freedom: 5 % lie above 16.919 (any table), so that twice that tail is 10 %.
TEST_CASE("A deviation is held against the foretold one by chi-square") {
    CHECK_THAT(chance_of_deviation(std::sqrt(16.919 / 9.0), 10, 1.0), WithinAbs(0.10, 0.0001));
}

TEST_CASE("What is left to the eye is told, and where end tips would be written down") {
    LotInspection lot = sampled_lot();
    CHECK(eye_sentence(lot) == "Ends, hand and finish are looked at by eye and are no part of this verdict.");
    Judged coils;
    coils.characteristic = {Kind::total_coils, Role::bound, 8.5, {8.45, 8.55}, true};
    lot.characteristics.push_back(coils);
    CHECK_THAT(eye_sentence(lot), ContainsSubstring("nor are the end tips, which want a protractor"));
    lot.characteristics.back().inside = 3;
    CHECK_THAT(eye_sentence(lot), ContainsSubstring("End tips are judged as the part of a turn in nt"));
}
