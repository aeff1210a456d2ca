// SPDX-License-Identifier: MIT
#include <algorithm>

#include <support/check.hpp>

#include <seatload/core/text.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

/// All words on a page, in drawing order, script marks left out.
std::string words_of(const sheet::Drawing& page) {
    std::string out;
    for (const sheet::Item& item : page.items())
        if (const auto* text = std::get_if<sheet::Text>(&item)) out += sheet::plain(text->words) + "\n";
    return out;
}

std::string sheet_words(const record::Spec& spec, const wire::Grade& grade) {
    const auto page = sheet::spring_sheet({spec, grade, tolerances(), 2, 7});
    REQUIRE(page.has_value());
    return words_of(*page);
}
std::string sheet_words(const record::Spec& spec) { return sheet_words(spec, grade_of(spec)); }

std::string enquiry_words(const std::vector<record::Spec>& specs) {
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (const record::Spec& spec : specs) alternatives.push_back({spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances());
    REQUIRE(pages.has_value());
    std::string out;
    for (const sheet::Drawing& page : *pages) out += words_of(page);
    return out;
}

TEST_CASE("the sheet carries the fields a compression spring is ordered by", "[sheet]") {
    // Field groups of EN 15800 annex B, ISO 2162-2 and MIL-STD-29A, as far as this form goes.
    const std::string words = sheet_words(specimen(latch()));
    for (const char* field : {"OT-14-0312",
                              "Compression spring, ahead latch plunger",
                              "Alternative A",
                              "ASTM A313/A313M",
                              "diameter d, uncoiled",
                              "Rm, lowest; G",
                              "outside De",
                              "works in bore",
                              "mean D; Di",
                              "free length L0",
                              "coils, total nt; n",
                              "Lc at most; Ln",
                              "hand of coiling",
                              "right",
                              "closed and ground",
                              "squareness e1",
                              "parallelism e2",
                              "F1 at L1 = 15 mm",
                              "F2 at L2 = 9.5 mm",
                              "rate R",
                              "Fn; Fc",
                              "τ1; τ2",
                              "τn; τc",
                              "stress relief",
                              "presetting",
                              "shot peening",
                              "finish",
                              "duty",
                              "120 °C, engine oil",
                              "seats",
                              "Inspection",
                              "The maker may adjust",
                              "20, 50, 100",
                              "required and inspected",
                              "reference, not inspected",
                              "Caution",
                              "competent person",
                              "licensed practice"})
        CHECK_THAT(words, ContainsSubstring(field));
}

TEST_CASE("the title block has the fields of ISO 7200", "[sheet]") {
    const std::string words = sheet_words(specimen(latch()));
    for (const char* field : {"legal owner", "identification number", "revision", "date of issue",
                              "sheet / number of sheets", "creator", "approval person", "document type", "language",
                              "Harbour Engine Works", "J. Hale", "M. Brook", "2024-05-02", "2 / 7", "5:1"})
        CHECK_THAT(words, ContainsSubstring(field));
}

TEST_CASE("no paper for the maker shows our reasons or the engine", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.why = "SECRETREASON";
    const std::string sheet = sheet_words(spec);
    const std::string enquiry = enquiry_words({spec, spec});
    for (const std::string& words : {sheet, enquiry}) {
        CHECK(words.find("SECRETREASON") == std::string::npos);
        CHECK(words.find("Ottermere M14") == std::string::npos);
        CHECK(words.find("margin") == std::string::npos);
    }
}

TEST_CASE("what the maker may adjust is bracketed and marked, what is required is not", "[sheet]") {
    record::Spec spec = specimen(latch());
    std::string words = sheet_words(spec);
    CHECK_THAT(words, ContainsSubstring("(19.3 mm)"));
    CHECK_THAT(words, ContainsSubstring("(0.80 ± 0.013 mm)"));
    CHECK_THAT(words, ContainsSubstring("\n8.2 ± 0.3 mm\n"));
    CHECK_THAT(words, ContainsSubstring("(L0 = 19.3)"));
    spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    words = sheet_words(spec);
    CHECK_THAT(words, ContainsSubstring("(8.2 ± 0.3 mm)"));
    std::replace(words.begin(), words.end(), '\n', ' ');
    CHECK_THAT(words, ContainsSubstring("De never above 8.5 mm."));
    CHECK_THAT(words, ContainsSubstring(" 0.80 (± 0.013) mm "));
}

TEST_CASE("a sheet that leaves the maker nothing to adjust is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    using Adjustables = std::vector<record::Adjustable>;
    for (const Adjustables& left : {Adjustables{}, Adjustables{record::Adjustable::free_length},
                                    Adjustables{record::Adjustable::coils_and_wire}}) {
        spec.adjustable = left;
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances()});
        REQUIRE_FALSE(page.has_value());
        CHECK_THAT(page.error().front().message, ContainsSubstring("over-defined"));
        CHECK_FALSE(page.error().front().hint.empty());
    }
}

