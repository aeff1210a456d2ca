// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_plot.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot_key.hpp>
#include <seatload/sheet/pressure_words.hpp>
#include <seatload/sheet/side_labels.hpp>

namespace seatload::sheet {
namespace {

using demand::Interval;
using demand::SpringLoads;

constexpr int kPressurePieces = 24;
constexpr double kJustOff = 1e-9;      ///< of the stroke: cracked, and not yet moved
constexpr double kParkedShare = 0.06;  ///< of the stroke, left of the seat
constexpr double kAtSeatShare = 0.3;   ///< of the stroke: how far lines of the seat or of full travel are hatched
constexpr double kPressureHeadroom = 1.06;
constexpr double kPressureMostOver = 3.0;  ///< the highest limit: what lies further up stays outside
constexpr double kLabelsWidth = 56.0;
constexpr double kFrictionGrey = 0.88;
constexpr double kBetweenKeys = 2.0;
constexpr double kShortestJump = 8.0;  ///< drawn [mm]
constexpr int kLiftTicks = 8;
constexpr int kPressureTicks = 8;
constexpr Hatching kPressureNothing{1.8, 135.0};
constexpr Hatching kStripSample{1.5, 45.0};

double bar(Stress pressure) { return in_bar(pressure); }

/// Pressures over the lift [mm, bar].
struct Band {
    Path low;
    Path high;

    /// As a polygon.
    Path outline(const Path& upper) const {
        Path out = low;
        out.insert(out.end(), upper.rbegin(), upper.rend());
        return out;
    }
};

template <class Pressure>
Band band_over(const demand::Plunger& plunger, const Pressure& pressure, bool from_the_seat) {
    Band out;
    for (int i = 0; i <= kPressurePieces; ++i) {
        const double share = i == 0 && !from_the_seat ? kJustOff : static_cast<double>(i) / kPressurePieces;
        const Interval<Stress> at = pressure(share * plunger.stroke);
        out.low.push_back({share * in_mm(plunger.stroke), bar(at.low)});
        out.high.push_back({share * in_mm(plunger.stroke), bar(at.high)});
    }
    return out;
}

/// The pressures of one case.
struct Curves {
    std::string words;
    Interval<double> crack;  ///< [bar]
    Band opening;
    Band closing;

