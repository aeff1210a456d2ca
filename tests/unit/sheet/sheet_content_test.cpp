// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/sheet/figures.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("the sheet carries the fields a compression spring is ordered by", "[sheet]") {
    // Field groups of EN 15800 annex B, ISO 2162-2 and MIL-STD-29A, as far as this form goes.
    const std::string words = sheet_words(specimen(latch()));
    for (const char* field : {"OT-14-0312",
                              "Compression spring, ahead latch plunger",
                              "Alternative A",
                              "ASTM A313/A313M",
                              "diameter d, uncoiled",
                              "Rm aged expected; G",
                              "wire as bought",
                              "nominal d allowed",
                              "EN\u00a010204 type\u00a03.1: d, Rm",
                              "certificate",
                              "tolerance class of d",
                              "surface; presetting",
                              "deburred",
                              "end tips apart",
                              "stroke sh",
                              "permitted relaxation",
                              "static, < 10",
                              "outside De",
                              "works in bore of",
                              "mean D; Di",
                              "free length L0",
                              "coils, total nt; n",
                              "pitch; helix angle",
                              "wire a piece; mass",
                              "hand of coiling",
                              "right",
                              "closed and ground",
                              "squareness e1",
                              "parallelism e2",
                              "F1 at L1 = 15 mm",
                              "F2 at L2 = 9.5 mm",
                              "rate R",
                              "at L1",
                              "at L2",
                              "at Ln",
                              "at Lc",
                              "F least",
                              "F most",
                              "τ [MPa]",
                              "limit of τ at Lc",
                              "EN 13906-1",
                              "ageing after coiling",
                              "finish",
                              "tangle",
                              "Label",
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
    for (const char* field :
         {"legal owner", "identification number", "revision", "date of issue", "sheet / number of sheets", "creator",
          "approval person", "document type", "document status", "for quotation", "language", "OT-14-0312/A",
          "Harbour Engine Works", "J. Hale", "M. Brook", "2024-05-02", "2 / 7", "2:1"})
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
    CHECK_THAT(words, ContainsSubstring("(0.800 ± 0.013 mm)"));
    CHECK_THAT(words, ContainsSubstring("\n8.2 ± 0.3 mm\n"));
    CHECK_THAT(words, ContainsSubstring("(L0 = 19.3)"));
    spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    words = sheet_words(spec);
    CHECK_THAT(words, ContainsSubstring("(8.2 ± 0.3 mm)"));
    std::replace(words.begin(), words.end(), '\n', ' ');
    CHECK_THAT(words, ContainsSubstring("De at or below 8.5 mm"));
    CHECK_THAT(words, ContainsSubstring(" 0.800 (± 0.013) mm "));
}

TEST_CASE("a strength from memory is to be confirmed, one that was seen is not", "[sheet]") {
    record::Spec spec = specimen({"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0});
    wire::Grade grade = grade_of(spec);
    auto& table = std::get<wire::StrengthTable>(grade.strength);
    for (wire::StrengthRow& row : table.rows) row.evidence = wire::Evidence::standard;
    CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("Rm at least; G"));
    CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("certificate\nEN\u00a010204 type\u00a03.1: d, Rm"));
    for (const wire::Evidence weak : {wire::Evidence::memory, wire::Evidence::estimate, wire::Evidence::fit}) {
        for (wire::StrengthRow& row : table.rows) row.evidence = weak;
        CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("Rm expected; G"));
        CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("ask if Rm is lower"));
    }
}

/// A load with the plus-minus tolerance of an EN 15800 grade, and a hair more.
void order_at_grade(const record::Spec& spec, record::LoadAtLength& load, int grade) {
    const spring::Spring& s = spec.spring;
    const double n = spring::active_coils(s.ends, s.total_coils);
    load.plus = load.minus = 1.02 * tolerance::load_tolerance(s.wire_diameter, s.mean_diameter, n, load.nominal, grade);
    load.grade = 3;  // what the spec says is not believed
}

