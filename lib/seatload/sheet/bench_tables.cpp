// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_tables.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/bench_figures.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

using bench::Estimate;
using bench::LoadAtHeight;
using bench::MeasuredSpring;

constexpr std::size_t kHeightsInFirst = 2;  ///< table, beside rate and free length
constexpr std::size_t kHeightsInTable = 4;
constexpr double kNameWidth = 38.0;
constexpr std::size_t kLoadPanels = 2;

std::string rate_name() { return "rate R [N/mm]"; }
std::string free_length_name() { return "free length " + with_sub("L", "0") + " [mm]"; }

std::string height_words(const bench::AskedHeight& asked, const std::string& name) {
    const double plus_minus = in_mm(asked.height.plus_minus);
    const std::string room = plus_minus > 0.0 ? " ± " + significant(plus_minus, 2) : "";
    return name + ", " + fixed(in_mm(asked.height.value), 2) + room + " mm";
}

/// At the head of a column.
std::string column_words(const bench::AskedHeight& asked) {
    return "F [N], " + height_words(asked, short_name(asked.name));
}

template <class Q>
std::string largest_part(const Estimate<Q>& e) {
    if (e.budget.empty()) return "";
    const auto& most = e.budget.front();
    return most.name + ", " + fixed(100.0 * most.share, 0) + " %" + (most.common ? ", common" : "");
}

template <class Q>
std::vector<std::string> result_row(const std::string& name, const Estimate<Q>& e, const std::string& remark = "") {
    const ValueWithDoubt v = with_doubt(e);
    return {name,
            v.value,
            "± " + v.doubt,
            fixed(e.coverage_factor, 2),
            degrees_of_freedom(e.degrees_of_freedom),
            largest_part(e) + remark};
}

template <class Q>
ShareBars budget_bars(const std::string& title, const Estimate<Q>& e, std::size_t most) {
    ShareBars out{title, {}};
    double rest = 0.0;
    for (std::size_t i = 0; i < e.budget.size(); ++i) {
        // A last one alone needs no "others".
        if (i + 1 < most || (i + 1 == most && e.budget.size() == most))
            out.bars.push_back({e.budget[i].name, e.budget[i].share});
        else
            rest += e.budget[i].share;
    }
    if (e.budget.size() > most) out.bars.push_back({std::to_string(e.budget.size() - most + 1) + " others", rest});
    return out;
}

std::string star(bool significant) { return significant ? "\u00a0*" : ""; }

template <class Q>
std::string difference_words(const bench::Difference<Q>& d) {
    return with_doubt(d.estimate).together() + star(d.significant);
}

std::string load_difference_words(const bench::LoadDifference& d) {
    const double doubt = in_newton(d.load.estimate.expanded);
    return difference_words(d.load) + "\nby rate " + with_doubt(in_newton(d.rate_part), doubt).value + "\nby length " +
           with_doubt(in_newton(d.free_length_part), doubt).value;
}

/// Heights from `from` on, as many as one table takes.
std::size_t end_of(std::size_t from, std::size_t count) {
    return std::min(count, from + (from == 0 ? kHeightsInFirst : kHeightsInTable));
}

/// Columns of equal width after that of the names.
std::vector<double> widths_of(std::size_t columns, double width) {
    std::vector<double> out{kNameWidth};
    for (std::size_t i = 0; i < columns; ++i) out.push_back((width - kNameWidth) / static_cast<double>(columns));
    return out;
}

const LoadAtHeight* load_at_height(const MeasuredSpring& spring, const bench::AskedHeight& asked) {
    for (const LoadAtHeight& load : spring.loads)
        if (load.asked.height.value == asked.height.value && load.asked.name == asked.name) return &load;
    return nullptr;
}

