// SPDX-License-Identifier: MIT
#include <seatload/sheet/load_diagram.hpp>

#include <algorithm>
#include <vector>

#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>

namespace seatload::sheet {
namespace {

constexpr double kLabelPitch = 4.3;  ///< between force labels
constexpr double kLabelGap = 2.0;    ///< between length labels
constexpr double kLeader = 3.0;      ///< length of the line from an axis to its label
constexpr double kBandHalfWidth = 1.2;
constexpr double kWhisker = 2.2;  ///< how far right of the band the grade's bar stands
constexpr double kKeyHeight = 5.0;

/// Where lengths and forces lie on the paper.
class Axes {
  public:
    Axes(const Box& plot, const LoadDiagram& diagram, double highest_force)
        : plot_(plot),
          longest_(diagram.free_length),
          shortest_(std::min(diagram.solid_length, diagram.full_travel.length)),
          highest_(highest_force) {}

    const Box& plot() const { return plot_; }
    double x(double length) const {
        return plot_.left + (longest_ - length) / (longest_ - shortest_) * (plot_.width() - 14.0);
    }
    double y(double force) const { return plot_.bottom + force / highest_ * (plot_.height() - 6.0); }
    Point at(double length, double force) const { return {x(length), y(force)}; }

  private:
    Box plot_;
    double longest_;
    double shortest_;
    double highest_;
};

/// A point of the line with its two labels.
struct Mark {
    double length;
    double force;
    std::string length_words;
    std::string force_words;  ///< empty for the free spring
};

std::vector<Mark> marks(const LoadDiagram& d) {
    std::vector<Mark> out{
        {d.free_length, 0.0, d.free_words, ""},
        {d.seated.length, d.seated.nominal, d.seated.length_words, d.seated.load_words},
        {d.full_travel.length, d.full_travel.nominal, d.full_travel.length_words, d.full_travel.load_words},
        {d.smallest_length, d.rate * (d.free_length - d.smallest_length), d.smallest_words, d.smallest_load_words},
        {d.solid_length, d.rate * (d.free_length - d.solid_length), d.solid_words, d.solid_load_words}};
    std::stable_sort(out.begin(), out.end(), [](const Mark& a, const Mark& b) { return a.length > b.length; });
    return out;
}

double highest_force(const LoadDiagram& d) {
    return std::max({d.rate * (d.free_length - d.solid_length), d.seated.nominal + d.seated.plus,
                     d.full_travel.nominal + d.full_travel.plus,
                     d.full_travel.nominal + d.full_travel.grade_tolerance.value_or(0.0)});
}

/// Whether the labels of the lengths find room side by side, or must be turned to stand upright.
bool are_turned(const Box& box, const std::vector<Mark>& all) {
    double width = 0.0;
    for (const Mark& mark : all) width += text_width(mark.length_words, kLettering) + kLabelGap;
    return width > box.width();
}

double length_label_height(const std::vector<Mark>& all, bool turned) {
    if (!turned) return 4.5;
    double widest = 0.0;
    for (const Mark& mark : all) widest = std::max(widest, text_width(mark.length_words, kLettering));
    return widest + 1.5;
}

void draw_length_labels(Drawing& drawing, const Axes& axes, const Box& box, const std::vector<Mark>& all) {
    const bool turned = are_turned(box, all);
    std::vector<Spot> spots;
    for (const Mark& mark : all)
        spots.push_back(
            {axes.x(mark.length), turned ? kLabelPitch : text_width(mark.length_words, kLettering) + kLabelGap});
    const auto places = spread(spots, box.left, box.right);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Point foot{axes.x(all[i].length), axes.plot().bottom};
        const double end = foot.y - kLeader;
        drawing.line(foot, {places[i], end});
        Text text{{places[i], end - 3.3}, all[i].length_words, kLettering, Align::centre};
        if (turned) {
            text.at = {places[i] + 0.5 * kLettering, end - 0.8};
            text.align = Align::right;
            text.turn = 90.0;
        }
        drawing.add(text);
    }
}

void draw_force_labels(Drawing& drawing, const Axes& axes, const std::vector<Mark>& all) {
    std::vector<const Mark*> shown;
    for (const Mark& mark : all)
        if (!mark.force_words.empty()) shown.push_back(&mark);
    std::stable_sort(shown.begin(), shown.end(), [](const Mark* a, const Mark* b) { return a->force < b->force; });
    std::vector<Spot> spots;
    for (const Mark* mark : shown) spots.push_back({axes.y(mark->force), kLabelPitch});
    const auto places = spread(spots, axes.plot().bottom + 1.0, axes.plot().top - 3.0);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const Point foot{axes.plot().left, axes.y(shown[i]->force)};
        const double end = foot.x - kLeader;
        drawing.line(foot, {end, places[i]});
        drawing.add(Text{{end - 0.6, places[i] - 0.5 * kLettering}, shown[i]->force_words, kLettering, Align::right});
    }
}

