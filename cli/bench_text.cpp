// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/core/assert.hpp>
#include <seatload/core/line_wrap.hpp>
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
    return wrapped(view.file + ": ", cut_name(words, width), width, 2);
}

/// "+1.80 ±0.04 N".
template <class Q>
std::string signed_doubt(const bench::Difference<Q>& d, const std::string& unit) {
    const double doubt = in_base_unit(d.estimate.expanded);
    const int decimals = decimals_for(doubt);
    return signed_text(in_base_unit(d.estimate.value), decimals) + " ±" + fixed(doubt, decimals) + ' ' + unit;
}

template <class Q>
std::string finding(const bench::Difference<Q>& d) {
    return d.significant ? "more than the ±" : "within the ±";
}

/// "At 15.00 mm (seated) it carries 1.800 N less (34 %): 0.092 N of it by its rate, 1.708 N by its free length."
std::string load_words(const bench::LoadDifference& load, Force of_second) {
    const double by = in_newton(load.load.estimate.value);
    const std::string where = "At " + units::shown(load.asked.height.value, 2) + " (" + load.asked.name + ") ";
    if (!load.load.significant) return where + "no difference can be told: it lies within the ±.";
    const int decimals = decimals_for(in_newton(load.load.estimate.expanded));
    std::string words = where + "it carries " + fixed(std::abs(by), decimals) + " N " + (by < 0.0 ? "less" : "more");
    words += " (" + fixed(100.0 * std::abs(by) / in_newton(of_second), 0) + " %)";
    const double sign = by < 0.0 ? -1.0 : 1.0;
    return words + ": " + units::shown(sign * load.rate_part, decimals) + " of it by its rate, " +
           units::shown(sign * load.free_length_part, decimals) + " by its free length.";
}

const bench::MeasuredSpring& spring_named(const BenchView& view, const std::string& name) {
    for (const BenchedSpring& spring : view.springs)
        if (spring.run.name == name) return spring.measured;
    throw InternalError("a comparison with a spring that is not there");
}

/// The loads at heights where both springs push.
std::vector<bench::LoadDifference> loads_of_both(const bench::Comparison& c, const bench::MeasuredSpring& second) {
    std::vector<bench::LoadDifference> loads;
    for (std::size_t i = 0; i < c.loads.size() && i < second.loads.size(); ++i) {
        const Force of_second = second.loads[i].force.value;
        const Force of_first = of_second + c.loads[i].load.estimate.value;
        if (of_first > 0.0 * newton && of_second > 0.0 * newton) loads.push_back(c.loads[i]);
    }
    return loads;
}

Force load_of(const bench::MeasuredSpring& spring, const bench::AskedHeight& asked) {
    return bench::load_at(spring, asked.height).value;
}

std::string comparison_text(const BenchView& view, const bench::Comparison& c, int width) {
    const bench::MeasuredSpring& second = spring_named(view, c.second);
    const auto loads = loads_of_both(c, second);
    TextTable table({left, right, left});
    table.add({"rate R", signed_doubt(c.rate, "N/mm"), finding(c.rate)});
    table.add({"free length of the line", signed_doubt(c.free_length, "mm"), finding(c.free_length)});
    for (const bench::LoadDifference& load : loads)
        table.add({"load at " + units::shown(load.asked.height.value, 2) + " (" + load.asked.name + ')',
                   signed_doubt(load.load, "N"), finding(load.load)});
    std::string text =
        '\n' + wrapped("", '"' + cut_name(c.first, width) + "\" beside \"" + cut_name(c.second, width) + '"', width, 2);
    for (const bench::LoadDifference& load : loads)
        text += wrapped("  ", load_words(load, load_of(second, load.asked)), width, 4);
    return text + table.text(2);
}

std::string spring_text(const BenchedSpring& spring, bool details, int width) {
    std::string text =
        '\n' + wrapped("", cut_name(spring.run.name, width) + " (" + std::string(bench::word(spring.run.role)) + ')',
                       width, 2);
    if (!details) return text + bench_brief_text(spring, width);
    text += bench_results_text(spring, width) + bench_wire_text(spring, width);
    return text + bench_budget_text(spring, width) + bench_points_text(spring, width);
}

}  // namespace

std::string bench_text(const BenchView& view, int width) {
    std::string text = heading(view, width);
    for (const bench::Comparison& comparison : view.comparisons) text += comparison_text(view, comparison, width);
    for (const BenchedSpring& spring : view.springs) text += spring_text(spring, view.details, width);
    return text;
}

std::string bench_more_text(int width) {
    return '\n' + wrapped("",
                          "±: the true value lies within it with some 95 % likelihood. --details tells every reading, "
                          "all wires that fit and where each ± comes from, too.",
                          width, 2);
}

}  // namespace seatload::cli
