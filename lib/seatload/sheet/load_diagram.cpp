// SPDX-License-Identifier: MIT
#include <seatload/sheet/load_diagram.hpp>

#include <algorithm>
#include <array>
#include <vector>

#include <seatload/sheet/axis_labels.hpp>
#include <seatload/sheet/diagram_key.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kBandHalfWidth = 1.2;
constexpr double kWhisker = 2.2;      ///< how far right of the band the grade's bar stands
constexpr double kLowestPlot = 20.0;  ///< in which a load line still shows its slope, and four loads have their labels
constexpr double kFarthestLabel = 18.0;  ///< that a label under the axis is moved aside, or its line lies too flat
constexpr double kHeadroom = 6.0;        ///< over the highest force
constexpr double kUnderForceAxis = 3.0;  ///< from the top of the plot to where the labels of forces may begin
/// A limit no further above the highest force, as a share, stretches the diagram to it.
constexpr double kNearlyInside = 1.15;

/// Where lengths and forces lie on the paper.
class Axes {
  public:
    Axes(const Box& plot, const LoadDiagram& diagram, double highest_force)
        : plot_(plot),
          room_right_(text_width(diagram.words.length_axis, kLettering) + 1.0),
          longest_(diagram.free_length),
          shortest_(std::min(diagram.solid_length, diagram.full_travel.length)),
          highest_(highest_force) {}

    const Box& plot() const { return plot_; }
    double x(double length) const {
        return plot_.left + (longest_ - length) / (longest_ - shortest_) * (plot_.width() - room_right_);
    }
    double y(double force) const { return plot_.bottom + force / highest_ * (plot_.height() - kHeadroom); }
    Point at(double length, double force) const { return {x(length), y(force)}; }
    double shortest() const { return shortest_; }
    double highest() const { return highest_; }

  private:
    Box plot_;
    double room_right_;  ///< for the words at the end of the axis
    double longest_;
    double shortest_;
    double highest_;
};

/// A point of the load line.
struct LinePoint {
    double length;
    double force;
    std::string length_words;
    std::string force_words;
    bool is_ordered;
};

/// A point that a spring this long cannot reach is left out.
std::vector<LinePoint> line_points(const LoadDiagram& d) {
    const auto on_line = [&](double length) { return d.rate * (d.free_length - length); };
    std::vector<LinePoint> out{
        {d.seated.length, d.seated.nominal, d.seated.length_words, d.seated.load_words, true},
        {d.full_travel.length, d.full_travel.nominal, d.full_travel.length_words, d.full_travel.load_words, true},
        {d.smallest_length, on_line(d.smallest_length), d.smallest_words, d.smallest_load_words, false},
        {d.solid_length, on_line(d.solid_length), d.solid_words, d.solid_load_words, false}};
    std::erase_if(out, [&](const LinePoint& p) { return p.length >= d.free_length; });
    return out;
}

/// The length at which it buckles, when the load line comes to it.
std::optional<double> shown_buckling(const LoadDiagram& d) {
    const auto& length = d.buckling_length;
    return length && *length<d.free_length&& * length> d.solid_length ? length : std::nullopt;
}

double highest_force(const LoadDiagram& d) {
    const double highest = std::max({d.rate * (d.free_length - d.solid_length), d.seated.nominal + d.seated.plus,
                                     d.full_travel.nominal + d.full_travel.plus,
                                     d.full_travel.nominal + d.full_travel.grade_tolerance.value_or(0.0)});
    const double limit = d.permissible_force.value_or(0.0);
    return limit <= kNearlyInside * highest ? std::max(highest, limit) : highest;
}

/// How much is written at the marks under the axis.
enum class Naming { in_full, references_short, all_short };

/// The symbol of a mark, which its words begin with.
std::string symbol_of(const std::string& words) { return words.substr(0, words.find(' ')); }

