// SPDX-License-Identifier: MIT
#include <seatload/io/wording_file.hpp>

#include <support/check.hpp>

using namespace seatload;

namespace {

/// Three phrases that a wording must have.
const record::PhraseBook& model() {
    static const record::PhraseBook book{
        "en",
        {{"coil.hand", "hand of coiling"}, {"figure.scale", "scale {scale}"}, {"list.last", "{rest} and {last}"}}};
    return book;
}

const std::string kWordingHead = "format = \"seatload wording 1\"\nlanguage = \"de\"\n";

/// All that is said of a wording file; empty when it is taken.
std::string answer(const std::string& text) {
    const auto read = io::read_wording(text, "own.toml", model());
    CHECK(read.has_value() == read.error().empty());
    return render(read.error());
}

}  // namespace

TEST_CASE("A wording has its phrases by table and key") {
    const auto read = io::read_wording(kWordingHead +
                                           "[coil]\nhand = \"Windungsrichtung\"\n[figure]\nscale = \"Maßstab "
                                           "{scale}\"\n[list]\nlast = \"{rest} und {last}\"\n",
                                       "own.toml", model());
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    CHECK(read->language == "de");
    CHECK(read->phrases.size() == 3);
    CHECK(read->phrases.at("figure.scale") == "Maßstab {scale}");
}

TEST_CASE("The blanks of a phrase may stand in any order, and are named once") {
    CHECK(io::blanks("{b} of {a}, {b}") == std::vector<std::string>{"a", "b"});
    CHECK(io::blanks("no blank").empty());
    CHECK(answer(kWordingHead + "[coil]\nhand = \"x\"\n[figure]\nscale = \"{scale}:\"\n[list]\nlast = \"{last} nach "
                                "{rest}\"\n")
              .empty());
}

TEST_CASE("A phrase that is missing is named with its English words") {
    CHECK(answer(kWordingHead + "[coil]\nhand = \"Windungsrichtung\"\n[figure]\nscale = \"Maßstab {scale}\"\n") ==
          "own.toml: error: list.last: missing [wording-phrase]\n"
          "    hint: English: \"{rest} and {last}\"\n");
}

TEST_CASE("A phrase that no paper has is answered with what may have been meant") {
    CHECK(answer(kWordingHead +
                 "[coil]\nhandd = \"Windungsrichtung\"\nhand = \"x\"\n[figure]\nscale = \"{scale}\"\n[list]\n"
                 "last = \"{rest}, {last}\"\n") ==
          "own.toml:4:1: error: coil.handd: no paper has this phrase [wording-phrase]\n"
          "    handd = \"Windungsrichtung\"\n"
          "    ^\n"
          "    hint: did you mean \"coil.hand\"?\n");
}

TEST_CASE("Blanks other than the English ones are refused, with those wanted") {
    CHECK(answer(kWordingHead +
                 "[coil]\nhand = \"x\"\n[figure]\nscale = \"Maßstab {massstab}\"\n[list]\nlast = \"{rest}, "
                 "{last}\"\n") ==
          "own.toml:6:9: error: figure.scale: the blanks are not those of the English phrase [wording-blanks]\n"
          "    scale = \"Maßstab {massstab}\"\n"
          "            ^\n"
          "    hint: wanted: {scale}, in any order; English: \"scale {scale}\"\n");
    CHECK(answer(kWordingHead +
                 "[coil]\nhand = \"{x}\"\n[figure]\nscale = \"{scale}\"\n[list]\nlast = \"{rest}, {last}\"\n") ==
          "own.toml:4:8: error: coil.hand: the blanks are not those of the English phrase [wording-blanks]\n"
          "    hand = \"{x}\"\n"
          "           ^\n"
          "    hint: wanted: none, in any order; English: \"hand of coiling\"\n");
}

TEST_CASE("An empty phrase, one with an open brace and one of two lines are refused") {
    const auto with_hand = [](const std::string& hand) {
        return answer(kWordingHead + "[coil]\nhand = " + hand +
                      "\n[figure]\nscale = \"{scale}\"\n[list]\nlast = \"{rest}, {last}\"\n");
    };
    CHECK(with_hand("\"  \"") ==
          "own.toml:4:8: error: coil.hand: the phrase is empty [empty]\n"
          "    hand = \"  \"\n"
          "           ^\n");
    CHECK(with_hand("\"hand {\"") ==
          "own.toml:4:8: error: coil.hand: a brace is left open [wording-blanks]\n"
          "    hand = \"hand {\"\n"
          "           ^\n"
          "    hint: a blank is written {name}\n");
    CHECK(with_hand("\"two\\nlines\"") ==
          "own.toml:4:8: error: coil.hand: a phrase is one line, without tabs [wording-phrase]\n"
          "    hand = \"two\\nlines\"\n"
          "           ^\n");
    CHECK(with_hand("7") ==
          "own.toml:4:8: error: coil.hand: text in quotes is wanted, this is a whole number [wrong-kind]\n"
          "    hand = 7\n"
          "           ^\n");
}

TEST_CASE("A decimal mark that is neither point nor comma is refused") {
    const std::string said = answer(kWordingHead + "[number]\ndecimal_mark = \";;\"\n");
    CHECK(said.find(
              "own.toml:4:16: error: number.decimal_mark: the decimal mark is a point or a comma [wording-phrase]\n") !=
          std::string::npos);
    CHECK(said.find("    hint: write \".\" or \",\"\n") != std::string::npos);
    CHECK(answer(kWordingHead + "[number]\ndecimal_mark = \",\"\n").find("is a point or a comma") == std::string::npos);
}

TEST_CASE("What is no wording file, and a language that is no code, are refused at once") {
    CHECK(answer("format = \"seatload spec 1\"\nlanguage = \"de\"\n") ==
          "own.toml:1:10: error: format: this is a file of the kind \"seatload spec 1\" [wrong-kind-of-file]\n"
          "    format = \"seatload spec 1\"\n"
          "             ^\n"
          "    hint: wanted here is \"seatload wording 1\"; this file is for `seatload check` and `seatload sheet`\n");
    CHECK(answer("format = \"seatload wording 1\"\nlanguage = \"German\"\n") ==
          "own.toml:2:12: error: language: a language is two small letters (ISO 639-1) [not-a-language]\n"
          "    language = \"German\"\n"
          "               ^\n"
          "    hint: for example \"en\", \"de\", \"it\"\n");
    CHECK_THAT(answer("language = \"de\"\n"), ContainsSubstring("format"));
    CHECK_THAT(answer("format = \"seatload wording 1\"\n"), ContainsSubstring("language"));
    CHECK_THAT(answer(kWordingHead + "[coil]\nhand = \"\xC3(\"\n"), ContainsSubstring("UTF-8"));
}
