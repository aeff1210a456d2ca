// SPDX-License-Identifier: MIT
#include <algorithm>

#include <support/check.hpp>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/text.hpp>
#include <seatload/demand/limits.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/figures.hpp>
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
    const auto page = sheet::spring_sheet({spec, grade, tolerances(), paper(), 2, 7});
    REQUIRE(page.has_value());
    return words_of(*page);
}
std::string sheet_words(const record::Spec& spec) { return sheet_words(spec, grade_of(spec)); }

/// The words in one line, however they were broken; unbreakable blanks as plain ones.
std::string joined(std::string words) {
    std::replace(words.begin(), words.end(), '\n', ' ');
    for (auto at = words.find("\u00a0"); at != std::string::npos; at = words.find("\u00a0"))
        words.replace(at, std::string("\u00a0").size(), " ");
    return words;
}

std::string enquiry_words(const std::vector<record::Spec>& specs) {
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (const record::Spec& spec : specs) alternatives.push_back({spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper());
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
                              "Rm expected; G",
                              "mill certificate",
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

TEST_CASE("a sheet that leaves the maker nothing to adjust is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    using Adjustables = std::vector<record::Adjustable>;
    for (const Adjustables& left : {Adjustables{}, Adjustables{record::Adjustable::free_length},
                                    Adjustables{record::Adjustable::coils_and_wire}}) {
        spec.adjustable = left;
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
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
    CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("Rm at least; G"));
    CHECK_THAT(sheet_words(spec, grade), ContainsSubstring("mill certificate\nwith the lot: d, Rm"));
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
               ContainsSubstring("corresponding to (EN 15800: F1 finer than grade 1, F2 grade 2; to be agreed)"));
    spec.full_travel.plus = spec.full_travel.minus = 0.05 * newton;
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("(finer than EN 15800 grade 1; to be agreed)"));
}

TEST_CASE("a coil tolerance from memory corresponds to a grade instead of having it", "[sheet]") {
    // The rows over D = 63 mm of grades 1 and 3 are from memory; those below were seen.
    record::Spec spec = specimen({"EN10270-1-SH", 8.0, 70.0, 6.5, 160.0, spring::Ends::closed_ground, 140.0, 110.0});
    spec.diameter_grade = 1;
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("corresponds to (EN 15800 grade 1)"));
    CHECK_THAT(joined(sheet_words(specimen(latch()))), ContainsSubstring("its tolerance (EN 15800 grade 2)"));
}

TEST_CASE("a spec whose spring does not give its loads is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.spring.free_length = spec.spring.free_length - 2.0 * mm;
    const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
    REQUIRE_FALSE(page.has_value());
    REQUIRE(page.error().size() == 2);
    CHECK_THAT(page.error()[0].message, ContainsSubstring("at 15 mm, its seated load asks for"));
    CHECK_THAT(page.error()[1].message, ContainsSubstring("at 9.5 mm, its load at full travel asks for"));
}

TEST_CASE("a wire outside its grade's range is an error", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.spring.wire_diameter = 30.0 * mm;
    spec.spring.mean_diameter = 200.0 * mm;
    CHECK_FALSE(sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()}).has_value());
}