    /// A plunger that is fully open as soon as it cracks jumps there.
    Interval<double> fully_open() const {
        return {std::max(crack.low, opening.low.back().y), std::max(crack.high, opening.high.back().y)};
    }
    double highest() const { return std::max(fully_open().high, crack.high); }
    double lowest() const { return closing.low.front().y; }
};

Curves curves_of(const demand::Plunger& plunger, const PressureCase& c) {
    const auto opening = [&](Length lift) { return demand::opening_pressure(plunger, c.loads, lift); };
    const auto closing = [&](Length lift) { return demand::closing_pressure(plunger, c.loads, lift); };
    const Interval<Stress> crack = opening(0.0 * mm);
    return {c.words,
            {bar(crack.low), bar(crack.high)},
            band_over(plunger, opening, false),
            band_over(plunger, closing, true)};
}

/// A pressure the plunger is held to.
struct Limit {
    double at;  ///< [bar]
    Side forbidden;
    double from;  ///< hatched between these lifts, as shares of the stroke
    double to;
    std::string words;
};

std::string limit_words(const std::string& symbol, const std::string& words, double at) {
    return symbol + " " + pressure_number(at) + " " + words;
}

std::vector<Limit> limits_of(const PressurePlot& d) {
    const demand::PlungerPressures& p = d.plunger.pressures;
    std::vector<Limit> out;
    const auto add = [&](Stress at, Side forbidden, double from, double to, const std::string& symbol,
                         const std::string& words) {
        out.push_back({bar(at), forbidden, from, to, limit_words(symbol, words, bar(at))});
    };
    add(p.release.low, Side::above, -kParkedShare, 1.0, "p", "lowest release");
    if (p.hold_open)
        add(p.hold_open->low, Side::above, 1.0 - kAtSeatShare, 1.0, with_sub("p", "H"), "lowest hold open");
    if (p.mechanism) add(p.mechanism->low, Side::above, -kParkedShare, 1.0, with_sub("p", "M"), "mechanism moves");
    if (const auto& leak = d.budget.leak_pressure)
        add(leak->high, Side::below, -kParkedShare, kAtSeatShare, with_sub("p", "L"), "highest leak, parked");
    if (p.residual.high > 0.0 * MPa)
        add(p.residual.high, Side::below, -kParkedShare, 1.0, with_sub("p", "R"), "highest residual");
    return out;
}

std::optional<double> back_pressure(const demand::Plunger& plunger) {
    if (!plunger.back || !(plunger.back->pressure.high > 0.0 * MPa)) return std::nullopt;
    return bar(plunger.back->pressure.high);
}

Plot plot_in(const Box& box, const PressurePlot& d, const std::vector<Curves>& curves,
             const std::vector<Limit>& limits) {
    double top = 0.0;
    double bottom = 0.0;
    for (const Limit& limit : limits) top = std::max(top, limit.at);
    const double most = kPressureMostOver * top;
    for (const Curves& c : curves) {
        top = std::max(top, std::min(c.highest(), most));
        bottom = std::max(std::min(bottom, c.lowest()), -top);
    }
    top *= kPressureHeadroom;
    const double stroke = in_mm(d.plunger.stroke);
    const Box inner{box.left + left_of_plot(bottom, top, kPressureTicks), box.bottom + kBelowPlot,
                    box.right - kLabelsWidth, box.top - kAbovePlot};
    return {inner, -kParkedShare * stroke, stroke, bottom - (bottom < 0.0 ? 0.03 * top : 0.0), top};
}

/// The jump at the pressure that cracked it, as far as the plunger opens at that pressure.
void draw_jump(Drawing& drawing, const Plot& plot, const Curves& c) {
    const double crack = 0.5 * (c.crack.low + c.crack.high);
    double lift = 0.0;
    for (const Point& p : c.opening.high)
        if (p.y <= crack) lift = p.x;
    if (plot.x(lift) - plot.x(0.0) < kShortestJump || crack > plot.top_value) return;
    const Point end = plot.at(lift, crack) - Point{kMarkRadius, 0.0};
    drawing.line(plot.at(0.0, crack), end);
    arrow_head(drawing, end, 0.0);
}

void draw_areas(Drawing& drawing, const Plot& plot, const Curves& c) {
    fill_area(drawing, plot, c.closing.outline(c.opening.high), kFrictionGrey);
}

bool is_narrow(const Plot& plot, const Band& band) {
    return plot.y(band.high.back().y) - plot.y(band.low.back().y) < 0.6 &&
           plot.y(band.high.front().y) - plot.y(band.low.front().y) < 0.6;
}

void draw_edges(Drawing& drawing, const Plot& plot, const Band& band, LineKind kind) {
    draw_curve(drawing, plot, band.high, kind);
    if (!is_narrow(plot, band)) draw_curve(drawing, plot, band.low, kind == LineKind::wide ? LineKind::narrow : kind);
}

void draw_marks(Drawing& drawing, const Plot& plot, const Curves& c) {
    const double stroke = c.opening.high.back().x;
    const Interval<double> full = c.fully_open();
    const auto pair = [&](double lift, double low, double high, Mark mark) {
        draw_curve(drawing, plot, {{lift, low}, {lift, high}}, LineKind::wide);
        for (const double y : {low, high})
            if (y >= plot.bottom_value && y <= plot.top_value) draw_mark(drawing, plot.at(lift, y), mark);
    };
    pair(stroke, c.closing.low.back().y, c.closing.high.back().y, Mark::open_square);
    pair(stroke, full.low, full.high, Mark::square);
    pair(0.0, c.closing.low.front().y, c.closing.high.front().y, Mark::ring);
    pair(0.0, c.crack.low, c.crack.high, Mark::disc);
}

void draw_curves(Drawing& drawing, const Plot& plot, const Curves& c) {
    // Parked: any pressure up to that which cracks it.
    draw_curve(drawing, plot, {{0.0, 0.0}, {0.0, c.crack.high}}, LineKind::wide);
    draw_jump(drawing, plot, c);
    draw_edges(drawing, plot, c.opening, LineKind::wide);
    draw_edges(drawing, plot, c.closing, LineKind::hidden);
    draw_marks(drawing, plot, c);
}

/// Between the pressures of what holds and of what lets go, when no load does both.
void draw_gap(Drawing& drawing, const Plot& plot, const PressurePlot& d, const std::vector<Curves>& curves) {
    if (d.budget.is_possible() || curves.size() != 2) return;
    const Curves& holds = curves[0];
    const Curves& lets_go = curves[1];
    Path gap;
    for (std::size_t i = 0; i < holds.opening.low.size(); ++i) {
        const Point p = lets_go.opening.high[i];
        gap.push_back({p.x, std::min(p.y, holds.opening.low[i].y)});
    }
    for (std::size_t i = holds.opening.low.size(); i-- > 0;) gap.push_back(holds.opening.low[i]);
    hatch_area(drawing, plot, gap, kPressureNothing);
    if (holds.crack.low > lets_go.crack.high)
        hatch_area(drawing, plot,
                   {{plot.left_value, lets_go.crack.high},
                    {0.0, lets_go.crack.high},
                    {0.0, holds.crack.low},
                    {plot.left_value, holds.crack.low}},
                   kPressureNothing);
}

AxisLabels labels_of(const Plot& plot, const PressurePlot& d, const std::vector<Curves>& curves,
                     const std::vector<Limit>& limits) {
    AxisLabels out;
    const auto add = [&](double at, const std::string& words) {
        out.push_back({std::clamp(plot.y(at), plot.box.bottom, plot.box.top), words});
    };
    for (const Limit& limit : limits) add(limit.at, limit.words);
    if (const auto back = back_pressure(d.plunger))
        add(*back, limit_words(with_sub("p", "B"), "highest behind", *back));
    for (const Curves& c : curves) {
        add(0.5 * (c.opening.low.back().y + c.opening.high.back().y), "opens, " + c.words);
        add(0.5 * (c.closing.low.back().y + c.closing.high.back().y), "returns, " + c.words);
    }
    return out;
}

std::vector<PlotKey> keys_of(const PressurePlot& d) {
    std::vector<PlotKey> keys{{{Mark::disc, "cracks: oil on the seat area"},
                               {Mark::square, "fully open"},
                               {Mark::open_square, "falling: starts back"},
                               {Mark::ring, "falling: home again"}},
                              {{LineKind::wide, "opens: oil on the full area"},
                               {LineKind::hidden, "returns"},
                               {GreySample{kFrictionGrey}, "friction: it may stand here"},
                               {ArrowSample{}, "jumps when it cracks"}},
                              {{HatchSample{kStripSample}, "beyond a limit"}}};
    if (d.budget.is_possible())
        keys.back().push_back({NoSample{}, "Lines: ends of the range over all corners"});
    else
        keys.back().push_back(
            {HatchSample{kPressureNothing}, "what holds lies above what lets go: no spring does both"});
    return keys;
}

}  // namespace

std::vector<PressureCase> pressure_cases(const demand::Budget& budget, const std::optional<SpringLoads>& spring) {
    if (spring) return {{"the spring given", *spring}};
    const bool is_possible = budget.is_possible();
    const demand::LoadBand& seated = is_possible ? budget.seated_rounded : budget.seated;
    const demand::LoadBand& full = is_possible ? budget.full_travel_rounded : budget.full_travel;
    const Force none = 0.0 * newton;
    const Force least = seated.at_least.value_or(none);
    const Force least_full = std::max(least, full.at_least.value_or(none));
    std::vector<PressureCase> out;
    const auto add = [&](const char* words, Force F1, Force F2) {
        if (std::isfinite(in_newton(F1)) && std::isfinite(in_newton(F2)))
            out.push_back({words, {demand::exactly(F1), demand::exactly(F2)}});
    };
    add(is_possible ? "least loads" : "loads that hold", least, least_full);
    if (seated.at_most && full.at_most) {
        const Force most = is_possible ? std::min(*seated.at_most, *full.at_most) : *seated.at_most;
        add(is_possible ? "greatest loads" : "loads that let go", most, *full.at_most);
    }
    return out;
}

double pressure_key_height(const PressurePlot& diagram, double width) {
    double most = 0.0;
    const auto keys = keys_of(diagram);
    for (const PlotKey& key : keys)
        most = std::max(most, key_height(key, width / static_cast<double>(keys.size()) - kBetweenKeys));
    return most;
}

void draw_pressure_plot(Drawing& drawing, const Box& box, const PressurePlot& diagram) {
    const double below = pressure_key_height(diagram, box.width());
    std::vector<Curves> curves;
    for (const PressureCase& c : diagram.cases) curves.push_back(curves_of(diagram.plunger, c));
    const std::vector<Limit> limits = limits_of(diagram);
    const Plot plot = plot_in({box.left, box.bottom + below, box.right, box.top}, diagram, curves, limits);
    const double stroke = in_mm(diagram.plunger.stroke);
    for (const Curves& c : curves) draw_areas(drawing, plot, c);
    draw_gap(drawing, plot, diagram, curves);
    for (const Limit& limit : limits)
        draw_limit_line(drawing, plot, limit.at, limit.forbidden, limit.from * stroke, limit.to * stroke);
    if (const auto back = back_pressure(diagram.plunger)) draw_level_line(drawing, plot, *back, LineKind::axis);
    if (plot.bottom_value < 0.0) draw_level_line(drawing, plot, 0.0, LineKind::narrow);
    for (const Curves& c : curves) draw_curves(drawing, plot, c);
    draw_level_axis(drawing, plot, "lift from the seat [mm]", kLiftTicks);
    draw_upright_axis(drawing, plot, "oil pressure [bar]", kPressureTicks);
    draw_labels_at_right(drawing, labels_of(plot, diagram, curves, limits),
                         {plot.box.right + 0.5, plot.box.bottom, box.right, plot.box.top});
    const auto keys = keys_of(diagram);
    const double width = box.width() / static_cast<double>(keys.size());
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const double left = box.left + width * static_cast<double>(i);
        draw_plot_key(drawing, {left, box.bottom, left + width - kBetweenKeys, box.bottom + below}, keys[i]);
    }
}

}  // namespace seatload::sheet
