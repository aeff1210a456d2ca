// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>
#include <seatload/sheet/word_wrap.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

TEST_CASE("character widths are those of the Helvetica metrics the typeface was made to match", "[sheet]") {
    // Adobe core 14 font metrics, Helvetica.afm and Helvetica-Bold.afm (WX, thousandths of em).
    const FontMetrics& regular = metrics(Face::regular);
    const struct {
        char32_t character;
        double width;
    } kRegular[] = {{U' ', 278}, {U'A', 667}, {U'W', 944}, {U'a', 556}, {U'i', 222},
                    {U'0', 556}, {U'.', 278}, {U'(', 333}, {U'm', 833}, {U'Ø', 778}};
    for (const auto& row : kRegular) CHECK_THAT(1000.0 * regular.advance(row.character), WithinAbs(row.width, 0.5));
    const FontMetrics& bold = metrics(Face::bold);
    const struct {
        char32_t character;
        double width;
    } kBold[] = {{U' ', 278}, {U'A', 722}, {U'W', 944}, {U'a', 556}, {U'i', 278}, {U'm', 889}};
    for (const auto& row : kBold) CHECK_THAT(1000.0 * bold.advance(row.character), WithinAbs(row.width, 0.5));
}

TEST_CASE("the typeface has every sign a sheet uses, and says so of those it lacks", "[sheet]") {
    for (const Face face : {Face::regular, Face::bold}) {
        for (const char32_t c : std::u32string_view(U"Ø±°µτ−×≤≥≈–…■◊□ЖёЇŁśΩά\u00a0")) CHECK(metrics(face).has(c));
        for (const char32_t c : std::u32string_view(U"\u2300\u22a5春\U0001F600")) CHECK_FALSE(metrics(face).has(c));
    }
}

TEST_CASE("capitals are drawn as tall as the height asked for", "[sheet]") {
    // OS/2 table of Liberation Sans: capital height 1409 of 2048 units.
    CHECK_THAT(metrics(Face::regular).capital_height(), WithinAbs(1409.0 / 2048.0, 1e-3));
    CHECK_THAT(text_width("A", 2.5), WithinAbs(0.667 * 2.5 / (1409.0 / 2048.0), 2e-3));
}

TEST_CASE("scripts are taken apart and left out of the plain text", "[sheet]") {
    const std::string words = with_sub("F", "1") + " at " + with_sub("L", "1") + " in mm" + with_super("", "2");
    CHECK(plain(words) == "F1 at L1 in mm2");
    const auto pieces = runs(words);
    REQUIRE(pieces.size() == 6);
    CHECK(pieces[1].words == "1");
    CHECK(pieces[1].script == Script::sub);
    CHECK(pieces[5].script == Script::super);
    CHECK(runs("").empty());
}

TEST_CASE("a user's text can hold no script marks, and what cannot be printed is named", "[sheet]") {
    Diagnostics diagnostics;
    CHECK(readable("a\x01"
                   "b\nc",
                   "note", diagnostics) == "a b c");
    CHECK(diagnostics.empty());
    CHECK(readable("spring 春", "note", diagnostics) == "spring □");
    REQUIRE(diagnostics.size() == 1);
    CHECK(render(diagnostics) ==
          "warning: note: the sheet's typeface has no sign for U+6625; a □ is printed instead [letter-not-printable]\n"
          "    hint: Latin, Greek and Cyrillic letters can be printed\n");
    CHECK(readable("\xC3(", "title", diagnostics).empty());
    CHECK(has_error(diagnostics));
}

TEST_CASE("a turned text has its box turned", "[sheet]") {
    const Box level = text_box(Text{{10.0, 20.0}, "Ø8.2 ± 0.3"});
    Text text{{10.0, 20.0}, "Ø8.2 ± 0.3"};
    text.turn = 90.0;
    const Box upright = text_box(text);
    CHECK_THAT(upright.height(), WithinAbs(level.width(), 1e-9));
    CHECK_THAT(upright.width(), WithinAbs(level.height(), 1e-9));
    CHECK_THAT(upright.bottom, WithinAbs(20.0, 1e-9));
}

TEST_CASE("a text too long for its field is narrowed, then cut with an ellipsis", "[sheet]") {
    const Text text{{0.0, 0.0}, "Harbour Engine Works"};
    const double natural = text_width(text);
    const Text kept = fitted(text, natural);
    CHECK(kept.squeeze == 1.0);
    const Text narrowed = fitted(text, 0.8 * natural, 0.7);
    CHECK_THAT(text_width(narrowed), WithinAbs(0.8 * natural, 1e-9));
    CHECK(narrowed.words == text.words);
    const Text cut = fitted(text, 0.4 * natural, 0.7);
    CHECK(text_width(cut) <= 0.4 * natural);
    CHECK(cut.words.ends_with("…"));
    CHECK(cut.words.size() > 6);
}

TEST_CASE("wrapped lines are no wider than asked and keep every word", "[sheet]") {
    const std::string words = "A spring stores energy: guard eyes and hands when pressing, testing or releasing it.";
    const auto lines = wrapped(words, 40.0);
    REQUIRE(lines.size() > 2);
    std::string again;
    for (const std::string& line : lines) {
        CHECK(text_width(line, kLettering) <= 40.0);
        again += (again.empty() ? "" : " ") + line;
    }
    CHECK(again == words);
}

TEST_CASE("a word wider than the line is broken without loss, never inside a character", "[sheet]") {
    const std::string word = "Мастерскаяпообслуживаниюдвигателейикоробокпередач";
    std::string again;
    for (const std::string& line : wrapped(word, 30.0)) {
        CHECK(text_width(line, kLettering) <= 30.0);
        again += line;
    }
    CHECK(again == word);
    CHECK(wrapped("", 30.0) == std::vector<std::string>{""});
}

TEST_CASE("labels are spread so that none overlaps its neighbour", "[sheet]") {
    const std::vector<Spot> spots{{10.0, 6.0}, {10.5, 6.0}, {11.0, 6.0}, {40.0, 6.0}};
    const auto places = spread(spots, 0.0, 44.0);
    for (std::size_t i = 0; i + 1 < places.size(); ++i) CHECK(places[i + 1] - places[i] >= 6.0 - 1e-9);
    CHECK(places[3] == 40.0);
    CHECK(spread({{50.0, 6.0}}, 0.0, 44.0)[0] == 41.0);
}

TEST_CASE("figures are printed without needless zeros and with equal decimals in a tolerance", "[sheet]") {
    CHECK(trimmed(19.3, 3) == "19.3");
    CHECK(trimmed(15.0, 3) == "15");
    CHECK(trimmed(100.0, 0) == "100");
    CHECK(trimmed(-0.0001, 3) == "0");
    const Figures figures{paper()};
    CHECK(shown(figures.wire(0.8 * mm)) == "0.80");
    CHECK(shown(figures.wire(0.125 * mm)) == "0.125");
    record::LoadAtLength load{15.0 * mm, 4.8 * newton, 0.3 * newton, 0.3 * newton, 2};
    CHECK(shown(figures.toleranced(load)) == "4.8 ± 0.3");
    load.plus = 0.55 * newton;
    CHECK(shown(figures.toleranced(load)) == "4.80 +0.55/−0.30");
}

}  // namespace
}  // namespace seatload::test