/// At their lengths [mm], longest first, as they come from left to right.
AxisLabels length_labels(const LoadDiagram& d, Naming naming) {
    const auto shown = [&](const std::string& words, bool is_ordered) {
        const bool is_short = naming == Naming::all_short || (naming == Naming::references_short && !is_ordered);
        return is_short ? symbol_of(words) : words;
    };
    AxisLabels out{{d.free_length, shown(d.free_words, true)}};
    for (const LinePoint& p : line_points(d)) out.push_back({p.length, shown(p.length_words, p.is_ordered)});
    if (const auto length = shown_buckling(d)) out.push_back({*length, shown(d.buckling_words, false)});
    std::stable_sort(out.begin(), out.end(), [](const AxisLabel& a, const AxisLabel& b) { return a.at > b.at; });
    return out;
}

/// What is written at a force [N].
struct ForceLabel {
    std::vector<double> forces;
    std::string words;
    std::string short_words;  ///< beside others
};

/// At their forces, smallest first, as they come from the bottom up.
std::vector<ForceLabel> force_labels(const LoadDiagram& d) {
    std::vector<ForceLabel> out;
    for (const LinePoint& p : line_points(d))
        out.push_back({{p.force}, p.force_words, p.is_ordered ? p.force_words : symbol_of(p.force_words)});
    if (d.permissible_force && *d.permissible_force <= highest_force(d))
        out.push_back({{*d.permissible_force}, d.permissible_words, symbol_of(d.permissible_words)});
    std::stable_sort(out.begin(), out.end(),
                     [](const ForceLabel& a, const ForceLabel& b) { return a.forces[0] < b.forces[0]; });
    return out;
}

/// The label of two neighbours, in the order in which they are read.
ForceLabel joined(const ForceLabel& lower, const ForceLabel& upper) {
    ForceLabel out = lower;
    out.forces.insert(out.forces.end(), upper.forces.begin(), upper.forces.end());
    out.words = out.short_words = lower.short_words + ", " + upper.short_words;
    return out;
}

/// Neighbours share a label until no more are left than find room: each time those that take the least width.
std::vector<ForceLabel> joined_to(std::vector<ForceLabel> labels, std::size_t most) {
    while (labels.size() > std::max<std::size_t>(1, most)) {
        std::size_t best = 0;
        const auto width = [&](std::size_t i) {
            return text_width(joined(labels[i], labels[i + 1]).words, kLettering);
        };
        for (std::size_t i = 1; i + 1 < labels.size(); ++i)
            if (width(i) < width(best)) best = i;
        labels[best] = joined(labels[best], labels[best + 1]);
        labels.erase(labels.begin() + static_cast<std::ptrdiff_t>(best) + 1);
    }
    return labels;
}

/// The labels at their forces [N], for their width alone.
AxisLabels at_forces(const std::vector<ForceLabel>& labels) {
    AxisLabels out;
    for (const ForceLabel& label : labels)
        out.push_back({label.forces[0], label.words, {label.forces.begin() + 1, label.forces.end()}});
    return out;
}

std::vector<KeyEntry> key_entries(const LoadDiagram& d) {
    std::vector<KeyEntry> out;
    const auto add = [&](bool shown, Sample sample, const std::string& words) {
        if (shown && !words.empty()) out.push_back({sample, words});
    };
    add(true, Sample::band, d.words.ordered);
    add(d.seated.grade_tolerance || d.full_travel.grade_tolerance, Sample::bar, d.words.grade);
    add(shown_buckling(d).has_value(), Sample::upright_limit, d.words.buckling);
    const bool is_above = d.permissible_force.value_or(0.0) > highest_force(d);
    add(d.permissible_force.has_value(), is_above ? Sample::none : Sample::level_limit, d.words.permissible);
    return out;
}

double plot_top(const Box& box, const LoadDiagram& d) {
    return box.top - key_height(key_entries(d), box.width()) - 2.0;
}

