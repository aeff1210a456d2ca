// SPDX-License-Identifier: MIT
#include "layout_check.hpp"

#include <algorithm>

#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::test {
namespace {

using namespace sheet;

/// Of the natural width of letters; the narrow faces of drawing offices come down to about this (common practice, no
/// source).
constexpr double kNarrowest = 0.55;

/// Liang and Barsky's clipping: true when a part of the segment lies inside the box.
bool crosses(Point a, Point b, const Box& box) {
    double from = 0.0;
    double to = 1.0;
    const Point way = b - a;
    const double steps[] = {-way.x, way.x, -way.y, way.y};
    const double rooms[] = {a.x - box.left, box.right - a.x, a.y - box.bottom, box.top - a.y};
    for (int i = 0; i < 4; ++i) {
        if (steps[i] == 0.0) {
            if (rooms[i] < 0.0) return false;
            continue;
        }
        const double t = rooms[i] / steps[i];
        if (steps[i] < 0.0)
            from = std::max(from, t);
        else
            to = std::min(to, t);
    }
    return from < to;
}

bool crosses(const Path& points, bool closed, const Box& box) {
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        if (crosses(points[i], points[i + 1], box)) return true;
    return closed && crosses(points.back(), points.front(), box);
}

Path points_of(const Arc& arc) {
    constexpr int kPieces = 48;
    Path out;
    for (int i = 0; i <= kPieces; ++i)
        out.push_back(arc.centre + turned({arc.radius, 0.0}, arc.from + (arc.to - arc.from) * i / kPieces));
    return out;
}

/// Whether ink of an item runs through the box: a line, an arc, or the edge of an area too dark to read on.
bool crosses(const Item& item, const Box& box) {
    if (const auto* line = std::get_if<Line>(&item)) return crosses(line->points, line->closed, box);
    if (const auto* arc = std::get_if<Arc>(&item)) return crosses(points_of(*arc), false, box);
    if (const auto* area = std::get_if<sheet::Area>(&item)) return area->grey < 0.7 && crosses(area->points, true, box);
    return false;
}

struct Placed {
    std::string words;
    Box box;
    std::size_t index;
    bool masked;
};

}  // namespace

std::vector<std::string> layout_faults(const Drawing& drawing) {
    std::vector<std::string> faults;
    std::vector<Placed> texts;
    const Box frame = drawing_space(drawing.width(), drawing.height());
    for (std::size_t i = 0; i < drawing.items().size(); ++i) {
        const Text* text = std::get_if<Text>(&drawing.items()[i]);
        if (!text || text->words.empty()) continue;
        // A hair is taken off: letters seldom fill ascender and descender, and boxes may touch.
        texts.push_back({plain(text->words), text_box(*text).shrunk(0.05), i, text->masked});
        if (text->height < kLettering) faults.push_back("smaller than 2.5 mm: " + texts.back().words);
        if (text->squeeze < kNarrowest) faults.push_back("too narrow to read: " + texts.back().words);
        const bool is_grid_letter = text->height == 3.5 && texts.back().words.size() == 1;
        if (!is_grid_letter && !frame.contains(texts.back().box))
            faults.push_back("leaves the frame: " + texts.back().words);
    }
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j)
            if (texts[i].box.overlaps(texts[j].box))
                faults.push_back("overlap: " + texts[i].words + " / " + texts[j].words);
    for (const Placed& text : texts) {
        // Letters stand on the base line; rules may run close under it, where only descenders reach.
        const Box body = text.box.height() < text.box.width()
                             ? Box{text.box.left, text.box.bottom + 0.6, text.box.right, text.box.top - 0.3}
                             : text.box.shrunk(0.6);
        for (std::size_t i = text.masked ? text.index : 0; i < drawing.items().size(); ++i)
            if (crosses(drawing.items()[i], body)) faults.push_back("crossed by a line: " + text.words);
    }
    return faults;
}

double written_share(const sheet::Drawing& page) {
    const sheet::Box room = sheet::drawing_space(page.width(), page.height());
    const double foot = room.bottom + sheet::kTitleBlockHeight;
    double lowest = room.top;
    for (const sheet::Item& item : page.items())
        if (const auto* text = std::get_if<sheet::Text>(&item); text && text->at.y > foot && text->at.x < room.right)
            lowest = std::min(lowest, text->at.y);
    return (room.top - lowest) / (room.top - foot);
}

}  // namespace seatload::test
