// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_loads.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/axis_labels.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot_area.hpp>
#include <seatload/sheet/pressure_words.hpp>
#include <seatload/sheet/side_labels.hpp>

namespace seatload::sheet {
namespace {

using demand::BudgetLimit;
using demand::LoadBand;
using demand::LoadPlace;

constexpr double kColumn = 6.0;        ///< width of a column
constexpr double kBesideColumn = 9.0;  ///< for the numbers of limits
constexpr double kWordsBelow = 5.5;
constexpr double kLoadsHeadroom = 1.06;
constexpr double kCorridorGrey = 0.93;
constexpr double kAllowedGrey = 0.75;
constexpr double kLeastTop = 1e-3;  ///< [N]
constexpr double kMostOver = 3.0;
constexpr int kLoadsTicks = 8;
constexpr Hatching kTooWeak{1.6, 45.0};
constexpr Hatching kTooStrong{1.6, 135.0};

/// The top of the axis: over all upper limits and the spring given; lower limits far above them stay outside.
double highest(const LoadColumns& c) {
    double out = c.spring ? in_newton(c.spring->full_travel.high) : 0.0;
    double lower = 0.0;
    for (const BudgetLimit& limit : c.budget.limits) {
        double& most = limit.bound == demand::Bound::at_most ? out : lower;
        if (std::isfinite(in_newton(limit.value))) most = std::max(most, in_newton(limit.value));
    }
    if (out <= 0.0) return kLoadsHeadroom * std::max(lower, kLeastTop);
    return kLoadsHeadroom * std::max(out, std::min(lower, kMostOver * out));
}

/// The two columns: where they stand, and what is left in each.
struct Column {
    LoadPlace place;
    double left;
    const LoadBand& band;
    double right() const { return left + kColumn; }
};

double low_end(const LoadBand& band) { return band.at_least ? in_newton(*band.at_least) : 0.0; }
double high_end(const LoadBand& band, double top) {
    return band.at_most ? std::max(0.0, in_newton(*band.at_most)) : top;
}

void hatch_between(Drawing& drawing, const Plot& plot, const Column& c, double low, double high,
                   const Hatching& hatching) {
    const double bottom = plot.y(std::clamp(low, 0.0, plot.top_value));
    const double top = plot.y(std::clamp(high, 0.0, plot.top_value));
    if (top > bottom)
        hatch(drawing, {{c.left, bottom}, {c.right(), bottom}, {c.right(), top}, {c.left, top}}, hatching);
}

void draw_column(Drawing& drawing, const Plot& plot, const Column& c) {
    const double low = low_end(c.band);
    const double high = high_end(c.band, plot.top_value);
    if (low < high)
        drawing.fill({c.left, plot.y(std::min(low, plot.top_value)), c.right(), plot.y(std::min(high, plot.top_value))},
                     kAllowedGrey);
    hatch_between(drawing, plot, c, 0.0, low, kTooWeak);
    hatch_between(drawing, plot, c, high, plot.top_value, kTooStrong);
    drawing.box({c.left, plot.box.bottom, c.right(), plot.box.top});
}

void draw_limits(Drawing& drawing, const Plot& plot, const Column& c, const std::vector<BudgetLimit>& limits) {
    for (const BudgetLimit& limit : limits) {
        const double value = in_newton(limit.value);
        if (limit.place != c.place || value < 0.0 || value > plot.top_value) continue;
        const double y = plot.y(value);
        drawing.line({c.left - 0.8, y}, {c.right() + 0.8, y}, limit.bites ? LineKind::wide : LineKind::narrow);
    }
}

std::string numbers_at(const std::vector<std::size_t>& numbers) {
    std::string out;
    for (const std::size_t n : numbers) out += (out.empty() ? "" : ", ") + std::to_string(n + 1);
    return out;
}

/// The numbers of limits beside their column; limits that fall on one another share a label.
AxisLabels limit_labels(const Plot& plot, const Column& c, const std::vector<BudgetLimit>& limits) {
    std::vector<std::pair<double, std::vector<std::size_t>>> at;
    for (std::size_t i = 0; i < limits.size(); ++i) {
        if (limits[i].place != c.place) continue;
        const double y = plot.y(std::clamp(in_newton(limits[i].value), 0.0, plot.top_value));
        const auto same = std::find_if(at.begin(), at.end(), [&](const auto& known) { return known.first == y; });
        if (same == at.end())
            at.push_back({y, {i}});
        else
            same->second.push_back(i);
    }
    std::sort(at.begin(), at.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    AxisLabels out;
    for (const auto& [y, numbers] : at) {
        const bool is_above = in_newton(limits[numbers.front()].value) > plot.top_value;
        out.push_back({y, numbers_at(numbers) + (is_above ? " ↑" : "")});
    }
    return out;
}

/// Loads that lie inside both bands.
void draw_corridor(Drawing& drawing, const Plot& plot, const Column& seated, const Column& full) {
    const double x1 = seated.right();
    const double x2 = full.left;
    const auto y = [&](double load) { return plot.y(std::min(load, plot.top_value)); };
    drawing.add(Area{{{x1, y(low_end(seated.band))},
                      {x2, y(low_end(full.band))},
                      {x2, y(high_end(full.band, plot.top_value))},
                      {x1, y(high_end(seated.band, plot.top_value))}},
                     kCorridorGrey});
}

void draw_spring(Drawing& drawing, const Plot& plot, const Column& seated, const Column& full,
                 const demand::SpringLoads& s) {
    const double x1 = seated.left + 0.5 * kColumn;
    const double x2 = full.left + 0.5 * kColumn;
    drawing.line({x1, plot.y(in_newton(s.seated.low))}, {x2, plot.y(in_newton(s.full_travel.low))}, LineKind::wide);
    if (s.seated.is_range() || s.full_travel.is_range())
        drawing.line({x1, plot.y(in_newton(s.seated.high))}, {x2, plot.y(in_newton(s.full_travel.high))},
                     LineKind::wide);
}

void draw_words_below(Drawing& drawing, const Column& c, const Plot& plot, const std::string& words) {
    drawing.add(fitted(Text{{c.left + 0.5 * kColumn, plot.box.bottom - 4.2}, words, kLettering, Align::centre},
                       0.5 * plot.box.width() - 1.0));
}

std::string limit_head(const BudgetLimit& limit, std::size_t index) {
    return std::to_string(index + 1) + (limit.bites ? "* " : "  ") +
           with_sub("F", limit.place == LoadPlace::seated ? "1" : "2") +
           (limit.bound == demand::Bound::at_least ? " ≥ " : " ≤ ") + pressure_number(in_newton(limit.value)) + " N";
}

}  // namespace

void draw_load_columns(Drawing& drawing, const Box& box, const LoadColumns& columns) {
    const double top = highest(columns);
    const Plot plot{
        {box.left + left_of_plot(0.0, top, kLoadsTicks), box.bottom + kWordsBelow, box.right, box.top - kAbovePlot},
        0.0,
        1.0,
        0.0,
        top};
    const Column seated{LoadPlace::seated, plot.box.left + kBesideColumn + 3.0, columns.budget.seated};
    const Column full{LoadPlace::full_travel, plot.box.right - kBesideColumn - 3.0 - kColumn,
                      columns.budget.full_travel};
    if (columns.budget.is_possible()) draw_corridor(drawing, plot, seated, full);
    for (const Column* c : {&seated, &full}) {
        draw_column(drawing, plot, *c);
        draw_limits(drawing, plot, *c, columns.budget.limits);
    }
    if (columns.spring) draw_spring(drawing, plot, seated, full, *columns.spring);
    drawing.line({plot.box.left, plot.box.bottom}, {plot.box.right, plot.box.bottom}, LineKind::wide);
    draw_upright_axis(drawing, plot, "load F [N]", kLoadsTicks);
    draw_beside_axis(drawing, limit_labels(plot, seated, columns.budget.limits), seated.left - 0.8,
                     plot.box.bottom + 0.5, plot.box.top);
    draw_labels_at_right(drawing, limit_labels(plot, full, columns.budget.limits),
                         {full.right() + 0.8, plot.box.bottom + 0.5, plot.box.right, plot.box.top});
    draw_words_below(drawing, seated, plot, columns.seated_words);
    draw_words_below(drawing, full, plot, columns.full_travel_words);
}

FactLines limit_list(const demand::Budget& budget, double width) {
    FactLines out{{}, width, 0.0};
    for (std::size_t i = 0; i < budget.limits.size(); ++i) {
        const std::string head = limit_head(budget.limits[i], i);
        out.heading_width = std::max(out.heading_width, text_width(head, kLettering, Face::bold));
        out.facts.push_back({head, std::string(budget.limits[i].title)});
    }
    return out;
}

}  // namespace seatload::sheet