/// Where the plot lies in the box and what is written at its marks, still at their lengths and forces [mm, N].
struct Layout {
    Box plot;
    AxisLabels lengths;
    AxisRows rows;
    AxisLabels forces;
};

/// Words under the axis that may be taken.
struct UnderAxis {
    Naming naming;
    AxisRows rows;
};

/// In order of liking.
constexpr std::array kUnderAxis{UnderAxis{Naming::in_full, AxisRows::one}, UnderAxis{Naming::in_full, AxisRows::two},
                                UnderAxis{Naming::references_short, AxisRows::one},
                                UnderAxis{Naming::references_short, AxisRows::two},
                                UnderAxis{Naming::all_short, AxisRows::one}};

AxisLabels on_paper(const Axes& axes, AxisLabels lengths) {
    for (AxisLabel& label : lengths) label.at = axes.x(label.at);
    return lengths;
}

/// Whether labels find room, each near the place it belongs to.
bool is_readable(const UnderAxis& trial, const Box& box, const Axes& axes, const LoadDiagram& d) {
    const AxisLabels labels = on_paper(axes, length_labels(d, trial.naming));
    return have_room_under_axis(labels, trial.rows, box.width()) &&
           farthest_under_axis(labels, trial.rows, box.left, box.right) <= kFarthestLabel;
}

/// The words under the axis that leave the plot its height; failing that, the shortest that take least of it. Only the
/// height of the plot is still open.
UnderAxis under_axis(const Box& box, const Box& plot, const LoadDiagram& d) {
    const Axes axes(plot, d, highest_force(d));
    for (const double lowest : {kLowestPlot, 0.0})
        for (const UnderAxis& trial : kUnderAxis) {
            const bool is_low = lowest == 0.0 && trial.rows == AxisRows::two;
            if (!is_low && plot.height() - height_under_axis(trial.rows) >= lowest && is_readable(trial, box, axes, d))
                return trial;
        }
    return kUnderAxis.back();
}

Layout layout(const Box& box, const LoadDiagram& d) {
    const auto forces = force_labels(d);
    const double name = width_beside_axis({{0.0, d.words.force_axis}});
    const double left = std::max(name, width_beside_axis(at_forces(forces)));
    Layout out{{box.left + left, box.bottom, box.right - 3.0, plot_top(box, d)}, {}, AxisRows::one, {}};
    const UnderAxis under = under_axis(box, out.plot, d);
    out.lengths = length_labels(d, under.naming);
    out.rows = under.rows;
    out.plot.bottom += height_under_axis(under.rows);
    out.forces = at_forces(joined_to(forces, labels_beside_axis(out.plot.height() - kUnderForceAxis)));
    out.plot.left = std::max(out.plot.left, box.left + width_beside_axis(out.forces));
    return out;
}

void draw_labels(Drawing& drawing, const Axes& axes, const Box& box, const Layout& layout) {
    const Box& plot = axes.plot();
    draw_under_axis(drawing, on_paper(axes, layout.lengths), layout.rows, plot.bottom, box.left, box.right);
    AxisLabels forces = layout.forces;
    for (AxisLabel& label : forces) {
        label.at = axes.y(label.at);
        for (double& also : label.also) also = axes.y(also);
    }
    draw_beside_axis(drawing, forces, plot.left, plot.bottom, plot.top - kUnderForceAxis);
}

void draw_ordered(Drawing& drawing, const Axes& axes, const DiagramLoad& load) {
    const double x = axes.x(load.length);
    draw_band(drawing, {x - kBandHalfWidth, axes.y(std::max(0.0, load.nominal - load.minus)), x + kBandHalfWidth,
                        axes.y(load.nominal + load.plus)});
}

void draw_grade(Drawing& drawing, const Axes& axes, const DiagramLoad& load) {
    if (!load.grade_tolerance) return;
    draw_tolerance_bar(drawing, axes.x(load.length) + kWhisker,
                       axes.y(std::max(0.0, load.nominal - *load.grade_tolerance)),
                       axes.y(load.nominal + *load.grade_tolerance));
}

