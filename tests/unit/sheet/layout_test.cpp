// SPDX-License-Identifier: MIT
#include <algorithm>

#include <support/check.hpp>

#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/set_entries.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include "layout_check.hpp"
#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

std::string listed(const std::vector<std::string>& faults) { return join(faults, "\n"); }

/// Every form a paper can take, with its name.
std::vector<std::pair<std::string, sheet::Paper>> papers() {
    using enum sheet::PaperSize;
    using enum sheet::Units;
    std::vector<std::pair<std::string, sheet::Paper>> out;
    for (const std::string& language : io::builtin_languages())
        for (const auto size : {a4, letter})
            for (const bool upright : {false, true})
                for (const auto units : {metric, inch})
                    out.emplace_back(language + (size == a4 ? ", A4" : ", Letter") + (upright ? ", upright" : "") +
                                         (units == inch ? ", inch" : ""),
                                     paper(language, size, upright, units));
    return out;
}

TEST_CASE("no text of a sheet overlaps another, leaves the frame or is crossed by a line", "[sheet][slow]") {
    for (const auto& [name, form] : papers()) {
        for (const Specimen& specimen : specimens()) {
            INFO(name << ": " << specimen.name);
            const auto page =
                sheet::spring_sheet({specimen.spec, grade_of(specimen.spec), tolerances(), form, 1, 1, "any text"});
            CHECK(page.has_value());
            if (page.has_value()) CHECK(listed(layout_faults(*page)) == "");
        }
    }
}

TEST_CASE("the loads stand together in one column", "[sheet]") {
    for (const Specimen& specimen : specimens()) {
        INFO(specimen.name);
        const auto page =
            sheet::spring_sheet({specimen.spec, grade_of(specimen.spec), tolerances(), paper(), 1, 1, ""});
        REQUIRE(page.has_value());
        const auto left_of = [&](const std::string& start) {
            for (const sheet::Item& item : page->items())
                if (const auto* text = std::get_if<sheet::Text>(&item);
                    text && sheet::plain(text->words).starts_with(start))
                    return text->at.x;
            return -1.0;
        };
        constexpr double kIndent = 5.0;  // of a name under its heading, less than any column is wide
        const double heading = left_of("Loads of the new spring");
        REQUIRE(heading > 0.0);
        CHECK_THAT(left_of("limit of "), WithinAbs(heading, kIndent));
        CHECK_THAT(left_of("F least"), WithinAbs(heading, kIndent));
    }
}

TEST_CASE("a figure names its plates and dimensions its detail, and in inches keeps the tolerance of De", "[sheet]") {
    const auto words_of = [](const record::Spec& spec, sheet::Units units) {
        const sheet::Paper form = paper("en", sheet::PaperSize::a4, false, units);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), form, 1, 1, ""});
        REQUIRE(page.has_value());
        return "\n" + test::words_of(*page);
    };
    const record::Spec spec = specimen(latch());
    for (const char* plate : {"\nL1\n", "\nL2\n"})
        CHECK_THAT(words_of(spec, sheet::Units::metric), ContainsSubstring(plate));
    // (8.2 - 0.3)/25.4 = 0.31102, (8.2 + 0.3)/25.4 = 0.33465: 0.3228 +- 0.0117 lies inside.
    const std::string inch = words_of(spec, sheet::Units::inch);
    CHECK_THAT(inch, ContainsSubstring("\nØ0.3228 ± 0.0117\n"));
    CHECK_THAT(inch, ContainsSubstring("F most [lbf]"));
    CHECK_THAT(inch, ContainsSubstring("F least [lbf]"));
    const record::Spec fine = specimen({"ASTM-A228", 0.2, 1.6, 40.0, 16.0, spring::Ends::closed, 14.0, 11.0});
    CHECK_THAT(words_of(fine, sheet::Units::metric), ContainsSubstring("\n(Ø0.20)\n"));
}

