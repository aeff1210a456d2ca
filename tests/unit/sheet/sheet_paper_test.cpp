// SPDX-License-Identifier: MIT
// Sizes: ISO 216 for A4; Letter is 8.5 in by 11 in (ANSI/ASME Y14.1, from memory).
#include <algorithm>

#include <support/check.hpp>

#include <seatload/core/text.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/page.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/sheet/tamper_mark.hpp>
#include <seatload/sheet/title_block.hpp>

#include "layout_check.hpp"
#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using enum sheet::PaperSize;
using enum sheet::Units;

sheet::Drawing page_of(const record::Spec& spec, const sheet::Paper& form, const std::string& spec_text = "") {
    auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), form, 1, 1, spec_text});
    REQUIRE(page.has_value());
    return std::move(page).value();
}

TEST_CASE("the title block leaves no gap to the frame of an upright page", "[sheet]") {
    // ISO 7200: 180 mm, which A4 leaves between its margins; Letter is 8.5 in (215.9 mm) wide, and leaves 5.9 mm more.
    CHECK_THAT(sheet::title_block_width(sheet::empty_page(sheet::PaperSize::a4, true)), WithinAbs(180.0, 1e-9));
    CHECK_THAT(sheet::title_block_width(sheet::empty_page(sheet::PaperSize::letter, true)), WithinAbs(185.9, 1e-9));
    for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter})
        CHECK_THAT(sheet::title_block_width(sheet::empty_page(size, false)), WithinAbs(180.0, 1e-9));
}

TEST_CASE("a sheet has the size of its paper, lying or upright", "[sheet]") {
    const auto check_size = [](sheet::PaperSize size, bool upright, double width, double height) {
        const sheet::Drawing page = page_of(specimen(latch()), paper("en", size, upright, metric));
        CHECK_THAT(page.width(), WithinAbs(width, 1e-9));
        CHECK_THAT(page.height(), WithinAbs(height, 1e-9));
    };
    check_size(a4, false, 297.0, 210.0);
    check_size(a4, true, 210.0, 297.0);
    check_size(letter, false, 11.0 * 25.4, 8.5 * 25.4);
    check_size(letter, true, 8.5 * 25.4, 11.0 * 25.4);
}

TEST_CASE("covers of an enquiry stand upright on its paper, whichever way its sheets lie", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const std::vector<sheet::EnquiryAlternative> one{{spec, grade_of(spec)}};
    const auto pages = sheet::enquiry(one, tolerances(), paper("en", letter, false, metric));
    REQUIRE(pages.has_value());
    CHECK_THAT(pages->front().width(), WithinAbs(8.5 * 25.4, 1e-9));
    CHECK_THAT(pages->front().height(), WithinAbs(11.0 * 25.4, 1e-9));
    CHECK_THAT(pages->back().width(), WithinAbs(11.0 * 25.4, 1e-9));
}

TEST_CASE("a sheet lists its revisions, and says how many earlier ones it leaves out", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.identity.revision = "H";
    for (const char index : std::string("ABCDEFGH"))
        spec.revisions.push_back({{index}, "2024-05-02", std::string("changed by ") + index, "J. Hale"});
    for (const bool upright : {false, true}) {
        const std::string words = words_of(page_of(spec, paper("en", a4, upright, metric)));
        for (const char* shown : {"changed by F", "changed by G", "changed by H", "earlier left out"})
            CHECK_THAT(words, ContainsSubstring(shown));
        CHECK(words.find("changed by A") == std::string::npos);
    }
}

TEST_CASE("a part never revised shows its own revision and date, and no change", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.identity.revision = "C";
    const std::string words = words_of(page_of(spec, paper()));
    CHECK_THAT(words, ContainsSubstring("C\n2024-05-02\n"));
    CHECK(words.find("left out") == std::string::npos);
    CHECK(words.find("first issue") == std::string::npos);
}

TEST_CASE("a sheet prints the tamper mark of the spec it was drawn from, and only with one", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const std::string text = "format = \"any\"\n";
    for (const bool upright : {false, true}) {
        std::string words = words_of(page_of(spec, paper("en", a4, upright, metric), text));
        std::replace(words.begin(), words.end(), '\n', ' ');
        CHECK_THAT(words, ContainsSubstring(sheet::tamper_mark(text)));
        CHECK(words_of(page_of(spec, paper("en", a4, upright, metric))).find("SHA-256") == std::string::npos);
    }
}

TEST_CASE("no cover of an enquiry is left with little on it, from 1 to 26 alternatives", "[sheet][slow]") {
    record::Spec spec = specimen(latch());
    for (const auto size : {a4, letter}) {
        std::vector<sheet::EnquiryAlternative> alternatives;
        for (std::size_t count = 1; count <= 26; ++count) {
            alternatives.push_back({spec, grade_of(spec)});
            if (count > 7 && count % 6 != 2) continue;
            const auto pages = sheet::enquiry(alternatives, tolerances(), paper("en", size, false, metric));
            REQUIRE(pages.has_value());
            for (std::size_t p = 0; p + count < pages->size(); ++p) {
                INFO(count << " alternatives, page " << p + 1 << " of " << pages->size() - count);
                CHECK(written_share((*pages)[p]) > 0.3);
            }
        }
    }
}

}  // namespace
}  // namespace seatload::test