void draw_axes(Drawing& drawing, const Axes& axes, const DiagramWords& words) {
    const Box& plot = axes.plot();
    drawing.line({plot.left, plot.bottom}, {plot.left, plot.top}, LineKind::wide);
    drawing.line({plot.left, plot.bottom}, {plot.right, plot.bottom}, LineKind::wide);
    arrow_head(drawing, {plot.left, plot.top + 1.0}, 90.0);
    arrow_head(drawing, {plot.right + 1.0, plot.bottom}, 0.0);
    drawing.add(Text{{plot.left - 1.5, plot.top - 1.2}, words.force_axis, kLettering, Align::right});
    // In a low diagram the projection of a small load may run behind it.
    drawing.add(Text{.at = {plot.right + 2.0, plot.bottom + 1.8},
                     .words = words.length_axis,
                     .align = Align::right,
                     .masked = true});
}

/// From the axes to the points of the load line.
void draw_projections(Drawing& drawing, const Axes& axes, const LoadDiagram& d) {
    for (const LinePoint& point : line_points(d)) {
        const Point p = axes.at(point.length, point.force);
        drawing.line({p.x, axes.plot().bottom}, p, LineKind::hidden);
        drawing.line({axes.plot().left, p.y}, p, LineKind::hidden);
    }
}

/// The line: full up to Ln, dashed where the law is no longer promised.
void draw_line(Drawing& drawing, const Axes& axes, const LoadDiagram& d) {
    const auto on_line = [&](double length) { return axes.at(length, d.rate * (d.free_length - length)); };
    const double last = std::clamp(std::min(d.smallest_length, d.full_travel.length), d.solid_length, d.free_length);
    drawing.line(on_line(d.free_length), on_line(last), LineKind::wide);
    if (last > d.solid_length) drawing.line(on_line(last), on_line(d.solid_length), LineKind::hidden);
}

/// An arrow to what lies above the diagram.
void draw_above(Drawing& drawing, const Axes& axes, const std::string& words) {
    const Box& plot = axes.plot();
    const Point point{plot.left + 4.0, plot.top - 0.6};
    arrow_head(drawing, point, 90.0);
    drawing.line({point.x, plot.top - 4.8}, point);
    drawing.add(fitted(Text{{point.x + 1.8, plot.top - 4.2}, words}, plot.right - point.x - 1.8));
}

void draw_limits(Drawing& drawing, const Axes& axes, const LoadDiagram& d) {
    const double far = axes.x(axes.shortest()) + kWhisker + 3.0;
    if (const auto length = shown_buckling(d))
        drawing.line(axes.at(*length, 0.0), axes.at(*length, axes.highest()), LineKind::extreme);
    if (!d.permissible_force) return;
    if (*d.permissible_force > axes.highest()) return draw_above(drawing, axes, d.permissible_above_words);
    const double y = axes.y(*d.permissible_force);
    drawing.line({axes.plot().left, y}, {far, y}, LineKind::extreme);
}

}  // namespace

void draw_load_diagram(Drawing& drawing, const Box& box, const LoadDiagram& diagram) {
    const Layout where = layout(box, diagram);
    const Axes axes(where.plot, diagram, highest_force(diagram));
    draw_key(drawing, box, key_entries(diagram));
    for (const DiagramLoad* load : {&diagram.seated, &diagram.full_travel}) draw_ordered(drawing, axes, *load);
    draw_projections(drawing, axes, diagram);
    draw_limits(drawing, axes, diagram);
    draw_axes(drawing, axes, diagram.words);
    draw_line(drawing, axes, diagram);
    for (const DiagramLoad* load : {&diagram.seated, &diagram.full_travel}) {
        draw_grade(drawing, axes, *load);
        drawing.add(Disc{axes.at(load->length, load->nominal), 0.7});
    }
    draw_labels(drawing, axes, box, where);
}

}  // namespace seatload::sheet
