// SPDX-License-Identifier: MIT
#include <seatload/sheet/legend.hpp>

#include <algorithm>

#include <seatload/sheet/entry.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kLegendPitch = 4.0;
constexpr double kTopAndBottom = 1.2;
constexpr double kLegendPad = 2.0;
constexpr double kLeastGap = 3.0;
constexpr double kMostGap = 9.0;
constexpr double kNarrowest = 0.8;

double width_of(const std::vector<std::string>& pieces) {
    double sum = 0.0;
    for (const std::string& piece : pieces) sum += text_width(piece, kLettering);
    return sum;
}

}  // namespace

Legend::Legend(const Wording& words, bool has_inches, double width) : width_(width), lines_(1) {
    const std::string pieces[] = {std::string(sign(Status::required)) + " " + words.say("legend.required"),
                                  words.say("legend.reference"),
                                  std::string(sign(Status::adjustable)) + " " + words.say("legend.adjustable"),
                                  words.say(has_inches ? "legend.inches" : "legend.millimetres")};
    for (const std::string& piece : pieces) {
        lines_.back().push_back(piece);
        const double gaps = kLeastGap * static_cast<double>(lines_.back().size() - 1);
        if (lines_.back().size() == 1 || width_of(lines_.back()) + gaps <= width - 2.0 * kLegendPad) continue;
        lines_.back().pop_back();
        lines_.push_back({piece});
    }
}

double Legend::height() const { return kLegendPitch * static_cast<double>(lines_.size()) + kTopAndBottom; }

void Legend::draw(Drawing& drawing, const Box& box) const {
    double y = box.top - 3.8;
    for (const std::vector<std::string>& pieces : lines_) {
        const double spare = width_ - 2.0 * kLegendPad - width_of(pieces);
        const double gap =
            std::clamp(spare / std::max<double>(1.0, static_cast<double>(pieces.size()) - 1.0), kLeastGap, kMostGap);
        double x = box.left + kLegendPad;
        for (const std::string& piece : pieces) {
            const Text text = fitted({{x, y}, piece}, width_ - 2.0 * kLegendPad, kNarrowest);
            drawing.add(text);
            x += text_width(text) + gap;
        }
        y -= kLegendPitch;
    }
    drawing.line({box.left, box.bottom}, {box.right, box.bottom});
}

}  // namespace seatload::sheet