TEST_CASE("a strength from memory is to be confirmed, one that was seen is not", "[sheet]") {
    record::Spec spec = specimen({"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0});
    wire::Grade grade = grade_of(spec);
    auto& table = std::get<wire::StrengthTable>(grade.strength);
    for (wire::StrengthRow& row : table.rows) row.evidence = wire::Evidence::standard;
    CHECK(sheet_words(spec, grade).find("mill certificate") == std::string::npos);
    for (const wire::Evidence weak : {wire::Evidence::memory, wire::Evidence::estimate, wire::Evidence::fit}) {
        for (wire::StrengthRow& row : table.rows) row.evidence = weak;
        CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("confirm by mill certificate"));
    }
}

TEST_CASE("a load tolerance never claims to be the standard's, and one tighter than grade 1 says so", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.seated.grade = 2;
    spec.full_travel.grade = 1;
    CHECK_THAT(sheet_words(spec), ContainsSubstring("corresponding to\nF1 grade 2; F2 grade 1"));
    spec.full_travel.grade = 2;
    CHECK_THAT(sheet_words(spec), ContainsSubstring("corresponding to\nEN 15800 grade 2"));
    spec.seated.plus = spec.seated.minus = 0.05 * newton;
    spec.seated.grade.reset();
    CHECK_THAT(sheet_words(spec), ContainsSubstring("corresponding to\nF1 finer than grade 1"));
    CHECK_THAT(sheet_words(spec), ContainsSubstring("to be agreed"));
}

TEST_CASE("a coil tolerance from memory corresponds to a grade instead of having it", "[sheet]") {
    // The rows over D = 63 mm of grades 1 and 3 are from memory; those below were seen.
    record::Spec spec = specimen({"EN10270-1-SH", 8.0, 70.0, 6.5, 160.0, spring::Ends::closed_ground, 140.0, 110.0});
    spec.diameter_grade = 1;
    CHECK_THAT(sheet_words(spec), ContainsSubstring("corresponds to\nEN 15800 grade 1"));
    CHECK_THAT(sheet_words(specimen(latch())), ContainsSubstring("its tolerance\nEN 15800 grade 2"));
}

TEST_CASE("a wire outside its grade's range is an error", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.spring.wire_diameter = 30.0 * mm;
    spec.spring.mean_diameter = 200.0 * mm;
    CHECK_FALSE(sheet::spring_sheet({spec, grade_of(spec), tolerances()}).has_value());
}

TEST_CASE("a spring that cannot be drawn is an error with the reason", "[sheet]") {
    const auto complaint = [](auto spoil) {
        record::Spec spec = specimen(latch());
        spoil(spec);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances()});
        REQUIRE_FALSE(page.has_value());
        return page.error().front().message;
    };
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.total_coils = 2.0; }), ContainsSubstring("no active coils"));
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.free_length = 7.6 * mm; }), ContainsSubstring("not longer"));
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.mean_diameter = 0.8 * mm; }),
               ContainsSubstring("coil diameter"));
    CHECK_THAT(complaint([](record::Spec& s) { s.seated.length = 20.0 * mm; }), ContainsSubstring("lengths"));
    CHECK_THAT(complaint([](record::Spec& s) { s.full_travel.length = 15.5 * mm; }), ContainsSubstring("lengths"));
}

TEST_CASE("plated hard wire is to be baked, plated stainless is not", "[sheet]") {
    record::Spec hard = specimen({"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0});
    hard.finish = "zinc plated";
    CHECK_THAT(sheet_words(hard), ContainsSubstring("Bake at once after plating"));
    record::Spec stainless = specimen(latch());
    stainless.finish = "zinc plated";
    CHECK(sheet_words(stainless).find("hydrogen") == std::string::npos);
}

TEST_CASE("the enquiry compares what differs, names what is alike, and asks for each lot", "[sheet]") {
    record::Spec a = specimen(latch());
    record::Spec b = specimen({"EN10270-1-SH", 0.85, 7.5, 9.5, 19.0, spring::Ends::closed_ground, 15.0, 9.5});
    b.alternative = "B";
    const std::string words = enquiry_words({a, b});
    for (const char* part :
         {"Enquiry: Compression spring", "alternatives A to B", "What differs", "wire diameter d", "Alike in all",
          "hand of coiling right", "For 20 pieces", "For 50 pieces", "For 100 pieces", "price a piece", "tooling",
          "lead time", "wire you hold", "changes you ask for", "change without asking", "accepted", "Caution",
          "Alternative A", "Alternative B"})
        CHECK_THAT(words, ContainsSubstring(part));
    const std::string single = enquiry_words({a});
    CHECK(single.find("Alike in all") == std::string::npos);
    CHECK_THAT(single, ContainsSubstring("hand of coiling"));
}

}  // namespace
}  // namespace seatload::test