TEST_CASE("no text of an enquiry overlaps another, leaves the frame or is crossed by a line", "[sheet][slow]") {
    const std::vector<Specimen> all = specimens();
    for (const auto& [name, form] : papers()) {
        if (form.upright) continue;  // the covers are the same
        for (const std::size_t count : {std::size_t{1}, std::size_t{2}, std::size_t{5}, all.size()}) {
            std::vector<sheet::EnquiryAlternative> alternatives;
            for (std::size_t i = 0; i < count; ++i) alternatives.push_back({all[i].spec, grade_of(all[i].spec)});
            const auto pages = sheet::enquiry(alternatives, tolerances(), form);
            REQUIRE(pages.has_value());
            REQUIRE(pages->size() > count);
            for (std::size_t p = 0; p < pages->size() - count; ++p) {
                INFO(name << ": " << count << " alternatives, page " << p + 1);
                CHECK(listed(layout_faults((*pages)[p])) == "");
            }
        }
    }
}

TEST_CASE("the layout check finds an overlap, an overflow, small letters and a crossing line", "[sheet]") {
    sheet::Drawing page = sheet::a4_landscape();
    page.add(sheet::Text{{50.0, 50.0}, "first"});
    CHECK(layout_faults(page).empty());
    page.add(sheet::Text{{53.0, 51.0}, "second"});
    CHECK_THAT(listed(layout_faults(page)), ContainsSubstring("overlap: first / second"));
    page.add(sheet::Text{{280.0, 50.0}, "beyond the border"});
    CHECK_THAT(listed(layout_faults(page)), ContainsSubstring("leaves the frame"));
    page.add(sheet::Text{{50.0, 80.0}, "tiny", 1.8});
    CHECK_THAT(listed(layout_faults(page)), ContainsSubstring("smaller than 2.5 mm: tiny"));
    page.add(sheet::Text{{50.0, 100.0}, "struck out"});
    page.line({40.0, 101.0}, {90.0, 101.5});
    CHECK_THAT(listed(layout_faults(page)), ContainsSubstring("crossed by a line: struck out"));
}

TEST_CASE("a block that is parted has its heading again, and its last two entries together", "[sheet]") {
    sheet::Entries entries{sheet::Heading{"Coil", "Coil, continued"}};
    for (const char* name : {"a", "b", "c", "d", "e"})
        entries.push_back(sheet::Named{sheet::Status::reference, name, "(1)"});
    constexpr double kPitch = 4.0;
    const sheet::SetEntries set(entries, 60.0, 1.0);
    const auto place_of = [&](const sheet::Drawing& page, const std::string& words) -> std::optional<sheet::Point> {
        for (const sheet::Item& item : page.items())
            if (const auto* text = std::get_if<sheet::Text>(&item); text && text->words == words) return text->at;
        return std::nullopt;
    };
    // The first column has room for the heading and four of its five entries.
    const std::vector<sheet::Box> columns{{0.0, 100.0 - 5.2 * kPitch, 60.0, 100.0}, {60.0, 50.0, 120.0, 100.0}};
    for (const bool heads_again : {true, false}) {
        CAPTURE(heads_again);
        sheet::Drawing page(120.0, 100.0);
        set.draw(page, columns, kPitch, {sheet::Together::pairs, heads_again});
        const auto c = place_of(page, "c"), d = place_of(page, "d"), e = place_of(page, "e");
        REQUIRE((c && d && e));
        CHECK(c->x < 60.0);
        CHECK(d->x > 60.0);
        CHECK(e->x > 60.0);
        const auto again = place_of(page, "Coil, continued");
        CHECK(again.has_value() == heads_again);
        if (again) CHECK((again->x > 60.0 && again->y > d->y + 0.9 * kPitch));
    }
    const std::vector<sheet::Box> one{{0.0, 0.0, 60.0, 100.0}};
    sheet::Drawing page(120.0, 100.0);
    set.draw(page, one, kPitch, {});
    CHECK_FALSE(place_of(page, "Coil, continued").has_value());
}

TEST_CASE("more notes than a sheet can hold are an error, not a spill", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.notes.assign(60, "Sixty characters of a note that must go on to a second line.");
    const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
    REQUIRE_FALSE(page.has_value());
    CHECK(render(page.error()) ==
          "error: the sheet has no room for all it must say [no-room]\n"
          "    hint: shorten the notes, or choose the other way up, A4 paper or metric units\n");
}

}  // namespace
}  // namespace seatload::test
