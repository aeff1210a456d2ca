// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_plot.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include <seatload/core/text.hpp>
#include <seatload/sheet/bench_figures.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/height_labels.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

using bench::MeasuredSpring;
using BenchPoint = bench::Point;
using bench::Use;

constexpr double kKeyWidth = 56.0;
constexpr double kKeyGap = 3.0;
constexpr double kResidualShare = 0.34;  ///< of the height of both plots
constexpr double kNumbersWidth = 13.0;   ///< left of both plots, so that their heights stand over one another
constexpr double kNumbersBelow = 5.2;
constexpr double kNameAbove = 6.3;  ///< of the force axis, beside the names of heights
constexpr double kBandGrey = 0.86;
constexpr double kSeenBar = 1.6;  ///< least half length of the longest error bar [mm]
constexpr double kLeastResidualReach = 1.5;
constexpr double kMostResidualReach = 4.0;
constexpr double kUnloadingReach = 2.5;
constexpr double kResidualRoom = 1.15;
constexpr int kHeightTicks = 10;
constexpr int kForceTicks = 8;
constexpr double kNumberPitch = 3.5;

constexpr const char* kHeightAxis = "height L [mm]";

Mark mark_of(Use use) {
    switch (use) {
        case Use::line:
            return Mark::disc;
        case Use::outlier:
            return Mark::diamond;
        case Use::before_contact:
            return Mark::ring;
        case Use::coils_closing:
            return Mark::open_square;
        case Use::unloading:
            return Mark::open_triangle;
    }
    return Mark::disc;
}

bool is_used(const BenchPoint& point) { return point.use == Use::line || point.use == Use::outlier; }

/// Force of the fitted line at a height [N].
double line_force(const MeasuredSpring& s, double height) {
    return s.line.centre_force_n - s.line.rate_n_mm * (height - s.line.centre_mm);
}

/// Expanded uncertainty of one reading, as a force on the line [N].
double doubt_of(const MeasuredSpring& s, const BenchPoint& p) {
    return s.coverage_factor * std::hypot(in_newton(p.u_force), s.line.rate_n_mm * in_mm(p.u_height));
}

/// The heights between which points were used.
HeightRange used_range(const MeasuredSpring& s) {
    HeightRange out{-1e300, 1e300};
    for (const BenchPoint& p : s.points) {
        if (!is_used(p)) continue;
        out.greatest = std::max(out.greatest, in_mm(p.height));
        out.least = std::min(out.least, in_mm(p.height));
    }
    return out;
}

/// Room below no force, for marks there and for readings that come out a little below it.
double lowest_force(const std::vector<DrawnSpring>& springs, double top) {
    double lowest = -0.04 * top;
    for (const DrawnSpring& drawn : springs)
        for (const BenchPoint& p : drawn.spring.points)
            if (springs.size() == 1 || is_used(p)) lowest = std::min(lowest, 1.1 * in_newton(p.force));
    return lowest;
}

double highest_force(const std::vector<DrawnSpring>& springs, const HeightRange& range) {
    double highest = 0.0;
    for (const DrawnSpring& drawn : springs) {
        for (const BenchPoint& p : drawn.spring.points)
            if (springs.size() == 1 || is_used(p)) highest = std::max(highest, in_newton(p.force));
        highest = std::max(highest, line_force(drawn.spring, range.least));
    }
    return highest;
}

Box plot_in(const Box& box, double above, double below) {
    return {box.left + kNumbersWidth, box.bottom + below, box.right, box.top - above};
}

/// The stretch between two readings in which something begins.
void draw_bracket(Drawing& drawing, const Plot& plot, const std::optional<bench::Bracket>& bracket) {
    if (!bracket) return;
    const double left = std::clamp(plot.x(in_mm(bracket->above)), plot.box.left, plot.box.right);
    const double right = std::clamp(plot.x(in_mm(bracket->below)), plot.box.left, plot.box.right);
    drawing.fill({left, plot.box.bottom, std::max(right, left + 0.4), plot.box.top}, kBandGrey);
}

/// Its name, upright in the middle of the band: at the top for contact, where the line runs low, else at the bottom.
void draw_bracket_name(Drawing& drawing, const Plot& plot, const std::optional<bench::Bracket>& bracket,
                       const std::string& words, bool at_top) {
    if (!bracket) return;
    const double x = 0.5 * (plot.x(in_mm(bracket->above)) + plot.x(in_mm(bracket->below))) + 0.5 * kLettering;
    drawing.add(Text{.at = {std::clamp(x, plot.box.left + 4.0, plot.box.right - 1.0),
                            at_top ? plot.box.top - 1.5 : plot.box.bottom + 1.5},
                     .words = words,
                     .align = at_top ? Align::right : Align::left,
                     .turn = 90.0,
                     .masked = true});
}

