// SPDX-License-Identifier: MIT
// The order of a spec's springs: one page, whatever the spring, the language and the paper; equal orders, equal bytes.
#include <algorithm>

#include <seatload/sheet/purchase.hpp>
#include <seatload/sheet/tamper_mark.hpp>
#include <support/check.hpp>
#include <support/tool.hpp>

#include "layout_check.hpp"
#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

const sheet::Purchase kFifty{50, "2027-014", "2027-02-02"};

std::vector<sheet::Drawing> drawn(const record::Spec& spec, const sheet::Paper& on, const sheet::Purchase& purchase) {
    const auto pages = sheet::purchase_order(spec, grade_of(spec), tolerances(), on, purchase, "the spec");
    INFO(render(pages.error()));
    REQUIRE(pages.has_value());
    return *pages;
}

/// Whether the heading of the caution stands on a page exactly when its words do.
bool is_cautioned_under_its_heading(const sheet::Drawing& page, std::string_view language) {
    const sheet::Wording words(io::builtin_wording(language));
    const std::string heading = words.say("caution.heading"), begin = words.say("caution.words").substr(0, 12);
    bool has_heading = false, has_words = false;
    for (const sheet::Item& item : page.items())
        if (const auto* text = std::get_if<sheet::Text>(&item)) {
            has_heading = has_heading || text->words == heading;
            has_words = has_words || text->words.starts_with(begin);
        }
    return has_heading == has_words;
}

TEST_CASE("an order names what is ordered, by which spec, and what is open it leaves open", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const std::string words = joined(words_of(drawn(spec, paper(), kFifty).front()));
    for (const std::string& part :
         {std::string("Order: Compression spring, ahead latch plunger"), std::string("OT-14-0312/A"),
          std::string("revision A"), std::string("2027-014"), std::string("2027-02-02"), std::string("price agreed"),
          std::string("to the maker"), std::string("wanted by"), std::string("M. Brook"),
          std::string("Springs of another revision than A"), sheet::tamper_mark("the spec"),
          std::string("5 pieces, all inside"), std::string("end tips apart"), std::string("180° ± 20°"),
          std::string("the same 5 pieces as delivered, protractor along the axis"), std::string("Caution"),
          std::string("Confirmed by the maker")})
        CHECK_THAT(words, ContainsSubstring(part));
    CHECK(words.find("softest") == std::string::npos);
    const std::string open = joined(words_of(drawn(spec, paper(), {}).front()));
    CHECK(open.find("2027-") == std::string::npos);
}

TEST_CASE("an order names the offer it takes up, where one is known", "[sheet]") {
    sheet::Purchase purchase = kFifty;
    purchase.quotation = "C/26-881";
    purchase.alternative = "QZ";
    for (const char* language : {"en", "de", "it"}) {
        CAPTURE(language);
        const auto page =
            drawn(specimen(latch()), paper(language, sheet::PaperSize::a4, false, sheet::Units::metric), purchase);
        CHECK(page.size() == 1);
        CHECK(layout_faults(page.front()) == std::vector<std::string>{});
        CHECK_THAT(joined(words_of(page.front())), ContainsSubstring("C/26-881"));
        CHECK_THAT(joined(words_of(page.front())), ContainsSubstring("QZ"));
    }
}

TEST_CASE("what one of several leaves to be agreed is as ordered once it is chosen", "[sheet]") {
    record::Spec spec = specimen(latch());
    for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel}) load->plus = load->minus = 0.05 * newton;
    const auto words = [&] {
        return joined(words_of(drawn(spec, paper(), kFifty).front())) + joined(sheet_words(spec));
    };
    CHECK_THAT(words(), ContainsSubstring("to be agreed with the maker"));
    CHECK_THAT(words(), ContainsSubstring("(our estimate; to be agreed)"));
    spec.alternative.clear();
    CHECK(words().find("to be agreed") == std::string::npos);
    CHECK_THAT(words(), ContainsSubstring("as ordered with the maker"));
    CHECK_THAT(words(), ContainsSubstring("(our estimate; as ordered)"));
}