void draw_band(Drawing& drawing, const Axes& axes, const DiagramLoad& load) {
    const double x = axes.x(load.length);
    const Box band{x - kBandHalfWidth, axes.y(std::max(0.0, load.nominal - load.minus)), x + kBandHalfWidth,
                   axes.y(load.nominal + load.plus)};
    drawing.fill(band, 0.8);
    drawing.box(band);
}

void draw_grade_bar(Drawing& drawing, double x, double low, double high) {
    drawing.line({x, low}, {x, high});
    for (const double y : {low, high}) drawing.line({x - 0.8, y}, {x + 0.8, y});
}

void draw_grade_bar(Drawing& drawing, const Axes& axes, const DiagramLoad& load) {
    if (!load.grade_tolerance) return;
    draw_grade_bar(drawing, axes.x(load.length) + kWhisker, axes.y(std::max(0.0, load.nominal - *load.grade_tolerance)),
                   axes.y(load.nominal + *load.grade_tolerance));
}

void draw_axes(Drawing& drawing, const Axes& axes) {
    const Box& plot = axes.plot();
    drawing.line({plot.left, plot.bottom}, {plot.left, plot.top}, LineKind::wide);
    drawing.line({plot.left, plot.bottom}, {plot.right, plot.bottom}, LineKind::wide);
    arrow_head(drawing, {plot.left, plot.top + 1.0}, 90.0);
    arrow_head(drawing, {plot.right + 1.0, plot.bottom}, 0.0);
    drawing.add(Text{{plot.left - 1.5, plot.top - 1.2}, "F [N]", kLettering, Align::right});
    drawing.add(Text{{plot.right + 2.0, plot.bottom + 1.8}, "L [mm]", kLettering, Align::right});
}

/// The line: full up to Ln, dashed where the law is no longer promised.
void draw_line(Drawing& drawing, const Axes& axes, const LoadDiagram& d) {
    const auto on_line = [&](double length) { return axes.at(length, d.rate * (d.free_length - length)); };
    const double last = std::clamp(std::min(d.smallest_length, d.full_travel.length), d.solid_length, d.free_length);
    drawing.line(on_line(d.free_length), on_line(last), LineKind::wide);
    if (last > d.solid_length) drawing.line(on_line(last), on_line(d.solid_length), LineKind::hidden);
}

void draw_key(Drawing& drawing, const Box& box, const LoadDiagram& d) {
    const double y = box.top - 4.0;
    double x = box.left + 1.0;
    const Box swatch{x, y - 0.3, x + 2.4, y + 2.8};
    drawing.fill(swatch, 0.8);
    drawing.box(swatch);
    const Text ordered{{x + 4.0, y}, "as ordered"};
    drawing.add(ordered);
    if (!d.seated.grade_tolerance && !d.full_travel.grade_tolerance) return;
    x = text_box(ordered).right + 4.0;
    draw_grade_bar(drawing, x, y - 0.3, y + 2.8);
    drawing.add(Text{{x + 2.5, y}, "EN 15800 grade"});
}

}  // namespace

void draw_load_diagram(Drawing& drawing, const Box& box, const LoadDiagram& diagram) {
    const std::vector<Mark> all = marks(diagram);
    double widest = text_width("F [N]", kLettering);
    for (const Mark& mark : all) widest = std::max(widest, text_width(mark.force_words, kLettering));
    const Box plot{box.left + widest + kLeader + 2.0,
                   box.bottom + kLeader + length_label_height(all, are_turned(box, all)), box.right - 3.0,
                   box.top - kKeyHeight - 2.0};
    const Axes axes(plot, diagram, highest_force(diagram));

    draw_key(drawing, box, diagram);
    for (const DiagramLoad* load : {&diagram.seated, &diagram.full_travel}) draw_band(drawing, axes, *load);
    for (const Mark& mark : all) {
        if (mark.force <= 0.0) continue;
        const Point p = axes.at(mark.length, mark.force);
        drawing.line({p.x, plot.bottom}, p, LineKind::hidden);
        drawing.line({plot.left, p.y}, p, LineKind::hidden);
    }
    draw_axes(drawing, axes);
    draw_line(drawing, axes, diagram);
    for (const DiagramLoad* load : {&diagram.seated, &diagram.full_travel}) {
        draw_grade_bar(drawing, axes, *load);
        drawing.add(Disc{axes.at(load->length, load->nominal), 0.7});
    }
    draw_length_labels(drawing, axes, box, all);
    draw_force_labels(drawing, axes, all);
}

}  // namespace seatload::sheet
