// SPDX-License-Identifier: MIT
#include <seatload/sheet/plot_key.hpp>

#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kKeyPitch = 3.8;
constexpr double kKeyBetween = 1.0;
constexpr double kSample = 8.0;
constexpr double kKeyIndent = kSample + 1.6;
constexpr double kKeyFirstLine = 3.2;  ///< base line under the upper edge

std::vector<std::string> lines_of(const PlotKeyEntry& entry, double width) {
    return wrapped(entry.words, width - kKeyIndent);
}

/// Draws samples into a box as high as capital letters.
struct SampleDrawer {
    Drawing& drawing;
    Box box;

    Point left() const { return {box.left, box.centre().y}; }
    Point right() const { return {box.right, box.centre().y}; }
    void operator()(NoSample) const {}
    void operator()(LineKind kind) const { drawing.line(left(), right(), kind); }
    void operator()(Mark mark) const { draw_mark(drawing, box.centre(), mark); }
    void operator()(MarkOnLine sample) const {
        drawing.line(left(), right(), sample.kind);
        draw_mark(drawing, box.centre(), sample.mark);
    }
    void operator()(ErrorBarSample) const { draw_error_bar(drawing, box.centre().x, box.bottom - 0.4, box.top + 0.4); }
    void operator()(ArrowSample) const {
        drawing.line(left(), right());
        arrow_head(drawing, right(), 0.0);
    }
    void operator()(GreySample sample) const {
        drawing.fill(box, sample.grey);
        drawing.box(box);
    }
    void operator()(HatchSample sample) const {
        hatch(drawing, {{box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}},
              sample.hatching);
        drawing.box(box);
    }
};

}  // namespace

double key_height(const PlotKey& key, double width) {
    double sum = 0.0;
    for (const PlotKeyEntry& entry : key)
        sum += kKeyPitch * static_cast<double>(lines_of(entry, width).size()) + kKeyBetween;
    return sum;
}

void draw_plot_key(Drawing& drawing, const Box& box, const PlotKey& key) {
    double y = box.top - kKeyFirstLine;
    for (const PlotKeyEntry& entry : key) {
        std::visit(SampleDrawer{drawing, {box.left, y, box.left + kSample, y + kLettering}}, entry.sample);
        for (const std::string& line : lines_of(entry, box.width())) {
            drawing.add(Text{{box.left + kKeyIndent, y}, line});
            y -= kKeyPitch;
        }
        y -= kKeyBetween;
    }
}

}  // namespace seatload::sheet
