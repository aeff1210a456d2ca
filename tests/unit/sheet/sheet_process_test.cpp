// SPDX-License-Identifier: MIT
// How the sheet wants the spring treated and pressed.
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("plated hard wire is to be baked, plated stainless is not", "[sheet]") {
    record::Spec hard = specimen({"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0});
    hard.finish = "zinc plated";
    CHECK_THAT(sheet_words(hard), ContainsSubstring("Bake at once after plating"));
    record::Spec stainless = specimen(latch());
    stainless.finish = "zinc plated";
    CHECK(sheet_words(stainless).find("hydrogen") == std::string::npos);
}

TEST_CASE("a spring that may yield when pressed solid is never pressed below L2", "[sheet]") {
    const Shape fat{"EN10270-1-SH", 8.0, 45.0, 4.5, 80.0, spring::Ends::closed_ground, 72.0, 60.0};
    const std::string words = joined(sheet_words(specimen(fat)));
    CHECK_THAT(words, ContainsSubstring("Press 3 times to length L2."));
    CHECK_THAT(words, ContainsSubstring("Never press it shorter than L2"));
    CHECK(words.find("τ at Lc within its limit") == std::string::npos);
    CHECK(joined(sheet_words(specimen(latch()))).find("Never press") == std::string::npos);
}

TEST_CASE("wire that is aged must be aged, other wire is relieved as the maker does it", "[sheet]") {
    CHECK_THAT(sheet_words(specimen(latch())), ContainsSubstring("■\nageing after coiling"));
    Shape shape{"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0};
    CHECK_THAT(sheet_words(specimen(shape)), ContainsSubstring("◊\nstress relief, guide\n("));
    shape.grade = "ASTM-A313-631-C";
    CHECK_THAT(sheet_words(specimen(shape)), ContainsSubstring("ageing\nnone: used as drawn"));
}

TEST_CASE("a sheet in inches gives the heat of treatment in Fahrenheit too", "[sheet]") {
    const auto words = [](const char* grade) {
        const record::Spec spec = specimen({grade, 1.0, 8.0, 10.5, 30.0, spring::Ends::closed, 24.0, 18.0});
        const sheet::Paper inch = paper("en", sheet::PaperSize::letter, false, sheet::Units::inch);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), inch});
        REQUIRE(page.has_value());
        return joined(words_of(*page));
    };
    // By 1.8 C + 32: 392, 572 and 899.6, which is rounded as the Celsius are whole.
    CHECK_THAT(words("EN10270-1-SH"), ContainsSubstring("(392 to 572 °F [200 to 300 °C], 30 min)"));
    CHECK_THAT(words("ASTM-A313-631-CH900"), ContainsSubstring("900 °F [482 °C], 60 min"));
}

TEST_CASE("a sheet under cycles gives the stress range and binds it", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK(sheet_words(spec).find("stress range") == std::string::npos);
    spec.duty.cycles = 2e6;
    const std::string words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("stress range τkh"));
    CHECK_THAT(words, ContainsSubstring("τk [MPa]"));
    CHECK_THAT(words, ContainsSubstring("τk2 and τkh no higher than given here"));
    CHECK_THAT(words, ContainsSubstring("shot peening (none)"));
}

}  // namespace
}  // namespace seatload::test
