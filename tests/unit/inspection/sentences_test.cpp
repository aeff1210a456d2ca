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
    coils.characteristic = {Kind::total_coils, Role::condition, 8.5, {8.45, 8.55}, true};
    lot.characteristics.push_back(coils);
    CHECK_THAT(eye_sentence(lot), ContainsSubstring("nor are the end tips, which want a protractor"));
    lot.characteristics.back().inside = 3;
    CHECK_THAT(eye_sentence(lot), ContainsSubstring("End tips are judged as the part of a turn in nt"));
}

TEST_CASE("What comes next is asked of the maker of a rejected lot, and of nobody when a lot is good") {
    LotInspection lot = sampled_lot();
    lot.verdict = Verdict::accept;
    CHECK(next_sentence(lot).empty());
    lot.conditions = {"end tips stand within 180° ±15°"};
    CHECK_THAT(next_sentence(lot), ContainsSubstring("Measure"));
    lot.verdict = Verdict::reject;
    for (const char* words : {"send this report to the maker", "reworks", "replaces", "concession", "fit none of it"})
        CHECK_THAT(next_sentence(lot), ContainsSubstring(words));
    lot.verdict = Verdict::not_proven;
    CHECK_THAT(next_sentence(lot), ContainsSubstring("measure what is open again"));
}

TEST_CASE("A further limit by end tips is told where it was measured") {
    LotInspection lot = sampled_lot();
    CHECK(tips_sentence(lot).empty());
    Judged length;
    length.characteristic = {Kind::free_length, Role::condition, 20.0, {std::nullopt, 20.1}, false, {{20.4, 20.0}}};
    lot.characteristics.push_back(length);
    CHECK(tips_sentence(lot).empty());
    lot.characteristics.back().inside = 3;
    CHECK(tips_sentence(lot) ==
          " A piece whose end tips are measured within 180° ±20° is held to a free length L0 of 20.4 mm.");
}

TEST_CASE("A limit is told with the decimals of both, and one of turns with four") {
    CHECK(limit_text({5.04, 6.5}, 6.5) == "6.50");
    CHECK(limit_text({std::nullopt, 8.7}, std::nullopt) == "-");
    CHECK(limit_text({8.5 - 15.0 / 360.0, 8.5 + 15.0 / 360.0}, 8.5 + 15.0 / 360.0) == "8.5417");
}
