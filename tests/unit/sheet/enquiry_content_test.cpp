// SPDX-License-Identifier: MIT
// What the enquiry says.
#include <algorithm>

#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/enquiry_tables.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("the enquiry compares what differs, names what is alike, and asks for each lot", "[sheet]") {
    record::Spec a = specimen(latch());
    record::Spec b = specimen({"EN10270-1-SH", 0.85, 7.5, 9.5, 19.0, spring::Ends::closed_ground, 15.0, 9.5});
    b.alternative = "B";
    std::string words = enquiry_words({a, b});
    std::replace(words.begin(), words.end(), '\n', ' ');  // wherever the lines end
    for (const char* part : {"Enquiry: Compression spring",
                             "alternatives A to B",
                             "What differs",
                             "wire diameter d",
                             "Alike in all",
                             "hand of coiling right",
                             "20 pieces:",
                             "50 pieces:",
                             "100 pieces:",
                             "price each",
                             "tooling, once",
                             "lead time",
                             "currency",
                             "valid until",
                             "wire you hold",
                             "its Rm",
                             "changes you ask for",
                             "signature",
                             "change without asking",
                             "accepted",
                             "when it arrives",
                             "certificate, a lot",
                             "packing, a lot",
                             "carriage, a lot",
                             "least order value",
                             "set-up",
                             "your quotation no.",
                             "De, L0 and ends: 5 pieces, all inside.",
                             "end tips apart",
                             "protractor",
                             "tangle",
                             "Caution",
                             "Alternative A",
                             "Alternative B"})
        CHECK_THAT(words, ContainsSubstring(part));
    const std::string single = enquiry_words({a});
    CHECK(single.find("Alike in all") == std::string::npos);
    CHECK_THAT(single, ContainsSubstring("hand of coiling"));
}

TEST_CASE("alternatives of which the maker may adjust the same are told in one line", "[sheet]") {
    std::vector<record::Spec> specs{specimen(latch()), specimen(latch()), specimen(latch())};
    for (std::size_t i = 0; i < specs.size(); ++i) specs[i].alternative = std::string(1, static_cast<char>('A' + i));
    specs[1].adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    const std::string words = enquiry_words(specs);
    CHECK_THAT(words, ContainsSubstring("A, C: free length"));
    CHECK_THAT(words, ContainsSubstring("B: free length"));
    CHECK(words.find("C: free length") == words.rfind("C: free length"));
}

TEST_CASE("the cover asks for the certificate that its sheets ask for", "[sheet]") {
    record::Spec a = specimen(latch());
    record::Spec b = a;
    b.alternative = "B";
    const auto has = [&](const char* words) { return joined(enquiry_words({a, b})).find(words) != std::string::npos; };
    // EN 10204:2004, clauses 3.2 and 4.1: the test report is of type 2.2, the inspection certificate of type 3.1.
    CHECK(has("certificate of the wire, EN 10204 type 3.1 (grade, d, Rm)"));
    a.certificate = demand::Certificate::test_report;
    CHECK(has("EN 10204 type 2.2/3.1 (grade, d, Rm)"));
    b.certificate = demand::Certificate::test_report;
    CHECK(has("EN 10204 type 2.2 (grade, d, Rm)"));
}

TEST_CASE("a coil diameter that the maker may alter is inspected against its bound", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("De, L0 and ends: 5 pieces"));
    spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    for (const std::string& words : {joined(sheet_words(spec)), joined(enquiry_words({spec}))}) {
        CHECK_THAT(words, ContainsSubstring("Ends, and the bounds of De and L0: 5 pieces"));
        CHECK_THAT(words, !ContainsSubstring("De, L0 and ends: 5 pieces"));
    }
}

TEST_CASE("no word of the comparison is cut in two where a narrower column of names spares it", "[sheet]") {
    // Five alternatives side by side: their wires stand in the narrowest columns.
    std::vector<record::Spec> specs(5, specimen(latch()));
    specs.back().wire_grade = "ASTM-A313-302";
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (std::size_t i = 0; i < specs.size(); ++i) {
        specs[i].alternative = std::string(1, static_cast<char>('A' + i));
        alternatives.push_back({specs[i], grade_of(specs[i])});
    }
    for (const char* language : {"en", "de", "it"}) {
        INFO(language);
        const sheet::Paper form = paper(language, sheet::PaperSize::a4, false, sheet::Units::metric);
        const auto pages = sheet::enquiry(alternatives, tolerances(), form);
        REQUIRE(pages.has_value());
        CHECK_THAT(words_of(pages->front()), ContainsSubstring("A313/A313M,"));
    }
}

TEST_CASE("no head of the reply form is cut in two, and the cover keeps to two pages", "[sheet]") {
    std::vector<record::Spec> specs(5, specimen(latch()));
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (const record::Spec& spec : specs) alternatives.push_back({spec, grade_of(spec)});
    for (const char* language : {"en", "de", "it"}) {
        INFO(language);
        const sheet::Paper form = paper(language, sheet::PaperSize::a4, false, sheet::Units::metric);
        const auto known = sheet::facts(specs[0], grade_of(specs[0]), tolerances(), form);
        REQUIRE(known.has_value());
        const std::vector<sheet::Facts> all(5, *known);
        const double width = sheet::PageFlow(form.size).width();
        for (const sheet::RuledTable& table : sheet::price_tables(all, width, 8.0)) CHECK(has_room_for_words(table));
        CHECK(has_room_for_words(sheet::charges_table(*known, width, 8.0)));
        CHECK(has_room_for_words(sheet::change_table(all, width, 8.0)));
        const auto pages = sheet::enquiry(alternatives, tolerances(), form);
        REQUIRE(pages.has_value());
        CHECK(pages->size() == 7);
    }
}

TEST_CASE("a reply form stays with its heading", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.quantities = {10, 20, 50, 100, 200, 500};
    std::vector<sheet::EnquiryAlternative> alternatives(7, {spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper());
    REQUIRE(pages.has_value());
    int forms = 0;
    for (const sheet::Drawing& page : *pages) {
        std::string words = words_of(page);
        std::replace(words.begin(), words.end(), '\n', ' ');  // heads are broken as their columns allow
        for (const int lot : spec.quantities)
            if (words.find(' ' + std::to_string(lot) + " pieces: price each set-up lead time") != std::string::npos)
                ++forms;
    }
    CHECK(forms == static_cast<int>(spec.quantities.size()));
}

}  // namespace
}  // namespace seatload::test
