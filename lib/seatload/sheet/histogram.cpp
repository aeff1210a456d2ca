// SPDX-License-Identifier: MIT
#include <seatload/sheet/histogram.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot.hpp>

namespace seatload::sheet {
namespace {

constexpr double kTitleHeight = 5.0;
constexpr double kHistogramAxisName = 4.5;
constexpr double kBarGrey = 0.75;
constexpr int kHistogramTicks = 6;
constexpr int kShareTicks = 4;
constexpr double kAbove = 1.1;  ///< highest bar below the top

constexpr LineKind kOrdered = LineKind::wide;
constexpr LineKind kNeed = LineKind::hidden;
constexpr LineKind kNominal = LineKind::axis;

void draw_bars(Drawing& drawing, const Plot& plot, const Histogram& h) {
    const double width = (h.to - h.from) / static_cast<double>(h.counts.size());
    for (std::size_t i = 0; i < h.counts.size(); ++i) {
        if (h.counts[i] == 0) continue;
        const double left = h.from + static_cast<double>(i) * width;
        const double share = 100.0 * static_cast<double>(h.counts[i]) / static_cast<double>(h.total);
        const Box bar{plot.x(left), plot.box.bottom, plot.x(left + width), plot.y(share)};
        drawing.fill(bar, kBarGrey);
        drawing.box(bar);
    }
}

void draw_limit(Drawing& drawing, const Plot& plot, const std::optional<double>& value, LineKind kind) {
    if (value && plot.spans(*value))
        drawing.line({plot.x(*value), plot.box.bottom}, {plot.x(*value), plot.box.top}, kind);
}

}  // namespace

void draw_histogram(Drawing& drawing, const Box& box, const Histogram& h) {
    const long most = *std::max_element(h.counts.begin(), h.counts.end());
    const double highest = std::max(1.0, 100.0 * static_cast<double>(most) / static_cast<double>(h.total)) * kAbove;
    const Box inner{box.left + left_of_plot(0.0, highest, kShareTicks), box.bottom + kBelowPlot, box.right - 5.0,
                    box.top - kTitleHeight - kHistogramAxisName};
    const Plot plot{inner, h.from, h.to, 0.0, highest};
    drawing.add(fitted({{box.left, box.top - 3.2}, h.title, kLettering, Align::left, Face::bold}, box.width()));
    draw_bars(drawing, plot, h);
    for (const auto& value : {h.need_least, h.need_most}) draw_limit(drawing, plot, value, kNeed);
    for (const auto& value : {h.ordered_least, h.ordered_most}) draw_limit(drawing, plot, value, kOrdered);
    draw_limit(drawing, plot, h.nominal, kNominal);
    draw_level_axis(drawing, plot, h.axis, kHistogramTicks);
    draw_upright_axis(drawing, plot, "share of the springs [%]", kShareTicks);
}

void draw_histogram_key(Drawing& drawing, Point at) {
    for (const KeyLine& key : {KeyLine{kOrdered, "limits as ordered"}, KeyLine{kNeed, "what the mechanism needs, cold"},
                               KeyLine{kNominal, "nominal"}})
        at.x = draw_key_line(drawing, at, key);
}

}  // namespace seatload::sheet