/// Full between the points it was made of, dashed beyond them.
void draw_fitted(Drawing& drawing, const Plot& plot, const DrawnSpring& drawn, const HeightRange& range,
                 bool is_single) {
    const MeasuredSpring& s = drawn.spring;
    const auto at = [&](double height) { return Point{height, line_force(s, height)}; };
    const HeightRange used = used_range(s);
    const double free_length = std::min(in_mm(s.free_length.value), range.greatest);
    if (is_single) {
        draw_curve(drawing, plot, {at(free_length), at(used.greatest)}, LineKind::hidden);
        draw_curve(drawing, plot, {at(used.least), at(range.least)}, LineKind::hidden);
    }
    draw_curve(drawing, plot, {at(is_single ? used.greatest : free_length), at(used.least)}, drawn.line);
}

void draw_bars(Drawing& drawing, const Plot& plot, const MeasuredSpring& s, double times) {
    for (const BenchPoint& p : s.points) {
        const double half = times * doubt_of(s, p);
        const double low = std::max(plot.y(in_newton(p.force) - half), plot.box.bottom);
        const double high = std::min(plot.y(in_newton(p.force) + half), plot.box.top);
        draw_error_bar(drawing, plot.x(in_mm(p.height)), low, high);
    }
}

void draw_points(Drawing& drawing, const Plot& plot, const DrawnSpring& drawn, bool is_single) {
    for (const BenchPoint& p : drawn.spring.points) {
        if (!is_single && !is_used(p)) continue;
        draw_mark(drawing, plot.at(in_mm(p.height), in_newton(p.force)), is_single ? mark_of(p.use) : drawn.mark);
    }
}

/// Residual in expanded uncertainties of the point.
double in_doubts(const MeasuredSpring& s, const BenchPoint& p) { return p.sigmas / s.coverage_factor; }

/// Used readings are shown as far as they lie, those of unloading in part: they tell the hysteresis.
double residual_reach(const MeasuredSpring& s) {
    double most = kLeastResidualReach;
    for (const BenchPoint& p : s.points) {
        const double off = kResidualRoom * std::abs(in_doubts(s, p));
        if (is_used(p)) most = std::max(most, std::min(off, kMostResidualReach));
        if (p.use == Use::unloading) most = std::max(most, std::min(off, kUnloadingReach));
    }
    return most;
}

bool is_any_off(const MeasuredSpring& s, double reach) {
    return std::any_of(s.points.begin(), s.points.end(),
                       [&](const BenchPoint& p) { return std::abs(in_doubts(s, p)) > reach; });
}

std::vector<const BenchPoint*> points_of(const MeasuredSpring& s, Use use) {
    std::vector<const BenchPoint*> out;
    for (const BenchPoint& p : s.points)
        if (p.use == use) out.push_back(&p);
    return out;
}

bool is_left_out(Use use) { return use == Use::before_contact || use == Use::coils_closing; }

/// The reason of the first of them, without how many standard uncertainties that is: the residuals show it.
std::string reason(const std::vector<const BenchPoint*>& points, bool in_full) {
    const Use use = points.front()->use;
    std::string why = points.front()->why;
    const auto from = why.find(" (");
    const auto to = why.find(')', from);
    if (from != std::string::npos && to != std::string::npos) why.erase(from, to - from + 1);
    const std::size_t others = points.size() - 1;
    const std::string more = others == 0 ? "" : "; so " + std::to_string(others) + " more";
    const std::string left_out = is_left_out(use) ? "left out" : std::string(word(use));
    if (in_full && !why.empty()) return left_out + ": " + why + more;
    return is_left_out(use) ? left_out + ": " + std::string(word(use)) + more : left_out;
}

std::string bar_words(const MeasuredSpring& s, double times) {
    return "± U of one reading, k = " + significant(s.coverage_factor, 3) +
           (times == 1.0 ? "" : ", drawn " + fixed(times, 0) + " times as long");
}

/// The key of both plots of one spring; `in_full`: with the reasons why points are left out.
PlotKey spring_key(const MeasuredSpring& s, double times, double reach, bool in_full) {
    PlotKey key{{MarkOnLine{Mark::disc, LineKind::wide}, "loading, and their line"},
                {LineKind::hidden, "the line beyond them"},
                {ErrorBarSample{}, bar_words(s, times)}};
    for (const Use use : {Use::outlier, Use::before_contact, Use::coils_closing, Use::unloading})
        if (const auto points = points_of(s, use); !points.empty())
            key.push_back({mark_of(use), reason(points, in_full)});
    key.push_back({Mark::open_diamond, with_sub("L", "0") + ": the line meets no force"});
    if (s.contact || s.closing) key.push_back({GreySample{kBandGrey}, "begins between these readings"});
    if (!s.loads.empty()) key.push_back({LineKind::axis, "heights asked for"});
    key.push_back({NoSample{}, "Residual: reading less line, in U of that reading" +
                                   std::string(is_any_off(s, reach) ? "; arrow: further off" : "")});
    return key;
}