TEST_CASE("the order of a latch spring stands on one page in every language", "[sheet]") {
    for (const char* language : {"en", "de", "it"})
        for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter})
            for (const auto units : {sheet::Units::metric, sheet::Units::inch}) {
                CAPTURE(language, size == sheet::PaperSize::letter, units == sheet::Units::inch);
                CHECK(drawn(specimen(latch()), paper(language, size, false, units), kFifty).size() == 1);
            }
}

TEST_CASE("an order of what is not approved says so in every language, on its first page", "[sheet]") {
    for (const char* language : {"en", "de", "it"}) {
        CAPTURE(language);
        const sheet::Wording words(io::builtin_wording(language));
        const auto order_in = [&](record::State state) {
            sheet::Purchase purchase = kFifty;
            purchase.state = state;
            const auto pages =
                drawn(specimen(latch()), paper(language, sheet::PaperSize::a4, false, sheet::Units::metric), purchase);
            CHECK(pages.size() <= 2);
            for (const sheet::Drawing& page : pages) CHECK(layout_faults(page) == std::vector<std::string>{});
            return joined(words_of(pages.front()));
        };
        const std::string trial = joined(words.say("purchase.on_trial")),
                          draft = joined(words.say("purchase.is_draft"));
        CHECK_THAT(order_in(record::State::trial), ContainsSubstring(trial));
        CHECK_THAT(order_in(record::State::draft), ContainsSubstring(draft));
        for (const std::string& said : {trial, draft})
            CHECK(order_in(record::State::approved).find(said) == std::string::npos);
    }
}

TEST_CASE("order and sheet ask for end tips as the spec has them, not as they would be ordered today", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("180° ± 20°"));
    spec.limits.tips_degrees = 17.0;
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("180° ± 17°"));
    CHECK_THAT(joined(words_of(drawn(spec, paper(), kFifty).front())), ContainsSubstring("180° ± 17°"));
}

TEST_CASE("a sheet that is ordered by asks for no quotation", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK_THAT(sheet_words(spec), ContainsSubstring("Lots to quote"));
    spec.alternative.clear();
    CHECK(sheet_words(spec).find("quot") == std::string::npos);
}

TEST_CASE("every order goes on a page in every language, seldom on two, and nothing on it meets", "[sheet][slow]") {
    for (const char* language : {"en", "de", "it"})
        for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter})
            for (const auto units : {sheet::Units::metric, sheet::Units::inch})
                for (const Specimen& s : specimens()) {
                    CAPTURE(language, s.name);
                    const auto pages = drawn(s.spec, paper(language, size, false, units), kFifty);
                    CHECK(pages.size() <= 2);
                    for (const sheet::Drawing& page : pages) {
                        CHECK(layout_faults(page) == std::vector<std::string>{});
                        CHECK(is_cautioned_under_its_heading(page, language));
                    }
                }
}

TEST_CASE("equal orders give equal bytes, and a clean PDF", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const auto pdf = [&](const sheet::Purchase& purchase) {
        return sheet::purchase_order_pdf(spec, grade_of(spec), tolerances(), paper(), purchase, "the spec").value();
    };
    CHECK(pdf(kFifty) == pdf(kFifty));
    CHECK(pdf(kFifty) != pdf({}));
    if (!has_pdf_tools({"qpdf", "pdftotext", "pdfinfo", "pdffonts"})) return;
    const ScratchFolder folder;
    check_clean_pdf(folder, pdf(kFifty));
}

TEST_CASE("a number of an order that cannot be printed is complained of, one that is not UTF-8 refused", "[sheet]") {
    const record::Spec spec = specimen(latch());
    const auto page = sheet::purchase_order(spec, grade_of(spec), tolerances(), paper(), {50, "\xE4\xB8\xAD", ""}, "x");
    REQUIRE(page.has_value());
    CHECK(page.error().size() == 1);
    CHECK_FALSE(sheet::purchase_order(spec, grade_of(spec), tolerances(), paper(), {50, "\xFF", ""}, "x").has_value());
}

}  // namespace
}  // namespace seatload::test
