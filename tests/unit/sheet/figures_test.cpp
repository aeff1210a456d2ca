// SPDX-License-Identifier: MIT
// Numbers on papers: decimals, marks, and inches beside millimetres. Conversions: inch = 25.4 mm, pound = 0.45359237 kg
// (international yard and pound agreement, 1959), standard gravity 9.80665 m/s2 (3rd CGPM, 1901).
#include <cmath>

#include <support/check.hpp>

#include <seatload/core/text.hpp>
#include <seatload/sheet/figures.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

constexpr double kInch = 25.4;
constexpr double kPoundForce = 0.45359237 * 9.80665;

Figures inches() {
    Paper out = paper();
    out.units = Units::inch;
    return Figures(out);
}

std::string spaced(std::string words) {
    for (auto at = words.find("\u00a0"); at != std::string::npos; at = words.find("\u00a0")) words.replace(at, 2, " ");
    return words;
}

/// The limits that a toleranced number allows: "4.80 ± 0.30" or "4.80 +0.50/−0.30".
struct Read {
    double least;
    double most;
};
Read limits_of(const std::string& words) {
    const double nominal = std::stod(words);
    const std::string rest = words.substr(words.find(' ') + 1);
    const std::string both = "± ";
    if (rest.starts_with(both)) {
        const double room = std::stod(rest.substr(both.size()));
        return {nominal - room, nominal + room};
    }
    const std::string minus = "/−";
    const double down = std::stod(rest.substr(rest.find(minus) + minus.size()));
    return {nominal - down, nominal + std::stod(rest.substr(1))};
}

TEST_CASE("a paper in inches has the metric value beside, in square brackets", "[figures]") {
    // Worked by hand: 8.45/25.4 = 0.33268; (8.75/25.4 - 0.3327) = 0.01179, (0.3327 - 8.15/25.4) = 0.01183.
    CHECK(spaced(with_unit(inches().toleranced(8.45 * mm, 0.3 * mm))) == "0.3327 ± 0.0117 in [8.45 ± 0.30]");
    CHECK(with_unit(inches().length(19.3 * mm)) == "0.760 in [19.3]");
    CHECK(with_unit(inches().length(9.0 * mm)) == "0.354 in [9]");
    CHECK(with_unit(inches().wire(0.8 * mm)) == "0.0315 in [0.80]");
    CHECK(with_unit(inches().stress(1000.0 * MPa)) == "145 ksi [1000]");
    CHECK(with_unit(inches().rate(1.277 * newton_per_mm)) == "7.29 lbf/in [1.277]");
    CHECK(with_unit(inches().amount(Unit::gram, 28.35, {2})) == "1.000 oz [28.35]");
    CHECK(reference(inches().length(25.4 * mm)) == "(1.000 [25.4])");
    CHECK(spaced(inches().temperature({20.0}, 5.0)) == "68 ± 9 °F [20 ± 5 °C]");
    CHECK(inches().unit(Unit::newton) == "lbf [N]");
    CHECK(Figures(paper()).unit(Unit::newton) == "N");
    CHECK(with_unit(Figures(paper()).length(19.3 * mm)) == "19.3 mm");
}

TEST_CASE("limits in inches never lie outside the metric ones", "[figures]") {
    int count = 0;
    for (double nominal = 0.2; nominal < 200.0; nominal = nominal * 1.013 + 0.01)
        for (const double share : {0.003, 0.02, 0.11}) {
            const double rounded = std::round(nominal * 100.0) / 100.0;
            const double room = std::max(0.01, std::round(nominal * share * 100.0) / 100.0);
            const Amount amount = inches().toleranced(rounded * mm, room * mm);
            INFO(amount.metric << " mm: " << amount.inch << " in");
            const Read read = limits_of(amount.inch);
            CHECK(read.least * kInch >= rounded - room - 1e-9);
            CHECK(read.most * kInch <= rounded + room + 1e-9);
            // Nor do they take more than two steps of what is allowed.
            const double step = amount.metric.find('.') == std::string::npos ? 0.01 : 0.001;
            CHECK(read.most - read.least >= 2.0 * room / kInch - 4.0 * step);
            ++count;
        }
    CHECK(count > 1000);
}

