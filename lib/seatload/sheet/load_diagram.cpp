// SPDX-License-Identifier: MIT
#include <seatload/sheet/load_diagram.hpp>

#include <algorithm>
#include <vector>

#include <seatload/sheet/axis_labels.hpp>
#include <seatload/sheet/diagram_key.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kBandHalfWidth = 1.2;
constexpr double kWhisker = 2.2;  ///< how far right of the band the grade's bar stands
constexpr std::size_t kAllLabels = 5;
constexpr std::size_t kLeastLabels = 3;
constexpr double kLowestPlot = 20.0;  ///< in which a load line still shows its slope, and F1 and F2 have their labels
constexpr double kFarthestLabel = 18.0;  ///< that a label under the axis is moved aside, or its line lies too flat
constexpr double kHeadroom = 6.0;        ///< over the highest force
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
};

/// A point that a spring this long cannot reach is left out.
std::vector<LinePoint> line_points(const LoadDiagram& d) {
    std::vector<LinePoint> out{
        {d.seated.length, d.seated.nominal, d.seated.length_words, d.seated.load_words},
        {d.full_travel.length, d.full_travel.nominal, d.full_travel.length_words, d.full_travel.load_words},
        {d.smallest_length, d.rate * (d.free_length - d.smallest_length), d.smallest_words, d.smallest_load_words},
        {d.solid_length, d.rate * (d.free_length - d.solid_length), d.solid_words, d.solid_load_words}};
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

/// At their lengths, longest first, as they come from left to right; of more than `most`, those of reference points are
/// left out first, as of the forces.
AxisLabels length_labels(const LoadDiagram& d, std::size_t most) {
    AxisLabels out{{d.free_length, d.free_words}};
    for (const LinePoint& p : line_points(d)) out.push_back({p.length, p.length_words});
    if (const auto length = shown_buckling(d))
        out.insert(out.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(3, out.size())),
                   {*length, d.buckling_words});
    if (out.size() > most) out.resize(most);
    std::stable_sort(out.begin(), out.end(), [](const AxisLabel& a, const AxisLabel& b) { return a.at > b.at; });
    return out;
}

/// At their forces, smallest first, as they come from the bottom up; of more than `most`, those of reference points are
/// left out first: the table beside the diagram has them.
AxisLabels force_labels(const LoadDiagram& d, std::size_t most) {
    AxisLabels out;
    for (const LinePoint& p : line_points(d)) out.push_back({p.force, p.force_words});
    if (d.permissible_force && *d.permissible_force <= highest_force(d))
        out.insert(out.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(2, out.size())),
                   {*d.permissible_force, d.permissible_words});
    if (out.size() > most) out.resize(most);
    std::stable_sort(out.begin(), out.end(), [](const AxisLabel& a, const AxisLabel& b) { return a.at < b.at; });
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

/// What the labels beside the axis and the key leave of the box; its lower edge is that of the box.
Box plot_over(const Box& box, const LoadDiagram& d) {
    const AxisLabels name{{0.0, d.words.force_axis}};
    const double left = std::max(width_beside_axis(name), width_beside_axis(force_labels(d, kAllLabels)));
    return {box.left + left, box.bottom, box.right - 3.0, plot_top(box, d)};
}

/// The labels under the axis, each at its place on the paper, that leave the diagram its height and stand near their
/// places; at the least those of L0, L1 and L2: the table beside the diagram has the others.
AxisLabels shown_lengths(const Box& box, const LoadDiagram& d) {
    const Box plot = plot_over(box, d);
    const Axes axes(plot, d, highest_force(d));
    for (std::size_t most = kAllLabels + 1;; --most) {
        AxisLabels labels = length_labels(d, most);
        for (AxisLabel& label : labels) label.at = axes.x(label.at);
        const double height = plot.height() - height_under_axis(labels, box.width());
        const bool is_near = farthest_under_axis(labels, box.left, box.right) <= kFarthestLabel;
        if ((height >= kLowestPlot && is_near) || most <= kLeastLabels) return labels;
    }
}

void draw_labels(Drawing& drawing, const Axes& axes, const Box& box, const LoadDiagram& d) {
    draw_under_axis(drawing, shown_lengths(box, d), axes.plot().bottom, box.left, box.right);
    const double lowest = axes.plot().bottom + 1.0;
    const double highest = axes.plot().top - 3.0;
    AxisLabels forces = force_labels(d, labels_beside_axis(highest - lowest));
    for (AxisLabel& label : forces) label.at = axes.y(label.at);
    draw_beside_axis(drawing, forces, axes.plot().left, lowest, highest);
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

/// What the labels and the key leave of the box.
Box plot_in(const Box& box, const LoadDiagram& d) {
    Box plot = plot_over(box, d);
    plot.bottom += height_under_axis(shown_lengths(box, d), box.width());
    return plot;
}

}  // namespace

void draw_load_diagram(Drawing& drawing, const Box& box, const LoadDiagram& diagram) {
    const Axes axes(plot_in(box, diagram), diagram, highest_force(diagram));
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
    draw_labels(drawing, axes, box, diagram);
}

}  // namespace seatload::sheet
