// SPDX-License-Identifier: MIT
#include <seatload/sheet/enquiry.hpp>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"
#include "support/check.hpp"

using namespace seatload;
using namespace seatload::test;

namespace {

bool has_line(const std::string& lines, const std::string& line) {
    return ('\n' + lines).find('\n' + line + '\n') != std::string::npos;
}

}  // namespace

TEST_CASE("a cover says by when and where to a maker answers and where he delivers", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const std::vector<sheet::EnquiryAlternative> one{{spec, grade_of(spec)}};
    const sheet::EnquiryLetter letter{
        {"2026-12-11", "Slip 3, Harbour Road", "the office", "Goods door"}, "latch-reply.toml", "format"};
    const auto pages = sheet::enquiry(one, tolerances(), paper(), letter);
    REQUIRE(pages.has_value());
    const std::string first = words_of(pages->front());
    for (const char* line : {"2026-12-11", "Slip 3, Harbour Road", "the office", "Goods door"}) {
        INFO(line);
        CHECK(has_line(first, line));
    }
    std::string all;
    for (const sheet::Drawing& page : *pages) all += words_of(page);
    CHECK(has_line(all, "Your reply, by 2026-12-11"));
    CHECK_THAT(all, ContainsSubstring("latch-reply.toml"));
}

TEST_CASE("a day and an address that are not known are left open, a form that is not attached is not spoken of",
          "[sheet]") {
    const record::Spec spec = specimen(latch());
    const std::vector<sheet::EnquiryAlternative> one{{spec, grade_of(spec)}};
    const auto pages = sheet::enquiry(one, tolerances(), paper());
    REQUIRE(pages.has_value());
    const std::string first = words_of(pages->front());
    CHECK(has_line(first, "reply by"));
    CHECK(has_line(first, "deliver to"));
    CHECK_FALSE(has_line(first, "the same address"));
    CHECK_THAT(first, !ContainsSubstring("attached to this PDF"));
}

TEST_CASE("a line never begins inside a number, and a number keeps its unit", "[sheet]") {
    using Lines = std::vector<std::string>;
    const auto broken = [](const std::string& words, const std::string& widest) {
        return sheet::wrapped(words, sheet::text_width(widest, sheet::kLettering) + 0.1);
    };
    CHECK(broken("[5,76\u00a0+0,74/−0,72]", "+0,74/−0,72]") == Lines{"[5,76", "+0,74/−0,72]"});
    CHECK(broken("5,76\u00a0+0,74/−0,72", "−0,72m") == Lines{"5,76", "+0,74/", "−0,72"});
    CHECK(broken("0,3327 ± 0,0117", "0,3327 ±") == Lines{"0,3327", "± 0,0117"});
    CHECK(broken("pressed to 12 mm length", "pressed to 12") == Lines{"pressed to", "12 mm length"});
    CHECK(broken("300 °C, 30 min)", "300 °C, 30") == Lines{"300 °C,", "30 min)"});
    CHECK(broken("abcdefgh", "abcde") == Lines{"abcde", "fgh"});
}