RuledTable springs_table(const std::vector<const MeasuredSpring*>& springs, std::size_t from, double width) {
    const auto& asked = springs.front()->loads;
    const std::size_t end = end_of(from, asked.size());
    RuledTable table;
    table.rows.push_back({"spring"});
    if (from == 0) table.rows[0].insert(table.rows[0].end(), {rate_name(), free_length_name()});
    for (std::size_t i = from; i < end; ++i) table.rows[0].push_back(column_words(asked[i].asked));
    for (const MeasuredSpring* s : springs) {
        std::vector<std::string> row{short_name(spring_words(*s))};
        if (from == 0) {
            row.push_back(with_doubt(s->rate).together());
            row.push_back(with_doubt(s->free_length).together());
        }
        for (std::size_t i = from; i < end; ++i) {
            const LoadAtHeight* load = load_at_height(*s, asked[i].asked);
            row.push_back(load == nullptr ? "not asked"
                                          : with_doubt(load->force).together() + (load->outside ? " (beyond)" : ""));
        }
        table.rows.push_back(std::move(row));
    }
    table.widths = widths_of(table.rows[0].size() - 1, width);
    return table;
}

RuledTable differences_table(const std::vector<bench::Comparison>& comparisons, std::size_t from, double width) {
    const auto& asked = comparisons.front().loads;
    const std::size_t end = end_of(from, asked.size());
    RuledTable table;
    table.rows.push_back({"difference"});
    if (from == 0) table.rows[0].insert(table.rows[0].end(), {rate_name(), free_length_name()});
    for (std::size_t i = from; i < end; ++i) table.rows[0].push_back(column_words(asked[i].asked));
    for (const bench::Comparison& c : comparisons) {
        std::vector<std::string> row{short_name(c.first) + "\nless " + short_name(c.second)};
        if (from == 0) {
            row.push_back(difference_words(c.rate));
            row.push_back(difference_words(c.free_length));
        }
        for (std::size_t i = from; i < end; ++i)
            row.push_back(i < c.loads.size() ? load_difference_words(c.loads[i]) : "not asked");
        table.rows.push_back(std::move(row));
    }
    table.widths = widths_of(table.rows[0].size() - 1, width);
    return table;
}

}  // namespace

RuledTable bench_results_table(const MeasuredSpring& s, double width) {
    RuledTable table;
    table.widths = {57.0, 17.0, 17.0, 10.0, 9.0};
    double rest = width;
    for (const double w : table.widths) rest -= w;
    table.widths.push_back(rest);
    table.rows.push_back({"measured", "value", "U", "k", "ν", "largest part of U"});
    table.rows.push_back(result_row(rate_name(), s.rate));
    table.rows.push_back(result_row(free_length_name(), s.free_length));
    for (const LoadAtHeight& load : s.loads)
        table.rows.push_back(result_row("F [N] " + height_words(load.asked, load.asked.name), load.force,
                                        load.outside ? "; BEYOND the readings" : ""));
    return table;
}

std::vector<ShareBars> bench_budgets(const MeasuredSpring& s, std::size_t most) {
    std::vector<ShareBars> out{budget_bars("U of the rate", s.rate, most)};
    if (s.loads.size() < kLoadPanels) out.push_back(budget_bars("U of the free length", s.free_length, most));
    for (std::size_t i = 0; i < std::min(kLoadPanels, s.loads.size()); ++i)
        out.push_back(budget_bars("U of the load, " + s.loads[i].asked.name, s.loads[i].force, most));
    return out;
}

std::vector<RuledTable> bench_springs_tables(const std::vector<const MeasuredSpring*>& springs, double width) {
    std::vector<RuledTable> out;
    const std::size_t count = springs.front()->loads.size();
    std::size_t from = 0;
    do {
        out.push_back(springs_table(springs, from, width));
        from = end_of(from, count);
    } while (from < count);
    return out;
}

std::vector<RuledTable> bench_differences_tables(const std::vector<bench::Comparison>& comparisons, double width) {
    std::vector<RuledTable> out;
    if (comparisons.empty()) return out;
    const std::size_t count = comparisons.front().loads.size();
    std::size_t from = 0;
    do {
        out.push_back(differences_table(comparisons, from, width));
        from = end_of(from, count);
    } while (from < count);
    return out;
}

}  // namespace seatload::sheet
