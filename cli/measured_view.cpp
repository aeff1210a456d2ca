// SPDX-License-Identifier: MIT
#include <cli/measured_view.hpp>

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/doubt_text.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

/// A measured number beside the reckoned one.
struct Beside {
    std::string name;
    std::string unit;
    bench::Stated<double> measured;
    double reckoned = 0.0;

    double difference() const { return measured.value - reckoned; }
    bool is_within() const { return std::abs(difference()) <= measured.plus_minus; }
};

/// The load of the spring reckoned from its dimensions at 20 °C, none above its free length.
double reckoned_load_n(const check::Evaluation& e, Length height) {
    return std::max(0.0, in_newton(e.rate * (e.spring.free_length - height)));
}

std::vector<Beside> all_beside(const record::Measured& measured, const check::Evaluation& e) {
    std::vector<Beside> all;
    if (measured.rate)
        all.push_back({"rate R",
                       "N/mm",
                       {in_newton_per_mm(measured.rate->value), in_newton_per_mm(measured.rate->plus_minus)},
                       in_newton_per_mm(e.rate)});
    for (const record::MeasuredLoad& load : measured.loads)
        all.push_back({"load at " + units::shown(load.height, 2),
                       "N",
                       {in_newton(load.load.value), in_newton(load.load.plus_minus)},
                       reckoned_load_n(e, load.height)});
    return all;
}

std::string heading(const record::Measured& measured) {
    std::string words = "On the bench";
    if (!measured.date.empty()) words += ", " + measured.date;
    if (!measured.readings.empty()) words += " (" + measured.readings + ")";
    return words + ", beside what the dimensions give:";
}

std::string verdict(const Beside& each) {
    return each.is_within() ? "within its ±" : each.difference() < 0.0 ? "weaker" : "stronger";
}

}  // namespace

std::string measured_text(const record::Measured& measured, const check::Evaluation& evaluation, int width) {
    using enum TextTable::Align;
    TextTable table({left, right, right, right, left});
    table.add({"", "measured", "reckoned", "difference", ""});
    for (const Beside& each : all_beside(measured, evaluation)) {
        const int decimals = decimals_for(each.measured.plus_minus);
        table.add({each.name, doubt_text(each.measured.value, each.measured.plus_minus) + ' ' + each.unit,
                   fixed(each.reckoned, decimals) + ' ' + each.unit,
                   signed_text(each.difference(), decimals) + ' ' + each.unit, verdict(each)});
    }
    return wrapped("  ", heading(measured), width, 4) + table.text(2);
}

Json measured_json(const record::Measured& measured, const check::Evaluation& evaluation) {
    Json json{{"date", measured.date},
              {"readings", measured.readings},
              {"wire_guessed", measured.wire_is_guessed},
              {"values", Json::array()}};
    for (const Beside& each : all_beside(measured, evaluation))
        json["values"].push_back({{"name", each.name},
                                  {"unit", each.unit},
                                  {"measured", each.measured.value},
                                  {"plus_minus", each.measured.plus_minus},
                                  {"reckoned", each.reckoned},
                                  {"within", each.is_within()}});
    return json;
}

}  // namespace seatload::cli
