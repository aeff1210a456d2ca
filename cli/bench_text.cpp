// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/bench_spring_text.hpp>
#include <cli/doubt_text.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using enum TextTable::Align;

std::string heading(const BenchView& view, int width) {
    std::string words = view.session.title.empty() ? std::string("bench session") : view.session.title;
    if (!view.session.date.empty()) words += ", " + view.session.date;
    return wrapped(view.file + ": ", words, width, 2);
}

/// "+1.80 ±0.04 N".
template <class Q>
std::string signed_doubt(const bench::Difference<Q>& d, const std::string& unit) {
    const double value = in_base_unit(d.estimate.value);
    return (value < 0.0 ? "" : "+") + doubt_text(value, in_base_unit(d.estimate.expanded)) + ' ' + unit;
}

template <class Q>
std::string finding(const bench::Difference<Q>& d) {
    return d.significant ? "a difference" : "within the uncertainty";
}

std::string signed_newton(Force force, int decimals) {
    return (in_newton(force) < 0.0 ? "" : "+") + units::shown(force, decimals);
}

std::string comparison_text(const bench::Comparison& c, int width) {
    TextTable table({left, right, left, right, right});
    table.add({"", "difference", "", "by rate", "by length"});
    table.add({"rate R", signed_doubt(c.rate, "N/mm"), finding(c.rate)});
    table.add({"free length", signed_doubt(c.free_length, "mm"), finding(c.free_length)});
    for (const bench::LoadDifference& load : c.loads) {
        const int decimals = decimals_for(in_newton(load.load.estimate.expanded));
        table.add({"load at " + units::shown(load.asked.height.value, 2), signed_doubt(load.load, "N"),
                   finding(load.load), signed_newton(load.rate_part, decimals),
                   signed_newton(load.free_length_part, decimals)});
    }
    return '\n' + wrapped("", c.first + ", less " + c.second, width, 2) + table.text(2);
}

std::string spring_text(const BenchedSpring& spring, int width) {
    std::string text =
        '\n' + wrapped("", spring.run.name + " (" + std::string(bench::word(spring.run.role)) + ')', width, 2);
    text += bench_results_text(spring, width) + bench_wire_text(spring, width);
    return text + bench_budget_text(spring, width) + bench_points_text(spring, width);
}

}  // namespace

std::string bench_text(const BenchView& view, int width) {
    std::string text = heading(view, width);
    for (const BenchedSpring& spring : view.springs) text += spring_text(spring, width);
    for (const bench::Comparison& comparison : view.comparisons) text += comparison_text(comparison, width);
    return text;
}

}  // namespace seatload::cli
