// SPDX-License-Identifier: MIT
#include <seatload/sheet/fact_lines.hpp>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kFactPitch = 3.8;
constexpr double kFirstLine = 3.2;  ///< base line under the upper edge
constexpr double kAfter = 0.7;      ///< each fact
constexpr double kFactGap = 2.0;    ///< between the columns

std::vector<std::string> lines_of(const Fact& fact, const FactLines& all) {
    return wrapped(fact.words, all.width - all.heading_width - kFactGap);
}

}  // namespace

double height(const FactLines& lines) {
    double sum = 0.0;
    for (const Fact& fact : lines.facts) sum += kFactPitch * static_cast<double>(lines_of(fact, lines).size()) + kAfter;
    return sum;
}

void draw(Drawing& drawing, Point upper_left, const FactLines& lines) {
    double y = upper_left.y - kFirstLine;
    for (const Fact& fact : lines.facts) {
        drawing.add(
            fitted({{upper_left.x, y}, fact.heading, kLettering, Align::left, Face::bold}, lines.heading_width));
        for (const std::string& line : lines_of(fact, lines)) {
            drawing.add(Text{{upper_left.x + lines.heading_width + kFactGap, y}, line});
            y -= kFactPitch;
        }
        y -= kAfter;
    }
}

}  // namespace seatload::sheet