TEST_CASE("a load corresponds to the grade that its tolerance holds, whatever the spec says", "[sheet]") {
    record::Spec spec = specimen(latch());
    order_at_grade(spec, spec.seated, 2);
    order_at_grade(spec, spec.full_travel, 1);
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("corresponding to (EN 15800: F1 grade 2, F2 grade 1)"));
    order_at_grade(spec, spec.full_travel, 2);
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("corresponding to (EN 15800 grade 2)"));
    spec.seated.plus = spec.seated.minus = 0.05 * newton;
    CHECK_THAT(joined(sheet_words(spec)),
               ContainsSubstring(
                   "corresponding to (EN 15800: F1 finer than grade 1, F2 grade 2; to be agreed with the maker)"));
    spec.full_travel.plus = spec.full_travel.minus = 0.05 * newton;
    CHECK_THAT(joined(sheet_words(spec)),
               ContainsSubstring("(finer than EN 15800 grade 1; to be agreed with the maker)"));
}

TEST_CASE("a coil tolerance from memory corresponds to a grade instead of having it", "[sheet]") {
    // The rows over D = 63 mm of grades 1 and 3 are from memory; those below were seen.
    record::Spec spec = specimen({"EN10270-1-SH", 8.0, 70.0, 6.5, 160.0, spring::Ends::closed_ground, 140.0, 110.0});
    spec.diameter_grade = 1;
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("corresponds to (EN 15800 grade 1)"));
    CHECK_THAT(joined(sheet_words(specimen(latch()))), ContainsSubstring("its tolerance (EN 15800 grade 2)"));
}

TEST_CASE("a tolerance has as many decimals as its nominal value", "[sheet]") {
    // ISO 129-1: both limits of a dimension are written to the same number of decimals.
    CHECK(sheet::with_tolerance(8.45 * mm, 0.3 * mm) == "8.45 ± 0.30");
    CHECK(sheet::with_tolerance(16.8 * mm, 0.35 * mm) == "16.80 ± 0.35");
    CHECK(sheet::with_tolerance(53.0 * mm, 0.6 * mm) == "53.0 ± 0.6");
    CHECK(sheet::with_tolerance(0.7 * mm, 0.013 * mm, 2) == "0.700 ± 0.013");
    CHECK(sheet::with_tolerance(2.0 * mm, 0.02 * mm, 2) == "2.00 ± 0.02");
}

TEST_CASE("squareness beyond the standard's range is to be agreed", "[sheet]") {
    // EN 15800 gives e1 and e2 for w <= 12 and L0/D <= 5 (from memory).
    const auto words = [](double D, double L0) {
        return joined(
            sheet_words(specimen({"EN10270-1-SH", 1.0, D, 12.5, L0, spring::Ends::closed_ground, 0.9 * L0, 0.8 * L0})));
    };
    CHECK(words(8.0, 39.0).find("of so slim") == std::string::npos);
    CHECK_THAT(words(8.0, 42.0), ContainsSubstring("e1, e2 of so slim a spring: to be agreed."));
    CHECK_THAT(words(13.0, 40.0), ContainsSubstring("e1, e2 of so wide a spring: to be agreed."));
}

TEST_CASE("no two alternatives bear the same number, and one alone bears the plain one", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK_THAT(sheet_words(spec), ContainsSubstring("\nOT-14-0312/A\n"));
    spec.alternative = "B";
    CHECK_THAT(sheet_words(spec), ContainsSubstring("\nOT-14-0312/B\n"));
    spec.alternative.clear();
    const std::string alone = sheet_words(spec);
    CHECK_THAT(alone, ContainsSubstring("\nOT-14-0312\n"));
    CHECK(alone.find("for quotation") == std::string::npos);
}

TEST_CASE("a long legal owner stands whole in the title block", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.identity.owner = "Мастерская «Верфь» и Søren Ångström Engine and Gearbox Rebuilders of Ottermere Harbour";
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring(spec.identity.owner));
}

TEST_CASE("the figure takes the width it needs for the next scale", "[sheet]") {
    // 69.5 and 14.6 mm at 2:1 with 25.5 mm for dimensions: 194 mm, more than the figure's usual 173 mm.
    const Shape relief{"EN10270-2-FDSiCr", 1.7, 12.9, 15.0, 69.5, spring::Ends::closed_ground, 42.0, 38.0};
    CHECK_THAT(sheet_words(specimen(relief)), ContainsSubstring("scale 2:1"));
}

}  // namespace
}  // namespace seatload::test
