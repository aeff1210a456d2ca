// SPDX-License-Identifier: MIT
#include "published/row_check.hpp"

#include <cmath>
#include <stdexcept>

#include <seatload/core/text.hpp>

#include "published/printed.hpp"

namespace seatload::published {
namespace {

// A value half way between two printed ones rounds either way; this much keeps the last bit of a double out of the
// verdict.
constexpr double kLastBits = 1e-12;

double tie_slack(const Printed& printed) { return 1e-6 * printed.half_unit + kLastBits * std::abs(printed.value); }

bool is_printed_alike(const Printed& printed, double got) {
    return std::abs(got - printed.value) <= printed.half_unit + tie_slack(printed);
}

std::string in_printed_unit(const Printed& printed, double base) {
    const std::string number = significant(base / printed.unit, 12);
    return printed.unit_name.empty() ? number : number + " " + printed.unit_name;
}

Outcome judged(bool passed, double used, const std::string& rule) { return {passed, used, rule}; }

Outcome check_disagreement(const Disagreement& disagreement, const Printed& printed, double got) {
    if (disagreement.residual == "infinite")
        return judged(std::isinf(got), 0.0, "known disagreement: ours is infinite");
    if (is_printed_alike(printed, got)) return judged(false, 0.0, "listed as a known disagreement, but now it agrees");
    const Printed residual = read_printed(nullptr, disagreement.residual);
    const double ours = (got - printed.value) / printed.value;
    return judged(is_printed_alike(residual, ours), 0.0,
                  "known disagreement of " + disagreement.residual + ", now " + significant(ours, 6));
}

Outcome check_truncated(const Printed& printed, double got) {
    const double past = (std::abs(got) - std::abs(printed.value)) / (2.0 * printed.half_unit);
    return judged(past >= -1e-6 && past < 1.0, std::abs(past), "truncated by the source");
}

Outcome check_rounded_up(const std::string& step_text, const units::Dimension* dimension, const Printed& printed,
                         double got) {
    const double step = read_printed(dimension, step_text).value;
    const double below = (printed.value - got) / step;
    return judged(below >= -1e-9 && below < 1.0, std::abs(below), "rounded up by the source to steps of " + step_text);
}

Outcome check_named(const NamedTolerance& tolerance, const Printed& printed, double got) {
    if (is_printed_alike(printed, got))
        return judged(false, 0.0, "agrees to the last digit: the wider tolerance is not needed");
    const double used =
        std::abs(got - printed.value) / (printed.half_unit + tolerance.relative * std::abs(printed.value));
    return judged(used <= 1.0, used,
                  "within " + significant(tolerance.relative, 6) + " besides rounding: " + tolerance.reason);
}

Outcome check_nearest(const Printed& printed, double got) {
    const double used = std::abs(got - printed.value) / (printed.half_unit + tie_slack(printed));
    return judged(used <= 1.0, used, "within " + in_printed_unit(printed, printed.half_unit));
}

Outcome judge(const Subject& subject, const Row& row, const units::Dimension* dimension, const Printed& printed,
              double got) {
    if (row.disagrees) return check_disagreement(*row.disagrees, printed, got);
    if (!row.rounded_up_to.empty()) return check_rounded_up(row.rounded_up_to, dimension, printed, got);
    if (row.rounding == Rounding::truncated) return check_truncated(printed, got);
    if (row.tolerance.empty()) return check_nearest(printed, got);
    const auto named = subject.tolerances.find(row.tolerance);
    if (named == subject.tolerances.end()) throw std::runtime_error("no tolerance is called \"" + row.tolerance + "\"");
    return check_named(named->second, printed, got);
}

std::string title(const Case& one, const Row& row) {
    return one.id + (row.output.empty() ? "" : " " + row.output) + " (" + row.quantity + ")";
}

Outcome check(const Subject& subject, const Case& one, const Row& row) {
    const Quantity& wanted = quantity(row.quantity);
    Inputs inputs = one.inputs;
    for (const auto& [name, value] : row.given)
        std::visit([&, key = name](const auto& v) { inputs.state(key, v); }, value);
    if (row.given.contains(row.quantity)) throw std::runtime_error("the quantity wanted is itself given");
    const double got = inputs.number(row.quantity);
    if (row.expected == "none")
        return {std::isinf(got), 0.0, title(one, row) + ": got " + shortest(got) + ", expected no real root"};
    const Printed printed = read_printed(wanted.dimension, row.expected);
    Outcome outcome = judge(subject, row, wanted.dimension, printed, got);
    outcome.report = title(one, row) + ": got " + in_printed_unit(printed, got) + ", expected " + row.expected + ", " +
                     outcome.report;
    return outcome;
}

}  // namespace

Outcome check_row(const Subject& subject, const Case& one, const Row& row) {
    Outcome outcome;
    try {
        outcome = check(subject, one, row);
    } catch (const std::exception& problem) {
        outcome = {false, 0.0, title(one, row) + ": " + problem.what()};
    }
    outcome.report += " [" + one.source + "]";
    return outcome;
}

}  // namespace seatload::published
