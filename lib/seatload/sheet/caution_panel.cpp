// SPDX-License-Identifier: MIT
#include <seatload/sheet/caution_panel.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kCautionPitch = 4.1;
constexpr double kTightPitch = 3.8;
constexpr double kPad = 2.0;
constexpr double kTopPad = 0.8;
constexpr double kBottomPad = 1.2;
constexpr double kSqueeze = 0.95;
constexpr double kTightSqueeze = 0.75;
constexpr double kWide = 120.0;  ///< from this width on, headings stand beside their lines
constexpr double kHeadingGap = 4.0;

}  // namespace

CautionPanel::CautionPanel(const Wording& words, const std::string& mark, double width, bool is_tight)
    : width_(width), pitch_(is_tight ? kTightPitch : kCautionPitch), squeeze_(is_tight ? kTightSqueeze : kSqueeze) {
    sections_.push_back({words.say("caution.heading"), {}});
    if (!mark.empty()) sections_.push_back({words.say("mark.heading"), {}});
    const double room = width_ - lines_from() - kPad;
    sections_[0].lines = wrapped(words.say("caution.words"), room, kLettering, Face::regular, squeeze_);
    if (!mark.empty()) sections_[1].lines = wrapped(mark, room, kLettering, Face::regular, squeeze_);
}

bool CautionPanel::is_wide() const { return width_ >= kWide; }

double CautionPanel::lines_from() const {
    double widest = 0.0;
    for (const Section& section : sections_)
        widest = std::max(widest, text_width(section.heading, kLettering, Face::bold));
    return is_wide() ? kPad + widest + kHeadingGap : kPad;
}

std::size_t CautionPanel::line_count(const Section& section) const {
    return section.lines.size() + (is_wide() ? 0 : 1);
}

double CautionPanel::height() const {
    std::size_t count = 0;
    for (const Section& section : sections_) count += line_count(section);
    return kTopPad + pitch_ * static_cast<double>(count) + kBottomPad;
}

void CautionPanel::draw(Drawing& drawing, const Box& box) const {
    drawing.box(box, LineKind::wide);
    double y = box.top - kTopPad;
    for (const Section& section : sections_) {
        const double base = y - 3.4;
        Text heading{.at = {box.left + kPad, base}, .words = section.heading, .face = Face::bold};
        drawing.add(fitted(heading, width_ - 2.0 * kPad));
        double line = is_wide() ? base : base - pitch_;
        for (const std::string& words : section.lines) {
            drawing.add(Text{.at = {box.left + lines_from(), line}, .words = words, .squeeze = squeeze_});
            line -= pitch_;
        }
        y -= pitch_ * static_cast<double>(line_count(section));
    }
}

}  // namespace seatload::sheet