TEST_CASE("a spring that cannot be drawn is an error with the reason", "[sheet]") {
    const auto complaint = [](auto spoil) {
        record::Spec spec = specimen(latch());
        spoil(spec);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
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
    for (const char* part : {"Enquiry: Compression spring",
                             "alternatives A to B",
                             "What differs",
                             "wire diameter d",
                             "Alike in all",
                             "hand of coiling right",
                             "For 20 pieces",
                             "For 50 pieces",
                             "For 100 pieces",
                             "price a piece",
                             "tooling",
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
                             "mill certificate",
                             "tangle",
                             "Caution",
                             "Alternative A",
                             "Alternative B"})
        CHECK_THAT(words, ContainsSubstring(part));
    const std::string single = enquiry_words({a});
    CHECK(single.find("Alike in all") == std::string::npos);
    CHECK_THAT(single, ContainsSubstring("hand of coiling"));
}

TEST_CASE("a tolerance has as many decimals as its nominal value", "[sheet]") {
    // ISO 129-1: both limits of a dimension are written to the same number of decimals.
    CHECK(sheet::with_tolerance(8.45 * mm, 0.3 * mm) == "8.45 ± 0.30");
    CHECK(sheet::with_tolerance(16.8 * mm, 0.35 * mm) == "16.80 ± 0.35");
    CHECK(sheet::with_tolerance(53.0 * mm, 0.6 * mm) == "53.0 ± 0.6");
    CHECK(sheet::with_tolerance(0.7 * mm, 0.013 * mm, 2) == "0.700 ± 0.013");
    CHECK(sheet::with_tolerance(2.0 * mm, 0.02 * mm, 2) == "2.00 ± 0.02");
}

TEST_CASE("Ln follows the gap rule, so that L2 does not lie below it", "[sheet]") {
    // Worked by hand: closed and ground, Lc = nt dmax = 14.5 (0.63 + 0.008) = 9.251, or nt d = 9.135 by the textbook
    // form (Shigley Table 10-1); gap 0.15 (18.2 - 10.4) = 1.17 (Shigley Eq. 10-20): Ln = 10.305. EN's Sa would be
    // 12.5 (0.0015 4.45^2/0.63 + 0.1 0.63) = 1.377 and Ln = 10.51, above L2.
    record::Spec spec = specimen({"ASTM-A228", 0.63, 4.45, 14.5, 18.2, spring::Ends::closed_ground, 12.0, 10.4});
    spec.limits = demand::school_defaults(spring::School::handbook);
    const std::string words = sheet_words(spec);
    CHECK_THAT(words, ContainsSubstring("(9.13)"));
    CHECK((words.find("(10.3)") != std::string::npos || words.find("(10.31)") != std::string::npos));
    CHECK_THAT(joined(words), ContainsSubstring("Keep Ln at or below L2"));
    CHECK_THAT(words, ContainsSubstring("handbook rules"));
}

TEST_CASE("a spring whose L2 lies below Ln says so and does not promise otherwise", "[sheet]") {
    record::Spec spec = specimen({"EN10270-1-SH", 1.0, 8.0, 10.0, 22.0, spring::Ends::closed_ground, 12.5, 10.4});
    const std::string words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("L2 lies below Ln"));
    CHECK(words.find("Ln at or below L2") == std::string::npos);
}

TEST_CASE("on a sliding seat the tips stand half a turn apart, and the coils keep it", "[sheet]") {
    // A spring with whole turns leans when an end slides (design); nt = 9.5 closed has n = 7.5, tips 180 deg apart, and
    // a slack of 0.1 turn is 36 deg.
    record::Spec spec = specimen(latch());
    std::string words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("end tips apart 180° ± 36°"));
    CHECK_THAT(words, ContainsSubstring("nt half a turn over a whole number, within 0.1"));
    spec.space.seats = demand::Seats::fixed;
    words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("hand; end tips apart right; (any angle)"));
    CHECK(words.find("half a turn") == std::string::npos);
}

TEST_CASE("the free length is bounded where the spring would buckle", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.limits.buckling_margin = 1.1;
    spec.seated.plus = spec.seated.minus = 1.0 * newton;
    const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
    REQUIRE(facts.has_value());
    REQUIRE(facts->longest_free_length.has_value());
    const auto buckles = [&](double longer_mm) {
        record::Spec other = spec;
        other.spring.free_length = *facts->longest_free_length + longer_mm * mm;
        demand::Requirement requirement = record::requirement_of(other);
        requirement.space.seated_height = spec.seated.length;
        requirement.space.full_travel_height = spec.full_travel.length;
        const auto evaluation = check::evaluate(other.spring, grade_of(spec), requirement, tolerances());
        REQUIRE(evaluation.has_value());
        for (const check::Verdict& verdict : evaluation->verdicts)
            if (verdict.rule->id == "buckling") return !verdict.passed;
        FAIL("no verdict on buckling");
        return false;
    };
    CHECK_FALSE(buckles(0.0));
    CHECK(buckles(0.11));
    CHECK_THAT(joined(sheet_words(spec)),
               ContainsSubstring("L0 at or below " + sheet::number(*facts->longest_free_length) + " mm"));
    // A guided spring cannot buckle; the room for it is a bound all the same.
    spec.space.seats = demand::Seats::guided;
    CHECK_FALSE(sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length.has_value());
    spec.space.free_length = demand::LengthRange{15.0 * mm, 19.5 * mm};
    CHECK(*sheet::facts(spec, grade_of(spec), tolerances(), paper())->longest_free_length == 19.5 * mm);
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

TEST_CASE("a reply form stays with its heading", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.quantities = {10, 20, 50, 100, 200, 500};
    std::vector<sheet::EnquiryAlternative> alternatives(7, {spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper());
    REQUIRE(pages.has_value());
    int forms = 0;
    for (const sheet::Drawing& page : *pages) {
        const std::string words = words_of(page);
        for (const int lot : spec.quantities)
            if (const auto at = words.find("For " + std::to_string(lot) + " pieces\n"); at != std::string::npos) {
                ++forms;
                CHECK(words.find("price a piece", at) != std::string::npos);
            }
    }
    CHECK(forms == static_cast<int>(spec.quantities.size()));
}

}  // namespace
}  // namespace seatload::test
