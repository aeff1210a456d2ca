// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <set>

#include <support/check.hpp>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/report_steps.hpp>

#include "hand_reckoner.hpp"
#include "report_specimens.hpp"

namespace seatload::test {
namespace {

std::vector<sheet::StepGroup> steps_of(const record::Spec& spec) {
    const auto subject = sheet::report_subject(spec, wire_of(spec), tolerances());
    for (const Diagnostic& d : subject.error()) UNSCOPED_INFO(d.message);
    REQUIRE(subject.has_value());
    return sheet::report_steps(*subject);
}

/// Half a unit in the last printed digit of the value, and what the numbers put in can be off by: half a unit in the
/// last digit of each that was printed rounded. A value printed in full is off by no more than doubles are.
double allowed(const sheet::Step& step, const PrintedLine& line) {
    const Literal value = read_literal(step.value);
    double sum = step.is_rounded ? 0.5 * value.last_digit : 0.0;
    const double plain = line.value();
    for (std::size_t i = 0; i < line.literals().size(); ++i) {
        const Literal& put_in = line.literals()[i];
        if (std::find(step.rounded_numbers.begin(), step.rounded_numbers.end(), put_in.text) ==
            step.rounded_numbers.end())
            continue;
        const double half = 0.5 * put_in.last_digit;
        sum += std::max(std::abs(line.value_with(i, put_in.value + half) - plain),
                        std::abs(line.value_with(i, put_in.value - half) - plain));
    }
    return sum * 1.001 + 2e-10 * std::abs(value.value) + 1e-12;
}

const sheet::Step* find(const std::vector<sheet::StepGroup>& groups, const std::string& symbol) {
    for (const sheet::StepGroup& group : groups)
        for (const sheet::Step& step : group.steps)
            if (sheet::plain(step.symbol) == symbol) return &step;
    return nullptr;
}

TEST_CASE("every line of a calculation gives its printed value when its printed numbers are reckoned", "[report]") {
    std::set<std::string> reckoned;
    for (const Specimen& specimen : report_specimens()) {
        INFO(specimen.name);
        for (const sheet::StepGroup& group : steps_of(specimen.spec))
            for (const sheet::Step& step : group.steps) {
                if (step.numbers.empty()) continue;
                INFO(sheet::plain(step.symbol) << " = " << sheet::plain(step.formula) << " = "
                                               << sheet::plain(step.numbers) << " = " << step.value);
                const PrintedLine line(step.numbers);
                CHECK_THAT(line.value(), WithinAbs(read_literal(step.value).value, allowed(step, line)));
                reckoned.insert(sheet::plain(step.symbol));
            }
    }
    // Every quantity of the report has been put to the test by some specimen.
    for (const char* symbol :
         {"De",    "Di",     "w",   "n",      "m",   "α",   "Lw", "M",  "λ",   "k",     "KW",    "R",     "h",
          "Gt",    "Rt",     "q",   "Lc",     "Sa",  "Ln",  "s1", "F1", "F1t", "s2",    "F2",    "F2t",   "sn",
          "Fn",    "sc",     "Fc",  "W2",     "τ1",  "τ2",  "τn", "τc", "τk1", "τk2",   "uc",    "τzul",  "τj",
          "ΔDe",   "De,max", "Ch",  "Di,min", "Cd",  "λk",  "sk", "Sk", "sQ",  "ξ1",    "A1",    "RQ1",   "FQ1",
          "U1",    "ξ2",     "A2",  "RQ2",    "FQ2", "U2",  "τQ", "fe", "La",  "ξa",    "xa",    "cn",    "hx",
          "es",    "xf",     "τa",  "τm",     "Ssu", "Sse", "nf", "aF", "kF",  "AF1,1", "AF1,2", "AF1,3", "AF2,1",
          "AF2,2", "AF2,3",  "x1a", "x1b",    "x2b", "AL0", "e1", "e2"}) {
        INFO(symbol);
        CHECK(reckoned.contains(symbol));
    }
    // Nor is any left out of what strays within a lot, and of the worst case.
    for (const char* symbol : {"AG",  "ADp", "An",  "Anp", "AL",  "u1D", "u1n", "u1L", "u1",  "p1D", "p1n",
                               "p1L", "u2D", "u2n", "u2L", "u2",  "p2D", "p2n", "p2L", "v1d", "v1D", "v1n",
                               "v1G", "v1",  "v2d", "v2D", "v2n", "v2G", "v2",  "F1a", "F2a", "F1b"}) {
        INFO(symbol);
        CHECK(reckoned.contains(symbol));
    }
}

TEST_CASE("every number put into a line stands above it as a value", "[report]") {
    for (const Specimen& specimen : report_specimens()) {
        INFO(specimen.name);
        std::set<std::string> above;
        for (const sheet::StepGroup& group : steps_of(specimen.spec))
            for (const sheet::Step& step : group.steps) {
                for (const std::string& number : step.rounded_numbers) {
                    INFO(sheet::plain(step.symbol) << " uses " << number);
                    CHECK(above.contains(number));
                }
                above.insert(step.value);
            }
    }
}

TEST_CASE("every line of a calculation names its source, and no line is firmer than what it rests on", "[report]") {
    for (const Specimen& specimen : report_specimens())
        for (const sheet::StepGroup& group : steps_of(specimen.spec))
            for (const sheet::Step& step : group.steps) {
                INFO(specimen.name << ", " << step.name);
                CHECK_FALSE(step.source.empty());
                CHECK_FALSE(step.name.empty());
                CHECK(sheet::weaker(step.formula_trust, step.value_trust) == step.value_trust);
            }
}

TEST_CASE("each modulus is named with its own source", "[report]") {
    for (const char* grade : {"EN10270-2-VDSiCr", "ASTM-A313-302", "ASTM-A228"}) {
        INFO(grade);
        const record::Spec spec = specimen({grade, 2.0, 14.0, 8.5, 46.0, spring::Ends::closed_ground, 38.0, 32.0});
        const auto groups = steps_of(spec);
        for (const auto& [symbol, property] : {std::pair{"G", "shear modulus"}, {"E", "Young's modulus"}}) {
            INFO(symbol);
            const sheet::Step* step = find(groups, symbol);
            REQUIRE(step != nullptr);
            const auto& all = wire_of(spec).provenance;
            const auto named = std::find_if(all.begin(), all.end(), [&](const wire::Provenance& p) {
                return p.property == property || p.property == "moduli";
            });
            REQUIRE(named != all.end());
            CHECK(step->source == named->source);
        }
    }
}

TEST_CASE("formulas follow the limits chosen", "[report]") {
    const auto all = report_specimens();
    const auto formula = [&](const std::string& name, const std::string& symbol) {
        const auto specimen = std::find_if(all.begin(), all.end(), [&](const Specimen& s) { return s.name == name; });
        REQUIRE(specimen != all.end());
        const auto groups = steps_of(specimen->spec);
        const sheet::Step* step = find(groups, symbol);
        REQUIRE(step != nullptr);
        std::string words = sheet::plain(step->formula);
        for (auto at = words.find("\u00a0"); at != std::string::npos; at = words.find("\u00a0"))
            words.replace(at, std::string("\u00a0").size(), " ");
        return words;
    };
    CHECK(formula("latch", "Lc") == "nt (d + Td)");
    CHECK(formula("few thick coils", "Lc") == "(nt + 1.5) (d + Td)");
    CHECK(formula("handbook school", "Lc") == "nt d");
    CHECK(formula("latch", "τj") == "τc");
    CHECK(formula("handbook school", "τj") == "k τc");
    CHECK(formula("Wahl's factor at full travel", "τj") == "KW τ2");
    CHECK(formula("latch", "ΔDe") == "0.1 (m2 − 0.8 m d − 0.2 d2)/D");
    CHECK(formula("Wahl's factor at full travel", "ΔDe") == "√(D2 + (m2 − d2)/π2) − D");
    CHECK(formula("handbook school", "Ln") == "Lc + ag (L0 − L2)");
    CHECK(formula("cyclic, Goodman", "nf") == "1/(τa/Sse + τm/Ssu)");
    CHECK(formula("cyclic, Sines", "nf") == "Ssa/τa");
    CHECK(formula("cyclic, Goodman", "Sa").starts_with("1.5 n"));
}

TEST_CASE("a spring that pushes itself sideways is told so and has no transverse rate in its calculation", "[report]") {
    // Spring B of the check values, E15.3: its transverse rate falls to zero 7.38 mm down.
    const auto groups =
        steps_of(specimen({"EN10270-1-SH", 2.0, 16.0, 14.5, 100.0, spring::Ends::closed_ground, 95.0, 86.0}));
    CHECK(find(groups, "RQ1") != nullptr);
    for (const char* symbol : {"RQ2", "FQ2", "U2", "τQ"}) {
        INFO(symbol);
        CHECK(find(groups, symbol) == nullptr);
    }
    bool is_said = false;
    for (const sheet::StepGroup& group : groups)
        for (const sheet::Step& step : group.steps)
            is_said |= step.value == "none: the spring pushes itself sideways there";
    CHECK(is_said);
}

TEST_CASE("a formula mistyped or a value altered is found out by reckoning", "[report]") {
    const auto groups = steps_of(specimen(latch()));
    sheet::Step step = *find(groups, "R");
    CHECK_THAT(PrintedLine(step.numbers).value(),
               WithinAbs(read_literal(step.value).value, allowed(step, PrintedLine(step.numbers))));
    const Literal value = read_literal(step.value);
    CHECK(std::abs(PrintedLine(step.numbers).value() - (value.value + 2.0 * value.last_digit)) >
          allowed(step, PrintedLine(step.numbers)));
    CHECK_THAT(PrintedLine("2 · (3 − 0.5)/(√(4) + 0.5)").value(), WithinAbs(2.0, 1e-15));
    CHECK_THROWS(PrintedLine("2 ? 3"));
}

}  // namespace
}  // namespace seatload::test
