// SPDX-License-Identifier: MIT
// The same requirement written otherwise gives the same springs, to the last bit of each spec: in inches and
// pounds-force, with keys and tables in another order, with other line ends, with numbers in other decimal forms.
#include <fmt/format.h>

#include <algorithm>
#include <random>

#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>

#include "property/property.hpp"
#include "support/builtin.hpp"

using namespace seatload;
using namespace seatload::property;

namespace {

/// The springs of a requirement: how many fit, and the specs of the best.
struct Springs {
    unsigned long long fit = 0;
    std::string specs;

    bool operator==(const Springs&) const = default;
};

Springs springs_of(const std::string& text) {
    const auto requirement = io::read_requirement(text, "x.toml", test::wires());
    if (!requirement) RC_FAIL(render(requirement.error()) + text);
    const sizing::Space space = sizing::search_space(*requirement, test::wires());
    sizing::SearchOptions options;
    options.threads = 1;
    const sizing::Census census = sizing::search(space, test::tolerances(), options);
    Springs springs{census.fit, ""};
    for (const sizing::Alternative& offer : sizing::spread(space, census, 3))
        springs.specs += io::write_spec(record::specify(*requirement, space, offer, "A"));
    return springs;
}

/// How lengths and forces are written. A 64th of an inch is 0.396875 mm and an eighth of a pound-force
/// 0.5560277019075625 N, both exactly (international inch and pound of 1959, standard gravity), and each is the nearest
/// double of the other's text, so that not even a last bit may differ.
struct Writing {
    bool inch = false;

    std::string length(long sixty_fourths) const {
        return inch ? fmt::format("{}/64 in", sixty_fourths)
                    : fmt::format("{}.{:06} mm", sixty_fourths * 396875 / 1000000, sixty_fourths * 396875 % 1000000);
    }
    std::string force(long eighths) const {
        constexpr long kWhole = 10'000'000'000'000'000;  // of ten quadrillionths of a newton
        const long parts = eighths * 5'560'277'019'075'625;
        return inch ? fmt::format("{}/8 lbf", eighths) : fmt::format("{}.{:016} N", parts / kWhole, parts % kWhole);
    }
};

/// A table of a requirement: its name and its lines.
using Lines = std::vector<std::string>;
struct NamedTable {
    std::string name;
    Lines lines;
};

/// What a requirement asks for, in 64ths of an inch and eighths of a pound-force.
struct Asked {
    long wire = 3, bore = 34, seated = 60, travel = 16, load = 16;
};

Asked drawn_asked() {
    Asked a;
    a.wire = whole(2, 6);
    a.bore = a.wire * whole(7, 11);
    a.seated = a.wire * whole(14, 26);
    a.travel = a.seated / 5;
    a.load = a.wire * a.wire;
    return a;
}

std::vector<NamedTable> requirement(const Asked& a, const Writing& w) {
    const auto range = [](const std::string& low, const std::string& high) { return '"' + low + " .. " + high + '"'; };
    return {
        {"identity", {"engine = \"Ottermere M14\"", "position = \"latch\"", "number = \"OM14-1\""}},
        {"space",
         {"bore = \"" + w.length(a.bore) + '"', "seated_height = \"" + w.length(a.seated) + '"',
          "full_travel_height = \"" + w.length(a.seated - a.travel) + '"', "seats = \"slides\""}},
        {"load",
         {"seated = " + range(w.force(a.load), w.force(3 * a.load)),
          "full_travel = \"at most " + w.force(8 * a.load) + '"'}},
        {"wire", {"grades = [\"ASTM-A228\", \"ASTM-A401\"]", "diameters = [\"" + w.length(a.wire) + "\"]"}},
        {"coil", {"ends = [\"closed and ground\", \"closed\"]", "hand = \"left\""}},
        {"limits", {"bore_clearance = \"" + w.length(1) + '"', "buckling_margin = 1.1"}},
        {"grid",
         {"mean_diameter_step = \"" + w.length(1) + '"', "free_length_step = \"" + w.length(1) + '"',
          "total_coils = \"4 .. 20\"", "total_coils_step = 0.5"}},
    };
}

std::string joined(const std::vector<NamedTable>& tables, const std::string& line_end = "\n") {
    std::string text;
    for (const NamedTable& table : tables) {
        text += '[' + table.name + ']' + line_end;
        for (const std::string& line : table.lines) text += line + line_end;
    }
    return text;
}

std::vector<NamedTable> shuffled(std::vector<NamedTable> tables) {
    std::mt19937 engine(static_cast<unsigned>(whole(0, 1'000'000)));
    for (NamedTable& table : tables) std::shuffle(table.lines.begin(), table.lines.end(), engine);
    std::shuffle(tables.begin(), tables.end(), engine);
    return tables;
}

}  // namespace

TEST_CASE("The same requirement in millimetres and newtons and in inches and pounds-force gives the same springs") {
    unsigned long long fit = 0;
    holds("units", [&] {
        const Asked asked = drawn_asked();
        const Springs metric = springs_of(joined(requirement(asked, {false})));
        RC_ASSERT(springs_of(joined(requirement(asked, {true}))) == metric);
        fit += metric.fit;
    });
    CHECK(fit > 1000);  // else nothing was compared
}

TEST_CASE("The order of keys and tables, line ends, blanks and remarks do not matter to what is found") {
    holds("order", [] {
        const auto tables = requirement(drawn_asked(), {yes()});
        const Springs plain = springs_of(joined(tables));
        RC_ASSERT(springs_of(joined(shuffled(tables))) == plain);
        RC_ASSERT(springs_of(joined(tables, "\r\n")) == plain);
        RC_ASSERT(springs_of("\xEF\xBB\xBF" + joined(shuffled(tables), "  # a remark\r\n\r\n\t")) == plain);
    });
}

TEST_CASE("Numbers written in other decimal forms are the same numbers") {
    holds("decimals", [] {
        const int hundredths = whole(100, 100000);
        const std::string plain = fmt::format("{}.{:02}", hundredths / 100, hundredths % 100);
        const auto height = [](const std::string& quantity) {
            const std::string text = "[space]\nseated_height = \"" + quantity +
                                     "\"\nfull_travel_height = \"0.5 mm\"\n[load]\nseated = \"1 N .. 2 N\"\n";
            const auto read = io::read_requirement(text, "x.toml", test::wires());
            if (!read) RC_FAIL(render(read.error()));
            return in_mm(read->space.seated_height);
        };
        const double wanted = height(plain + " mm");
        for (const std::string& same :
             {plain + "mm", plain + "000 mm", "+" + plain + " mm", "00" + plain + " mm",
              fmt::format("{}e-2 mm", hundredths), fmt::format("{}.0E-02 mm", hundredths), "  " + plain + "   mm "})
            RC_ASSERT(height(same) == wanted);
    });
}