PlotKey overlay_key(const std::vector<DrawnSpring>& springs) {
    PlotKey key;
    for (const DrawnSpring& drawn : springs)
        key.push_back({MarkOnLine{drawn.mark, drawn.line}, spring_words(drawn.spring)});
    key.push_back({NoSample{}, "Lines run from no force to the last reading used; readings left out are not shown."});
    key.push_back({LineKind::axis, "heights asked for"});
    return key;
}

HeightLabels asked_labels(const std::vector<DrawnSpring>& springs, const Plot& plot) {
    HeightLabels out;
    std::set<double> seen;
    for (const DrawnSpring& drawn : springs)
        for (const bench::LoadAtHeight& load : drawn.spring.loads) {
            const double height = in_mm(load.asked.height.value);
            if (seen.insert(height).second) out.push_back({plot.x(height), load.asked.name, fixed(height, 2)});
        }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    return out;
}

void draw_asked(Drawing& drawing, const Plot& plot, const std::vector<DrawnSpring>& springs) {
    std::set<double> heights;
    for (const DrawnSpring& drawn : springs)
        for (const bench::LoadAtHeight& load : drawn.spring.loads) heights.insert(in_mm(load.asked.height.value));
    for (const double height : heights) draw_upright_line(drawing, plot, height, LineKind::axis);
}

void draw_residual(Drawing& drawing, const Plot& plot, const MeasuredSpring& s, const BenchPoint& p) {
    const double value = in_doubts(s, p);
    const double x = plot.x(in_mm(p.height));
    if (value >= plot.bottom_value && value <= plot.top_value) {
        if (p.use != Use::unloading) drawing.line({x, plot.y(0.0)}, {x, plot.y(value)});
        return draw_mark(drawing, {x, plot.y(value)}, mark_of(p.use));
    }
    // Further off than the plot reaches: its sign at the edge, with an arrow the way it lies.
    const double way = value > 0.0 ? 1.0 : -1.0;
    const double edge = value > 0.0 ? plot.box.top : plot.box.bottom;
    arrow_head(drawing, {x, edge}, 90.0 * way);
    draw_mark(drawing, {x, edge - way * 3.6}, mark_of(p.use));
}

/// Where the plots stand: all that the key leaves.
Box plots_in(const Box& box) { return {box.left, box.bottom, box.right - kKeyWidth - kKeyGap, box.top}; }
Box key_in(const Box& box) { return {box.right - kKeyWidth, box.bottom, box.right, box.top}; }

Plot force_plot_in(const Box& box, const std::vector<DrawnSpring>& springs, double below) {
    const HeightRange range = height_range(springs);
    const double top = 1.06 * highest_force(springs, range);
    return {plot_in(box, kHeightLabels, below), range.greatest, range.least, lowest_force(springs, top), top};
}

void draw_force_axes(Drawing& drawing, const Plot& plot, const std::vector<DrawnSpring>& springs,
                     const std::string& below) {
    draw_level_axis(drawing, plot, below, kHeightTicks);
    draw_upright_axis(drawing, plot, "", kForceTicks);
    const Text name{{plot.box.left - kNumbersWidth, plot.box.top + kNameAbove}, "force F [N]"};
    drawing.add(name);
    draw_height_labels(drawing, asked_labels(springs, plot),
                       {text_box(name).right, plot.box.bottom, plot.box.right, plot.box.top});
}

/// Returns how many times too long the error bars are.
double draw_force_of_one(Drawing& drawing, const Box& box, const MeasuredSpring& s) {
    const std::vector<DrawnSpring> one{{s}};
    const Plot plot = force_plot_in(box, one, kNumbersBelow);
    const double times = magnification(s, plot.box.height() / (plot.top_value - plot.bottom_value));
    for (const auto* bracket : {&s.contact, &s.closing}) draw_bracket(drawing, plot, *bracket);
    draw_level_line(drawing, plot, 0.0, LineKind::narrow);
    draw_asked(drawing, plot, one);
    draw_fitted(drawing, plot, one.front(), height_range(one), true);
    draw_bars(drawing, plot, s, times);
    draw_points(drawing, plot, one.front(), true);
    draw_mark(drawing, plot.at(in_mm(s.free_length.value), 0.0), Mark::open_diamond);
    draw_force_axes(drawing, plot, one, "");
    draw_bracket_name(drawing, plot, s.contact, "contact", true);
    draw_bracket_name(drawing, plot, s.closing, "coils close", false);
    return times;
}