TEST_CASE("load limits in pounds-force never lie outside those in newtons", "[figures]") {
    for (double nominal = 0.15; nominal < 900.0; nominal = nominal * 1.05 + 0.03) {
        const double rounded = std::round(nominal * 1000.0) / 1000.0;
        const record::LoadAtLength load{
            15.0 * mm, rounded * newton, 0.08 * rounded * newton, 0.05 * rounded * newton, {}};
        const Amount amount = inches().toleranced(load);
        const Read metric = limits_of(amount.metric);
        const Read read = limits_of(amount.inch);
        INFO(amount.metric << " N: " << amount.inch << " lbf");
        CHECK(read.least * kPoundForce >= rounded * 0.95 - 0.0006);
        CHECK(read.most * kPoundForce <= rounded * 1.08 + 0.0006);
        CHECK(read.least < read.most);
        const LoadLimits limits = inches().limits(load);
        CHECK_THAT(std::stod(limits.least.inch), WithinAbs(read.least, 1e-9));
        CHECK_THAT(std::stod(limits.most.inch), WithinAbs(read.most, 1e-9));
        CHECK_THAT(std::stod(limits.least.metric), WithinAbs(metric.least, 1e-9));
    }
}

TEST_CASE("a limit in inches never lies beyond the metric one as printed, and loses little of it", "[figures]") {
    struct Row {
        Unit unit;
        double metric_in_one;  // inch 25.4 mm, pound 0.45359237 kg x 9.80665 m/s2
    };
    for (const Row row : {Row{Unit::mm, 25.4}, Row{Unit::newton, 4.4482216152605}, Row{Unit::mpa, 6.894757293168361}})
        for (double value = 0.011; value < 900.0; value *= 1.37)
            for (const Rounding way : {Rounding::down, Rounding::up}) {
                const Amount two = inches().significant(row.unit, value, 2, way);
                const Amount fixed = inches().amount(row.unit, value, {2}, way);
                for (const Amount& amount : {two, fixed}) {
                    INFO(amount.metric << " / " << amount.inch);
                    const double metric = std::stod(amount.metric), inch = std::stod(amount.inch) * row.metric_in_one;
                    CHECK((way == Rounding::down ? inch <= metric + 1e-9 : inch >= metric - 1e-9));
                    CHECK(std::abs(inch - metric) <= 0.01 * metric + 1e-9);  // three significant digits
                }
            }
}

TEST_CASE("a number in inches promises no more than the metric one, nor ten times less", "[figures]") {
    const struct {
        Unit unit;
        double metric_in_one;
    } kUnits[] = {{Unit::mm, kInch},
                  {Unit::newton, kPoundForce},
                  {Unit::mpa, 1000.0 * kPoundForce / (kInch * kInch)},
                  {Unit::newton_per_mm, kPoundForce / kInch},
                  {Unit::gram, 453.59237 / 16.0}};
    const auto decimals_in = [](const std::string& text) {
        const auto point = text.find('.');
        return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
    };
    for (const auto& row : kUnits)
        for (const double value : {123.0, 12.5, 12.25, 1.125}) {
            const Amount amount = inches().amount(row.unit, value, {3});
            INFO(amount.metric << " / " << amount.inch);
            const double metric_step = std::pow(10.0, -decimals_in(amount.metric));
            const double inch_step = std::pow(10.0, -decimals_in(amount.inch)) * row.metric_in_one;
            CHECK(inch_step < 10.0 * metric_step);
            // But a length to test at is exact, and has three decimals at least.
            if (row.unit == Unit::mm && decimals_in(amount.inch) == 3 && metric_step > 0.01)
                CHECK(inch_step <= metric_step);
            else if (decimals_in(amount.inch) > 0)
                CHECK(inch_step >= metric_step);
            CHECK_THAT(std::stod(amount.inch) * row.metric_in_one, WithinAbs(value, 0.5 * inch_step));
        }
}

