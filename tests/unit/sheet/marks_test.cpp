// SPDX-License-Identifier: MIT
// A mark on a line is worth nothing to who must wind by it unless it is named.
#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/sheet_diagram.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "demo_sheets.hpp"
#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

/// Forms of a sheet, with their names.
std::vector<std::pair<std::string, sheet::Paper>> forms() {
    using enum sheet::PaperSize;
    using enum sheet::Units;
    std::vector<std::pair<std::string, sheet::Paper>> out;
    for (const auto size : {a4, letter})
        for (const bool upright : {false, true})
            for (const auto units : {metric, inch})
                out.emplace_back(std::string(size == a4 ? "A4" : "Letter") + (upright ? ", upright" : "") +
                                     (units == inch ? ", inch" : ""),
                                 paper("en", size, upright, units));
    for (const char* language : {"de", "it"}) out.emplace_back(language, paper(language, a4, false, metric));
    return out;
}

/// What stands in the figure and what in the diagram: the sheet is drawn in the order of its parts.
struct Parts {
    std::vector<std::string> figure;
    std::vector<std::string> diagram;
};

Parts parts_of(const sheet::Drawing& page, const sheet::Wording& words) {
    Parts out;
    std::vector<std::string>* into = &out.figure;
    for (const sheet::Item& item : page.items()) {
        const auto* text = std::get_if<sheet::Text>(&item);
        if (!text) continue;
        if (text->words == words.say("diagram.heading")) into = &out.diagram;
        if (into == &out.diagram && text->words.find(words.say("legend.required")) != std::string::npos) break;
        into->push_back(sheet::plain(text->words));
    }
    return out;
}

/// Whether a symbol stands alone, before its value or beside others.
bool names(const std::vector<std::string>& texts, const std::string& symbol) {
    for (const std::string& text : texts)
        for (std::size_t at = text.find(symbol); at != std::string::npos; at = text.find(symbol, at + 1)) {
            const std::size_t end = at + symbol.size();
            const bool begins = at == 0 || text.substr(0, at).ends_with(", ");
            if (begins && (end == text.size() || text[end] == ' ' || text[end] == ',')) return true;
        }
    return false;
}

std::vector<std::string> marks_of(const sheet::LoadDiagram& d) {
    std::vector<std::string> out{"L0", "L1", "L2", "Ln", "Lc", "F1", "F2", "Fn", "Fc", "Fτ"};
    if (d.buckling_length && *d.buckling_length<d.free_length&& * d.buckling_length> d.solid_length)
        out.emplace_back("LK");
    return out;
}

void check_marks(const std::string& name, const record::Spec& spec, const wire::Grade& grade,
                 const sheet::Paper& form) {
    INFO(name);
    const auto page = sheet::spring_sheet({spec, grade, tolerances(), form, 1, 1, "any text"});
    REQUIRE(page.has_value());
    const Parts parts = parts_of(*page, form.words);
    REQUIRE_FALSE(parts.diagram.empty());
    for (const std::string& mark : marks_of(sheet_diagram(sheet::facts(spec, grade, tolerances(), form).value()))) {
        INFO(mark << " in the diagram: " << join(parts.diagram, " | "));
        CHECK(names(parts.diagram, mark));
    }
    for (const char* plate : {"L1", "L2"}) {
        INFO(plate << " at the plate");
        CHECK(std::find(parts.figure.begin(), parts.figure.end(), plate) != parts.figure.end());
    }
    CHECK(join(layout_faults(*page), "\n") == "");
}

TEST_CASE("every mark of diagram and figure is named on every sheet of the demo, on any paper", "[sheet][slow]") {
    REQUIRE(demo_specs().size() > 25);
    for (const auto& [form_name, form] : forms())
        for (const DemoSpec& demo : demo_specs())
            check_marks(form_name + ": " + demo.name, demo.spec, demo.grade, form);
}

TEST_CASE("every mark of diagram and figure is named on sheets of unlike springs", "[sheet]") {
    for (const Specimen& specimen : specimens()) {
        if (specimen.name == "solid before full travel") continue;  // it has no Ln short of its loads
        check_marks(specimen.name, specimen.spec, grade_of(specimen.spec), paper());
    }
}

}  // namespace
}  // namespace seatload::test
