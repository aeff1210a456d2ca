// SPDX-License-Identifier: MIT
#include <algorithm>

#include <support/check.hpp>

#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include "layout_check.hpp"
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

/// Known to be crowded: numbers in two units, or many notes in a language longer than English. Such a sheet may be
/// refused for want of room, and in its low diagram and figure the labels of lengths, loads and detail may touch one
/// another or a line; nothing else may.
bool is_crowded(const sheet::Paper& form, const Specimen& specimen) {
    const bool is_wordy = specimen.name.starts_with("long names");
    return form.units == sheet::Units::inch || (is_wordy && form.words.language() != "en");
}

/// Whether a fault is about the label of a length, a load or a detail: "L0 (28)", "Fτ (6.06)", "X".
bool is_of_label(std::string_view fault) {
    if (fault == "crossed by a line: X") return true;
    for (const std::string_view kind : {"overlap: ", "crossed by a line: "}) {
        if (!fault.starts_with(kind) || fault.size() < kind.size() + 2) continue;
        const std::string_view words = fault.substr(kind.size());
        return (words[0] == 'L' || words[0] == 'F') && std::string_view("012nc \xCF").find(words[1]) < 7;
    }
    return false;
}

TEST_CASE("no text of a sheet overlaps another, leaves the frame or is crossed by a line", "[sheet]") {
    for (const auto& [name, form] : papers()) {
        for (const Specimen& specimen : specimens()) {
            INFO(name << ": " << specimen.name);
            const bool crowded = is_crowded(form, specimen);
            const auto page =
                sheet::spring_sheet({specimen.spec, grade_of(specimen.spec), tolerances(), form, 1, 1, "any text"});
            if (!page.has_value()) {
                CHECK(crowded);
                CHECK_THAT(page.error().front().message, ContainsSubstring("longer than the sheet has room for"));
                continue;
            }
            std::vector<std::string> faults = layout_faults(*page);
            if (crowded) std::erase_if(faults, is_of_label);
            CHECK(listed(faults) == "");
        }
    }
}

TEST_CASE("no text of an enquiry overlaps another, leaves the frame or is crossed by a line", "[sheet]") {
    const std::vector<Specimen> all = specimens();
    for (const auto& [name, form] : papers()) {
        if (form.upright) continue;  // the covers are the same
        for (const std::size_t count : {std::size_t{1}, std::size_t{2}, std::size_t{5}, all.size()}) {
            if (count == all.size() && form.units == sheet::Units::inch) continue;  // some of them are refused
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

TEST_CASE("more notes than a sheet can hold are an error, not a spill", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.notes.assign(60, "Sixty characters of a note that must go on to a second line.");
    const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
    REQUIRE_FALSE(page.has_value());
    CHECK_THAT(page.error().front().message, ContainsSubstring("notes"));
}

}  // namespace
}  // namespace seatload::test