TEST_CASE("numbers of three significant digits have about as many in inches", "[figures]") {
    // 540/25.4 = 21.2598; 100 N = 22.481 lbf; 1517 MPa = 220.02 ksi.
    CHECK(with_unit(inches().significant(Unit::mm, 540.2, 3)) == "21.3 in [540]");
    CHECK(with_unit(inches().force(100.04 * newton)) == "22.5 lbf [100]");
    CHECK(with_unit(inches().stress(1517.0 * MPa)) == "220 ksi [1517]");
}

TEST_CASE("the two wires between which a maker may choose have as many decimals", "[figures]") {
    const auto joined = [](const std::string& from, const std::string& to) { return from + " to " + to; };
    CHECK(Figures(paper()).wires_with_unit(0.78 * mm, 0.86 * mm, joined) == "0.78 to 0.86 mm");
    // 0.78/25.4 = 0.030709, 0.86/25.4 = 0.033858
    CHECK(spaced(inches().wires_with_unit(0.78 * mm, 0.86 * mm, joined)) == "0.0307 to 0.0339 in [0.78 to 0.86]");
    CHECK(Figures(paper()).wires_with_unit(0.165 * mm, 0.2 * mm, joined) == "0.165 to 0.200 mm");
}

TEST_CASE("a bound is rounded towards the safe side", "[figures]") {
    const Figures metric(paper());
    CHECK(metric.length(0.9659 * mm, {2}, Rounding::down).metric == "0.96");
    CHECK(metric.length(0.9611 * mm, {2}, Rounding::up).metric == "0.97");
    CHECK(metric.length(0.97 * mm, {2}, Rounding::down).metric == "0.97");
    // 20.7/25.4 = 0.81496; 6.6/25.4 = 0.25984
    CHECK(inches().length(20.7 * mm, {3}, Rounding::down).inch == "0.8149");
    CHECK(inches().length(6.6 * mm, {3}, Rounding::up).inch == "0.2599");
    CHECK(inches().length(6.6 * mm, {3}, Rounding::down).inch == "0.2598");
}

TEST_CASE("small loads keep three significant digits", "[figures]") {
    const Figures metric(paper());
    record::LoadAtLength load{5.0 * mm, 0.4567 * newton, 0.0212 * newton, 0.0212 * newton, {}};
    CHECK(shown(metric.toleranced(load)) == "0.4567 ± 0.0212");
    load = {5.0 * mm, 0.04567 * newton, 0.00212 * newton, 0.00102 * newton, {}};
    CHECK(shown(metric.toleranced(load)) == "0.04567 +0.00212/−0.00102");
    load = {5.0 * mm, 4.8 * newton, 0.3 * newton, 0.3 * newton, {}};
    CHECK(shown(metric.toleranced(load)) == "4.8 ± 0.3");
    CHECK(shown(metric.toleranced(load, 2)) == "4.80 ± 0.30");
}

TEST_CASE("numbers have the decimal mark of the language", "[figures]") {
    const Figures german{Paper{Wording(io::builtin_wording("de"))}};
    CHECK(german.number(7.5, {2}) == "7,5");
    CHECK(with_unit(german.toleranced(8.45 * mm, 0.3 * mm)) == "8,45 ± 0,30 mm");
    CHECK(german.temperature({20.5}) == "20,5 °C");
    CHECK(decimals(german.toleranced(8.45 * mm, 0.3 * mm)) == 2);
    CHECK(decimals(german.length(15.0 * mm)) == 0);
}

}  // namespace
}  // namespace seatload::test
