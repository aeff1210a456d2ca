// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_plot.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/inspection_words.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot.hpp>
#include <seatload/sheet/plot_area.hpp>
#include <seatload/sheet/plot_marks.hpp>

namespace seatload::sheet {
namespace {

using inspection::Finding;
using inspection::Judged;

constexpr double kLotTitleHeight = 4.6;
constexpr double kLotAxisName = 4.8;
constexpr double kHistogramShare = 0.27;  ///< of the width
constexpr double kLotBetween = 6.0;
constexpr double kLotBarGrey = 0.78;
constexpr double kMargin = 0.09;  ///< above and below what is drawn, of its spread
constexpr int kLotUprightTicks = 6;
constexpr int kLevelTicks = 12;
constexpr int kCountTicks = 4;
constexpr double kIntervalRoom = 0.16;  ///< of the histogram's width, for the bar of the interval

constexpr LineKind kLimit = LineKind::wide;
constexpr LineKind kZone = LineKind::hidden;
constexpr LineKind kMean = LineKind::axis;

struct PlottedRange {
    double low = 1e300;
    double high = -1e300;

    void take(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
    void take(const inspection::Limits& limits) {
        if (limits.least) take(*limits.least);
        if (limits.most) take(*limits.most);
    }
};

/// All that is drawn, with a margin.
PlottedRange range_of(const Judged& j) {
    PlottedRange r;
    for (const double v : j.values) r.take(v);
    if (!j.characteristic.whole_turns_free) r.take(j.characteristic.limits);
    // An interval of few pieces may be so wide that the values could not be told apart.
    PlottedRange wide = r;
    if (j.summary) wide.take(j.summary->interval);
    const double spread = r.high - r.low;
    r.low = std::max(wide.low, r.low - 0.5 * spread);
    r.high = std::min(wide.high, r.high + 0.5 * spread);
    const double margin = r.high > r.low ? kMargin * (r.high - r.low) : std::max(1e-3, 0.01 * std::abs(r.high));
    return {r.low - margin, r.high + margin};
}

/// Ticks at whole numbers only: no more of them than there are.
int whole_ticks(std::size_t count, int most) {
    return static_cast<int>(std::clamp<std::size_t>(count, 2, static_cast<std::size_t>(most)));
}

Mark mark_of(const std::optional<Finding>& finding) {
    if (finding == Finding::outside) return Mark::cross;
    return finding == Finding::unproven ? Mark::ring : Mark::disc;
}

void draw_limits(Drawing& drawing, const Plot& plot, const Judged& j) {
    if (j.characteristic.whole_turns_free) return;
    const inspection::Limits zone = inspection::acceptance_zone(j.characteristic.limits, j.expanded);
    for (const auto& value : {j.characteristic.limits.least, j.characteristic.limits.most})
        if (value) draw_level_line(drawing, plot, *value, kLimit);
    for (const auto& value : {zone.least, zone.most})
        if (value && j.expanded > 0.0) draw_level_line(drawing, plot, *value, kZone);
    if (j.summary) draw_level_line(drawing, plot, j.summary->mean, kMean);
}

void draw_run(Drawing& drawing, const Plot& plot, const Judged& j) {
    Path run;
    std::vector<std::pair<Point, Mark>> marks;
    std::size_t next = 0;
    for (std::size_t i = 0; i < j.findings.size(); ++i) {
        if (!j.findings[i]) continue;
        run.push_back({static_cast<double>(i + 1), j.values[next++]});
        marks.emplace_back(plot.at(run.back().x, run.back().y), mark_of(j.findings[i]));
    }
    if (run.size() > 1) draw_curve(drawing, plot, run, LineKind::narrow);
    for (const auto& [at, mark] : marks) draw_mark(drawing, at, mark);
}

/// As many bins as suit the number of values: the square root of it (common practice, no source).
std::size_t bins_for(std::size_t count) {
    return std::clamp<std::size_t>(static_cast<std::size_t>(std::lround(std::sqrt(static_cast<double>(count)))), 4, 20);
}

std::vector<long> counts_of(const std::vector<double>& values, double from, double width, std::size_t bins) {
    std::vector<long> counts(bins, 0);
    for (const double v : values) {
        const auto bin = static_cast<std::size_t>(std::max(0.0, std::floor((v - from) / width)));
        ++counts[std::min(bin, bins - 1)];
    }
    return counts;
}

void draw_bars(Drawing& drawing, const Plot& plot, const std::vector<long>& counts, double from, double width) {
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        const double low = from + static_cast<double>(i) * width;
        const Box bar{plot.box.left, plot.y(low), plot.x(static_cast<double>(counts[i])), plot.y(low + width)};
        drawing.fill(bar, kLotBarGrey);
        drawing.box(bar);
    }
}

/// The tolerance interval as an upright bar with ends; an end beyond the plot is left open.
void draw_interval(Drawing& drawing, const Plot& plot, const Judged& j) {
    if (!j.summary || j.summary->factor == 0.0 || j.characteristic.whole_turns_free) return;
    const inspection::Limits& interval = j.summary->interval;
    const double x = plot.box.right - 0.5 * kIntervalRoom * plot.box.width();
    const double half = 1.2;
    const double low = std::max(interval.least.value_or(plot.bottom_value), plot.bottom_value);
    const double high = std::min(interval.most.value_or(plot.top_value), plot.top_value);
    drawing.line({x, plot.y(low)}, {x, plot.y(high)}, LineKind::narrow);
    if (interval.least && *interval.least >= plot.bottom_value)
        drawing.line({x - half, plot.y(low)}, {x + half, plot.y(low)}, LineKind::narrow);
    if (interval.most && *interval.most <= plot.top_value)
        drawing.line({x - half, plot.y(high)}, {x + half, plot.y(high)}, LineKind::narrow);
}

void draw_histogram_beside(Drawing& drawing, const Box& box, const Judged& j, const PlottedRange& range) {
    const std::size_t bins = bins_for(j.values.size());
    double width = (j.summary->most - j.summary->least) / static_cast<double>(bins);
    if (!(width > 0.0)) width = (range.high - range.low) / 20.0;
    const double from = j.summary->least;
    const std::vector<long> counts = counts_of(j.values, from, width, bins);
    const auto most = static_cast<double>(*std::max_element(counts.begin(), counts.end()));
    const Plot plot{box, 0.0, (most + 0.2) / (1.0 - kIntervalRoom), range.low, range.high};
    draw_bars(drawing, plot, counts, from, width);
    draw_limits(drawing, plot, j);
    draw_interval(drawing, plot, j);
    drawing.line({box.left, box.bottom}, {box.left, box.top});
    draw_level_axis(drawing, plot, "pieces", whole_ticks(static_cast<std::size_t>(most), kCountTicks));
}

}  // namespace

void draw_inspection_plot(Drawing& drawing, const Box& box, const Judged& j) {
    const PlottedRange range = range_of(j);
    const double left = left_of_plot(range.low, range.high, kLotUprightTicks);
    const double top = box.top - kLotTitleHeight - kLotAxisName;
    const double parting = box.right - kHistogramShare * box.width();
    const Plot run{{box.left + left, box.bottom + kBelowPlot, parting - kLotBetween, top},
                   0.5,
                   static_cast<double>(j.findings.size()) + 0.5,
                   range.low,
                   range.high};
    drawing.add(fitted({{box.left, box.top - 3.2}, plot_title(j), kLettering, Align::left, Face::bold}, box.width()));
    draw_limits(drawing, run, j);
    draw_run(drawing, run, j);
    draw_level_axis(drawing, run, "piece, in the order measured", whole_ticks(j.findings.size(), kLevelTicks));
    draw_upright_axis(drawing, run, axis_name(j.characteristic.kind), kLotUprightTicks);
    draw_histogram_beside(drawing, {parting, run.box.bottom, box.right - 2.0, top}, j, range);
}

void draw_inspection_key(Drawing& drawing, Point at) {
    for (const KeyLine& key : {KeyLine{kLimit, "limit"}, KeyLine{kZone, "limit less U"}, KeyLine{kMean, "mean"},
                               KeyLine{LineKind::narrow, "I: tolerance interval"}})
        at.x = draw_key_line(drawing, at, key);
    const std::pair<Mark, const char*> marks[] = {
        {Mark::disc, "conforms"}, {Mark::ring, "not proven"}, {Mark::cross, "fails"}};
    for (const auto& [mark, words] : marks) {
        draw_mark(drawing, {at.x + kMarkRadius, at.y + 0.5 * kLettering}, mark);
        const Text text{{at.x + 3.2, at.y}, words};
        drawing.add(text);
        at.x += 3.2 + text_width(text) + 4.0;
    }
}

}  // namespace seatload::sheet
