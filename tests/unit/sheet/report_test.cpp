// SPDX-License-Identifier: MIT
#include <algorithm>

#include <support/check.hpp>

#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/report.hpp>
#include <seatload/sheet/report_simulation.hpp>
#include <seatload/sizing/spread.hpp>

#include "layout_check.hpp"
#include "report_specimens.hpp"
#include "sheet_words.hpp"

namespace seatload::test {
namespace {

std::string report_words(const std::vector<sheet::Drawing>& pages) {
    std::string out;
    for (const sheet::Drawing& page : pages) out += words_of(page);
    for (auto at = out.find("\u00a0"); at != std::string::npos; at = out.find("\u00a0"))
        out.replace(at, std::string("\u00a0").size(), " ");
    return out;
}

sheet::ReportInput input_of(const std::vector<const record::Spec*>& specs) {
    sheet::ReportInput input{{}, tolerances(), wires().sources, paper().words, std::nullopt, sheet::PaperSize::a4};
    for (const record::Spec* spec : specs) input.alternatives.push_back({*spec, wire_of(*spec)});
    return input;
}

std::vector<sheet::Drawing> pages_of(const sheet::ReportInput& input) {
    const auto pages = sheet::calculation_report(input);
    for (const Diagnostic& d : pages.error()) UNSCOPED_INFO(d.message);
    REQUIRE(pages.has_value());
    return *pages;
}

void check_layout(const std::vector<sheet::Drawing>& pages) {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        INFO("page " << i + 1);
        CHECK(join(layout_faults(pages[i]), "\n") == "");
    }
}

/// A requirement searched, with the specs that come of it.
struct Sized {
    demand::Requirement requirement;
    sizing::Space space;
    sizing::Census census;
    std::vector<record::Spec> specs;