/// One apart, or two where their numbers find no room one over the other.
int residual_ticks(const Plot& plot) {
    const double reach = plot.top_value - plot.bottom_value;
    const double apart = plot.box.height() / reach >= kNumberPitch ? 1.0 : 2.0;
    return static_cast<int>(std::ceil(reach / apart - 1e-9));
}

void draw_residuals(Drawing& drawing, const Box& box, const MeasuredSpring& s, double reach) {
    const std::vector<DrawnSpring> one{{s}};
    const HeightRange range = height_range(one);
    const Plot plot{plot_in(box, kAbovePlot, kBelowPlot), range.greatest, range.least, -reach, reach};
    draw_asked(drawing, plot, one);
    for (const double edge : {-1.0, 1.0}) draw_level_line(drawing, plot, edge, LineKind::hidden);
    draw_level_line(drawing, plot, 0.0, LineKind::narrow);
    for (const BenchPoint& p : s.points) draw_residual(drawing, plot, s, p);
    draw_level_axis(drawing, plot, kHeightAxis, kHeightTicks);
    draw_upright_axis(drawing, plot, "", residual_ticks(plot));
    drawing.add(Text{{box.left, plot.box.top + 2.6}, "residual [U]"});
}

}  // namespace

DrawnSpring drawn_as(const MeasuredSpring& spring, std::size_t index) {
    constexpr std::array kMarks{Mark::disc,   Mark::open_square, Mark::triangle, Mark::open_diamond,
                                Mark::square, Mark::ring,        Mark::diamond,  Mark::open_triangle};
    constexpr std::array kLines{LineKind::wide, LineKind::hidden, LineKind::narrow, LineKind::extreme};
    return {spring, kMarks[index % kMarks.size()], kLines[index % kLines.size()]};
}

HeightRange height_range(const std::vector<DrawnSpring>& springs) {
    HeightRange out{-1e300, 1e300};
    const auto take = [&](double height) {
        out.greatest = std::max(out.greatest, height);
        out.least = std::min(out.least, height);
    };
    for (const DrawnSpring& drawn : springs) {
        for (const BenchPoint& p : drawn.spring.points)
            if (springs.size() == 1 || is_used(p)) take(in_mm(p.height));
        for (const bench::LoadAtHeight& load : drawn.spring.loads) take(in_mm(load.asked.height.value));
        take(in_mm(drawn.spring.free_length.value));
    }
    const double margin = 0.03 * (out.greatest - out.least);
    return {out.greatest + margin, out.least - margin};
}

double magnification(const MeasuredSpring& spring, double mm_per_newton) {
    double longest = 0.0;
    for (const BenchPoint& p : spring.points) longest = std::max(longest, mm_per_newton * doubt_of(spring, p));
    if (longest > kMarkRadius + 0.3 || longest <= 0.0) return 1.0;
    const double wanted = kSeenBar / longest;
    const double power = std::pow(10.0, std::floor(std::log10(wanted) + 1e-9));
    for (const double share : {1.0, 2.0, 5.0})
        if (share * power >= wanted * (1.0 - 1e-9)) return share * power;
    return 10.0 * power;
}

void draw_spring_plots(Drawing& drawing, const Box& box, const MeasuredSpring& spring) {
    const Box plots = plots_in(box);
    const double between = plots.bottom + kResidualShare * plots.height();
    const double times = draw_force_of_one(drawing, {plots.left, between, plots.right, plots.top}, spring);
    const double reach = residual_reach(spring);
    draw_residuals(drawing, {plots.left, plots.bottom, plots.right, between}, spring, reach);
    PlotKey key = spring_key(spring, times, reach, true);
    if (key_height(key, kKeyWidth) > box.height()) key = spring_key(spring, times, reach, false);
    draw_plot_key(drawing, key_in(box), key);
}

void draw_overlay_plot(Drawing& drawing, const Box& box, const std::vector<DrawnSpring>& springs) {
    const Plot plot = force_plot_in(plots_in(box), springs, kBelowPlot);
    draw_level_line(drawing, plot, 0.0, LineKind::narrow);
    draw_asked(drawing, plot, springs);
    for (const DrawnSpring& drawn : springs) draw_fitted(drawing, plot, drawn, height_range(springs), false);
    for (const DrawnSpring& drawn : springs) draw_points(drawing, plot, drawn, false);
    draw_force_axes(drawing, plot, springs, kHeightAxis);
    draw_plot_key(drawing, key_in(box), overlay_key(springs));
}

}  // namespace seatload::sheet
