// SPDX-License-Identifier: MIT
#include <seatload/sheet/figures.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::sheet {
namespace {

constexpr int kLengthDecimals = 3;
constexpr int kInchDecimals = 3;            ///< of a length, at least
constexpr int kTolerancedInchDecimals = 4;  ///< of one with a tolerance and of a bound, at least
constexpr int kLimitDigits = 3;             ///< significant ones of a limit that is converted, at least

/// A metric unit beside the one on a paper in inches.
struct Pair {
    const char* metric;
    const char* inch;
    double metric_in_one;  ///< how much of the metric unit makes one of the other (exact by definition, lbf rounded)
    int further_decimals;  ///< so that the step is no smaller than the metric one
    int exact_decimals;    ///< so that it is no larger
};

constexpr double kPoundForce = 4.4482216152605;  // N: 0.45359237 kg x 9.80665 m/s2
constexpr double kInch = 25.4;                   // mm

constexpr Pair pair(Unit unit) {
    switch (unit) {
        case Unit::newton:
            return {"N", "lbf", kPoundForce, 0, 1};
        case Unit::mpa:
            return {"MPa", "ksi", 1000.0 * kPoundForce / (kInch * kInch), 0, 1};
        case Unit::newton_per_mm:
            return {"N/mm", "lbf/in", kPoundForce / kInch, -1, 0};
        case Unit::gram:
            return {"g", "oz", 28.349523125, 1, 2};
        default:
            return {"mm", "in", kInch, 1, 2};
    }
}

/// What is rounded one way is a limit.
int further_decimals(Unit unit, Rounding rounding) {
    return rounding == Rounding::nearest ? pair(unit).further_decimals : pair(unit).exact_decimals;
}

/// 3 of 123.4, 1 of 1.234, 0 of 0.1234, -1 of 0.01234.
int digits_before_point(double value) {
    return value == 0.0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
}

int decimals_in(const std::string& text) {
    const auto point = text.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

/// Decimals needed to write the number exactly, at most so many.
int decimals_of(double value, int most) { return decimals_in(trimmed(value, most)); }

/// The smaller a load, the more decimals: 3 from 1 N on, so that three significant digits are always there.
int most_load_decimals(double load) { return load >= 1.0 ? 3 : load >= 0.1 ? 4 : 5; }

int load_decimals(const record::LoadAtLength& load) {
    const int most = most_load_decimals(in_newton(load.nominal));
    return std::max({decimals_of(in_newton(load.nominal), most), decimals_of(in_newton(load.plus), most),
                     decimals_of(in_newton(load.minus), most)});
}

/// A nominal value with its deviations, in whole steps of its last decimal.
struct Toleranced {
    double nominal;
    double plus;
    double minus;
    int decimals;

    std::string text() const {
        const std::string up = fixed(plus, decimals);
        const std::string down = fixed(minus, decimals);
        if (up == down) return fixed(nominal, decimals) + " ± " + up;
        return fixed(nominal, decimals) + " +" + up + "/−" + down;
    }
};

double rounded(double value, int decimals, Rounding rounding) {
    const double steps = std::pow(10.0, decimals);
    constexpr double kNoise = 1e-9;  // of a step, from the conversion
    switch (rounding) {
        case Rounding::down:
            return std::floor(value * steps + kNoise) / steps;
        case Rounding::up:
            return std::ceil(value * steps - kNoise) / steps;
        default:
            return value;  // written to the nearest step
    }
}

/// The limits written with so many decimals in a unit that holds so much of the metric one; none lies outside.
Toleranced written(const Toleranced& exact, double metric_in_one, int decimals) {
    const double steps = std::pow(10.0, decimals);
    const double nominal = std::round(exact.nominal / metric_in_one * steps) / steps;
    const auto inside = [&](double room) { return std::max(0.0, rounded(room, decimals, Rounding::down)); };
    double plus = inside((exact.nominal + exact.plus) / metric_in_one - nominal);
    double minus = inside(nominal - (exact.nominal - exact.minus) / metric_in_one);
    // What is alike both ways stays so.
    if (fixed(exact.plus, exact.decimals) == fixed(exact.minus, exact.decimals)) plus = minus = std::min(plus, minus);
    return {nominal, plus, minus, decimals};
}

Toleranced converted(const Toleranced& metric, const Pair& pair) {
    const int least = pair.metric_in_one == kInch ? kTolerancedInchDecimals : 0;
    return written(metric, pair.metric_in_one, std::max(metric.decimals + pair.exact_decimals, least));
}

Toleranced toleranced_length(Length nominal, Length plus_minus, int least_decimals) {
    const int decimals = std::max(length_decimals(nominal, plus_minus), least_decimals);
    return {in_mm(nominal), in_mm(plus_minus), in_mm(plus_minus), decimals};
}

Toleranced toleranced_load(const record::LoadAtLength& load, int least_decimals) {
    const int decimals = std::max(load_decimals(load), least_decimals);
    return written({in_newton(load.nominal), in_newton(load.plus), in_newton(load.minus), decimals}, 1.0, decimals);
}

std::string written(double value, Decimals decimals) {
    const std::string text = trimmed(value, decimals.most);
    return decimals_in(text) < decimals.least ? fixed(value, decimals.least) : text;
}

/// Both forms, with what follows the first; the second stays on one line.
std::string joined(const Amount& amount, const std::string& unit) {
    std::string metric = amount.metric;
    for (auto at = metric.find(' '); at != std::string::npos; at = metric.find(' ', at))
        metric.replace(at, 1, "\u00a0");
    return amount.inch + unit + " [" + metric + "]";
}

}  // namespace

std::string trimmed(double value, int most_decimals) {
    std::string text = fixed(value, most_decimals);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

int length_decimals(Length nominal, Length plus_minus) {
    return std::max(decimals_of(in_mm(nominal), kLengthDecimals), decimals_of(in_mm(plus_minus), kLengthDecimals));
}

std::string with_tolerance(Length nominal, Length plus_minus, int least_decimals) {
    return toleranced_length(nominal, plus_minus, least_decimals).text();
}

std::string metric_name(Unit unit) { return pair(unit).metric; }

std::string shown(const Amount& amount) { return amount.inch.empty() ? amount.metric : joined(amount, ""); }

std::string with_unit(const Amount& amount) {
    const Pair names = pair(amount.unit);
    return amount.inch.empty() ? amount.metric + " " + names.metric : joined(amount, std::string(" ") + names.inch);
}

std::string reference(const Amount& amount) { return reference(shown(amount)); }

std::string references_with_unit(const Amount& first, const Amount& second) {
    const auto both = [](const std::string& a, const std::string& b) { return reference(a) + "; " + reference(b); };
    Amount out{first.unit, both(first.metric, second.metric)};
    if (!first.inch.empty()) out.inch = both(first.inch, second.inch);
    return with_unit(out);
}

int decimals(const Amount& amount) {
    const auto mark = amount.metric.find_first_of(".,");
    if (mark == std::string::npos || mark > amount.metric.find(' ')) return 0;
    const auto end = amount.metric.find_first_not_of("0123456789", mark + 1);
    return static_cast<int>((end == std::string::npos ? amount.metric.size() : end) - mark - 1);
}

Figures::Figures(const Paper& paper) : mark_(paper.words.say("number.decimal_mark")), units_(paper.units) {}

std::string Figures::marked(std::string text) const {
    for (auto at = text.find('.'); at != std::string::npos; at = text.find('.', at + mark_.size()))
        text.replace(at, 1, mark_);
    return text;
}

std::string Figures::number(double value, Decimals decimals) const { return marked(written(value, decimals)); }

Amount Figures::amount(Unit unit, double value, Decimals decimals, Rounding rounding, InchDecimals inch) const {
    const double metric_value = rounded(value, decimals.most, rounding);
    const std::string metric = written(metric_value, decimals);
    Amount out{unit, marked(metric)};
    if (!has_inches()) return out;
    int inch_decimals = std::max(decimals_in(metric) + inch.further, inch.least);
    double in_inches = value / pair(unit).metric_in_one;
    if (rounding != Rounding::nearest) {
        // The metric limit as printed governs: the other never lies beyond it, and loses little of it.
        in_inches = metric_value / pair(unit).metric_in_one;
        inch_decimals = std::max(inch_decimals, kLimitDigits - digits_before_point(in_inches));
    }
    out.inch = marked(fixed(rounded(in_inches, inch_decimals, rounding), inch_decimals));
    return out;
}

Amount Figures::amount(Unit unit, double value, Decimals decimals, Rounding rounding) const {
    // A round number of millimetres, such as a length to test at, is seldom one in hundredths of an inch.
    const int least = unit != Unit::mm ? 0 : rounding == Rounding::nearest ? kInchDecimals : kTolerancedInchDecimals;
    return amount(unit, value, decimals, rounding, {further_decimals(unit, rounding), least});
}

Amount Figures::length(Length length, Decimals decimals, Rounding rounding) const {
    return amount(Unit::mm, in_mm(length), decimals, rounding);
}

Amount Figures::stress(Stress stress) const { return amount(Unit::mpa, in_mpa(stress), {0}); }

Amount Figures::significant(Unit unit, double value, int digits, Rounding rounding) const {
    const int metric = std::max(0, digits - digits_before_point(value));
    const int further = further_decimals(unit, rounding);
    return amount(unit, value, {metric}, rounding, {further, std::max(0, metric + further)});
}

Amount Figures::wire(Length diameter, int least_decimals) const {
    return amount(Unit::mm, in_mm(diameter), {kLengthDecimals, least_decimals}, Rounding::nearest,
                  {pair(Unit::mm).exact_decimals, kInchDecimals});
}

std::string Figures::wires_with_unit(
    Length smallest, Length largest,
    const std::function<std::string(const std::string&, const std::string&)>& joined) const {
    const int least =
        std::max({2, decimals_of(in_mm(smallest), kLengthDecimals), decimals_of(in_mm(largest), kLengthDecimals)});
    const Amount from = wire(smallest, least);
    const Amount to = wire(largest, least);
    Amount out{Unit::mm, joined(from.metric, to.metric)};
    if (has_inches()) out.inch = joined(from.inch, to.inch);
    return with_unit(out);
}

Amount Figures::toleranced(Length nominal, Length plus_minus, int least_decimals) const {
    const Toleranced metric = toleranced_length(nominal, plus_minus, least_decimals);
    Amount out{Unit::mm, marked(metric.text())};
    if (has_inches()) out.inch = marked(converted(metric, pair(Unit::mm)).text());
    return out;
}

Amount Figures::toleranced(const record::LoadAtLength& load, int least_decimals) const {
    const Toleranced metric = toleranced_load(load, least_decimals);
    Amount out{Unit::newton, marked(metric.text())};
    if (has_inches()) out.inch = marked(converted(metric, pair(Unit::newton)).text());
    return out;
}

LoadLimits Figures::limits(const record::LoadAtLength& load) const {
    const Toleranced metric = toleranced_load(load, 0);
    const Toleranced inch = converted(metric, pair(Unit::newton));
    const auto at = [&](double direction, double Toleranced::*deviation) {
        Amount out{Unit::newton, marked(fixed(metric.nominal + direction * metric.*deviation, metric.decimals))};
        if (has_inches()) out.inch = marked(fixed(inch.nominal + direction * inch.*deviation, inch.decimals));
        return out;
    };
    return {at(-1.0, &Toleranced::minus), at(0.0, &Toleranced::plus), at(1.0, &Toleranced::plus)};
}

std::string Figures::temperature(Celsius temperature, double plus_minus) const {
    const auto text = [&](double degrees, double deviation, int most, const char* unit) {
        const std::string room = deviation > 0.0 ? "\u00a0± " + number(deviation, {most}) : "";
        return number(degrees, {most}) + room + " " + unit;
    };
    std::string metric = text(temperature.degrees, plus_minus, 1, "°C");
    if (!has_inches()) return metric;
    // A whole degree Celsius is not known to a tenth of a degree Fahrenheit.
    const bool is_whole = std::round(temperature.degrees) == temperature.degrees;
    return text(1.8 * temperature.degrees + 32.0, 1.8 * plus_minus, is_whole ? 0 : 1, "°F") + " [" + metric + "]";
}

std::string Figures::unit(Unit unit) const {
    const Pair names = pair(unit);
    return has_inches() ? std::string(names.inch) + " [" + names.metric + "]" : names.metric;
}

std::string Figures::first_unit(Unit unit) const { return has_inches() ? pair(unit).inch : pair(unit).metric; }

}  // namespace seatload::sheet