    sheet::ReportInput input() const {
        std::vector<const record::Spec*> all;
        for (const record::Spec& spec : specs) all.push_back(&spec);
        sheet::ReportInput out = input_of(all);
        out.sizing.emplace(sheet::ReportSizing{space, census});
        return out;
    }
};

Sized sized(const std::string& name, const std::vector<std::string>& grades, const auto& alter) {
    const std::string path = std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name;
    demand::Requirement requirement = io::read_requirement(read_text_file(path).value(), path, wires()).value();
    requirement.wire.grades = grades;
    alter(requirement);
    sizing::Space space = sizing::search_space(requirement, wires());
    sizing::Census census = sizing::search(space, tolerances());
    std::vector<record::Spec> specs;
    for (const sizing::Alternative& alternative : sizing::spread(space, census, 26))
        specs.push_back(
            record::specify(requirement, space, alternative, std::string(1, static_cast<char>('A' + specs.size()))));
    return {std::move(requirement), std::move(space), std::move(census), std::move(specs)};
}
Sized sized(const std::string& name, const std::vector<std::string>& grades) {
    return sized(name, grades, [](demand::Requirement&) {});
}

TEST_CASE("no text of a calculation report overlaps another, leaves the frame or is crossed by a line",
          "[report][slow]") {
    for (const Specimen& specimen : report_specimens()) {
        INFO(specimen.name);
        sheet::ReportInput input = input_of({&specimen.spec});
        check_layout(pages_of(input));
        input.size = sheet::PaperSize::letter;
        check_layout(pages_of(input));
    }
}

TEST_CASE("the pages of a report after a search keep their layout, however many springs and diameters",
          "[report][slow]") {
    const Sized latch = sized("ahead_latch.toml", {"EN10270-2-FDSiCr", "ASTM-A313-631-CH900", "ASTM-A228"});
    CHECK(latch.specs.size() > 5);
    check_layout(pages_of(latch.input()));
    const Sized valve = sized("oil_relief_valve.toml", {"EN10270-2-VDSiCr", "ASTM-A401"});
    check_layout(pages_of(valve.input()));
    // Hardly any limit, so that the map has many columns, and no load band, so that all room is endless.
    const Sized wide = sized("ahead_latch.toml", {"EN10270-2-FDSiCr"}, [](demand::Requirement& r) {
        r.space.bore.reset();
        r.space.seats = demand::Seats::guided;
        r.seated_load = r.full_travel_load = {};
        r.grid.mean_diameter_step = 0.5 * mm;
        r.grid.free_length_step = 1.0 * mm;
        r.space.free_length = demand::LengthRange{16.0 * mm, 30.0 * mm};
    });
    CHECK(wide.census.fit > 0);
    check_layout(pages_of(wide.input()));
}

TEST_CASE("a report of several springs follows tolerances through line by line once", "[report][slow]") {
    const Sized latch = sized("ahead_latch.toml", {"EN10270-2-FDSiCr", "ASTM-A228"});
    REQUIRE(latch.specs.size() > 1);
    const auto count = [](const std::string& words, const std::string& part) {
        std::size_t found = 0;
        for (auto at = words.find(part); at != std::string::npos; at = words.find(part, at + 1)) ++found;
        return found;
    };
    const std::string all = report_words(pages_of(latch.input()));
    CHECK(count(all, "Worst case of the loads, lot brought in") == 1);
    CHECK(count(all, "Worst case and simulation, the lot brought in") == latch.specs.size());
    for (const record::Spec& spec : latch.specs) {
        const std::string alone = report_words(pages_of(input_of({&spec})));
        CHECK(count(alone, "Worst case of the loads, lot brought in") == 1);
    }
}

TEST_CASE("a calculation report says whom it is for, what it rests on, and all that was asked", "[report][slow]") {
    const Sized latch = sized("ahead_latch.toml", {"EN10270-2-FDSiCr", "ASTM-A228"});
    REQUIRE(latch.specs.size() > 1);
    const auto pages = pages_of(latch.input());
    const std::string words = report_words(pages);
    for (const char* phrase :
         {"calculation report", "not for the maker", "For our own use; not for the maker.", "Caution",
          "A spring stores energy", "Ottermere M14", "OM14-LAT-AHD", "How to read it", "memory", "estimate",
          "What is demanded", "The wire", "Static strength", "Stability", "Tolerances", "All that fits",
          "What rejects the rest", "Limits", "Load and length", "How the simulated loads fall", "of 20000 springs",
          "lot brought in, by the grades ordered", "end tips apart", "The coils that work stray by",
          // a spring that leans too far may have a wider one, and comes later
          "widest tolerance room", "Alternative A", "Alternative B", "R = G d4/(8 D3 n)", "EN 13906-1 cl. 9.4",
          "Sources named in square brackets"}) {
        INFO(phrase);
        CHECK_THAT(words, ContainsSubstring(phrase));
    }
    for (std::size_t i = 0; i < pages.size(); ++i)
        CHECK_THAT(words, ContainsSubstring(std::to_string(i + 1) + " / " + std::to_string(pages.size())));
    const auto subject = sheet::report_subject(latch.specs.front(), wire_of(latch.specs.front()), tolerances());
    REQUIRE(subject.has_value());
    CHECK(subject->values.verdicts.size() > 10);
}

TEST_CASE("no page of a calculation but the last is nearly empty, and one that two parts share names both",
          "[report][slow]") {
    const Sized latch = sized("ahead_latch.toml", {"EN10270-2-FDSiCr", "ASTM-A228"});
    const record::Spec& first = latch.specs.front();
    for (const auto& pages : {pages_of(latch.input()), pages_of(input_of({&first}))})
        for (std::size_t i = 0; i + 1 < pages.size(); ++i) {
            INFO("page " << i + 1 << " of " << pages.size());
            CHECK(written_share(pages[i]) > 0.4);
        }
    const std::string alone = report_words(pages_of(input_of({&first})));
    CHECK_THAT(alone, ContainsSubstring("Overview; Alternative A"));
}

TEST_CASE("the fatigue picture stands in a report exactly when the duty is cyclic and the wire has endurance values",
          "[report][slow]") {
    std::size_t with = 0;
    for (const Specimen& specimen : report_specimens()) {
        INFO(specimen.name);
        const bool has =
            report_words(pages_of(input_of({&specimen.spec}))).find("endurance point (Zimmerli)") != std::string::npos;
        CHECK(has == specimen.spec.duty.is_dynamic());
        with += has ? 1 : 0;
    }
    CHECK(with >= 3);
}

TEST_CASE("a report names the limits a spring breaks", "[report]") {
    const auto all = report_specimens();
    const auto broken =
        std::find_if(all.begin(), all.end(), [](const Specimen& s) { return s.name == "solid before full travel"; });
    REQUIRE(broken != all.end());
    const std::string words = report_words(pages_of(input_of({&broken->spec})));
    CHECK_THAT(words, ContainsSubstring("Broken: "));
}

TEST_CASE("equal specs give equal reports, and the PDF is made of the same pages", "[report]") {
    const record::Spec spec = specimen(latch());
    const auto first = sheet::calculation_report_pdf(input_of({&spec}));
    const auto second = sheet::calculation_report_pdf(input_of({&spec}));
    REQUIRE(first.has_value());
    CHECK(*first == *second);
    CHECK(first->starts_with("%PDF-"));
}

TEST_CASE("what cannot be reckoned is refused with the reason", "[report]") {
    CHECK_FALSE(sheet::calculation_report(input_of({})).has_value());
    record::Spec spec = specimen(latch());
    spec.spring.total_coils = 2.0;
    auto refused = sheet::calculation_report(input_of({&spec}));
    REQUIRE_FALSE(refused.has_value());
    CHECK_THAT(refused.error().front().message, ContainsSubstring("active coils"));
    spec = specimen(latch());
    spec.full_travel.length = spec.seated.length;
    refused = sheet::calculation_report(input_of({&spec}));
    REQUIRE_FALSE(refused.has_value());
    CHECK_THAT(refused.error().front().message, ContainsSubstring("lengths"));
}

TEST_CASE("a lot brought in meets the order at least as often as one that is not", "[report]") {
    for (const Specimen& specimen : report_specimens()) {
        INFO(specimen.name);
        const auto subject = sheet::report_subject(specimen.spec, wire_of(specimen.spec), tolerances());
        REQUIRE(subject.has_value());
        const auto found = sheet::simulated(*subject);
        CHECK(found.adjusted.inside[0] >= found.any.inside[0]);
        CHECK_THAT(found.adjusted.mean[0], WithinRel(in_newton(specimen.spec.seated.nominal), 1e-9));
        CHECK_THAT(found.adjusted.mean[1], WithinRel(in_newton(specimen.spec.full_travel.nominal), 1e-9));
    }
}

}  // namespace
}  // namespace seatload::test
