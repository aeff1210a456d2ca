// SPDX-License-Identifier: MIT
#include <seatload/sheet/fit_map.hpp>

#include <algorithm>
#include <array>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot.hpp>
#include <seatload/sheet/spread.hpp>
#include <seatload/units/format.hpp>

namespace seatload::sheet {
namespace {

/// Far enough apart to be told from one another on a black-and-white print.
constexpr std::array<double, 5> kGreys{0.90, 0.74, 0.56, 0.38, 0.18};
constexpr double kKeyHeight = 12.5;
constexpr double kLetterStrip = 10.0;
constexpr double kLeastCell = 1.0;    ///< height of a cell; finer steps are put together
constexpr double kLabelPitch = 4.0;   ///< of the upright labels below
constexpr double kLetterPitch = 4.4;  ///< between letters at the right, as far as there is room
constexpr double kWidestColumn = 18.0;
constexpr int kMapTicks = 10;

/// True when a spring of the row fits.
bool holds_something(const sizing::MapRow& row) {
    return std::any_of(row.cells.begin(), row.cells.end(), [](const sizing::MapCell& cell) { return cell.fit > 0; });
}

/// The part of the map that holds something, with one column before and after.
std::span<const sizing::MapRow> columns_of(std::span<const sizing::MapRow> map) {
    const auto first = std::find_if(map.begin(), map.end(), holds_something) - map.begin();
    const auto last = std::find_if(map.rbegin(), map.rend(), holds_something).base() - map.begin();
    const auto from = std::max<std::ptrdiff_t>(0, first - 1);
    const auto to = std::min<std::ptrdiff_t>(std::ssize(map), last + 1);
    return map.subspan(static_cast<std::size_t>(from), static_cast<std::size_t>(to - from));
}

/// Mean diameters from the smallest to the largest that holds something, in whole steps of the grid.
struct ColumnRange {
    long first;
    long last;
    double step;
};

ColumnRange range_of(std::span<const sizing::MapRow> columns) {
    ColumnRange r{0, 0, columns.front().mean_diameters.step};
    bool is_empty = true;
    for (const sizing::MapRow& row : columns)
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            if (row.cells[i].fit == 0) continue;
            const long multiple = row.mean_diameters.first + static_cast<long>(i);
            r.first = is_empty ? multiple : std::min(r.first, multiple);
            r.last = is_empty ? multiple : std::max(r.last, multiple);
            is_empty = false;
        }
    return r;
}

/// Steps of tolerance room, in tenths: how many tenths each grey stands for.
struct Shades {
    double tenths = 1.0;
    bool is_bounded = true;  ///< false: no load is limited, and all room is endless
    std::size_t count = 1;   ///< greys in use

    double grey(double room_in_tenths) const {
        if (!is_bounded) return kGreys[2];
        const auto i = static_cast<std::size_t>(std::max(0.0, std::floor(room_in_tenths / tenths)));
        return kGreys[std::min(i, kGreys.size() - 1)];
    }
};

Shades shades_for(std::span<const sizing::MapRow> columns) {
    double most = 0.0;
    for (const sizing::MapRow& row : columns)
        for (const sizing::MapCell& cell : row.cells)
            if (cell.fit > 0) most = std::max(most, cell.room_in_tenths);
    if (std::isinf(most)) return {1.0, false, 1};
    const double tenths = std::max(1.0, std::ceil((most + 1.0) / static_cast<double>(kGreys.size())));
    return {tenths, true, static_cast<std::size_t>(std::floor(most / tenths)) + 1};
}

void draw_key(Drawing& drawing, const Box& box, const Shades& shades) {
    double x = box.left;
    const double y = box.top - 8.4;
    const auto swatch = [&](double grey, const std::string& words) {
        const Box sample{x, y - 0.6, x + 6.0, y + 3.0};
        drawing.fill(sample, grey);
        drawing.box(sample);
        const Text text{{x + 7.2, y}, words};
        drawing.add(text);
        x = text_box(text).right + 4.0;
    };
    drawing.add(Text{{box.left, box.top - 3.6}, "Best tolerance room x of the springs in a cell:"});
    if (!shades.is_bounded) {
        swatch(shades.grey(0.0), "some spring fits; no load is limited");
        return;
    }
    for (std::size_t i = 0; i < std::min(shades.count, kGreys.size()); ++i) {
        const double from = shades.tenths * static_cast<double>(i) / 10.0;
        const double to = shades.tenths * static_cast<double>(i + 1) / 10.0;
        swatch(kGreys[i], fixed(from, 1) + " ≤ x < " + fixed(to, 1));
    }
}

/// The cells of a column, put together where the steps are finer than can be drawn.
void draw_column(Drawing& drawing, const Plot& plot, double left, double right, const sizing::MapRow& row,
                 const ColumnRange& range, long together, const Shades& shades) {
    for (long low = range.first; low <= range.last; low += together) {
        double room = -1.0;
        for (long multiple = low; multiple < low + together; ++multiple) {
            const long i = multiple - row.mean_diameters.first;
            if (i < 0 || i >= std::ssize(row.cells)) continue;
            const sizing::MapCell& cell = row.cells[static_cast<std::size_t>(i)];
            if (cell.fit > 0) room = std::max(room, cell.room_in_tenths);
        }
        if (room < 0.0) continue;
        const double bottom = plot.y((static_cast<double>(low) - 0.5) * range.step);
        const double top = plot.y((static_cast<double>(low + together) - 0.5) * range.step);
        drawing.fill({left, bottom, right, std::min(top, plot.box.top)}, shades.grey(room));
    }
}

void draw_column_labels(Drawing& drawing, const Plot& plot, std::span<const sizing::MapRow> columns, double width) {
    const auto every = static_cast<std::size_t>(std::ceil(kLabelPitch / width - 1e-9));
    drawing.line({plot.box.left, plot.box.bottom}, {plot.box.right, plot.box.bottom}, LineKind::wide);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double x = plot.box.left + (static_cast<double>(i) + 0.5) * width;
        drawing.line({x, plot.box.bottom}, {x, plot.box.bottom - (i % every == 0 ? 1.2 : 0.7)});
        if (i % every != 0) continue;
        std::string words = units::shown_wire(columns[i].wire_diameter);
        words.erase(words.find(' '));
        drawing.add(Text{
            .at = {x + 0.5 * kLettering, plot.box.bottom - 1.8}, .words = words, .align = Align::right, .turn = 90.0});
    }
}

/// Letters at the right, each joined to its place by a line.
void draw_marks(Drawing& drawing, const Plot& plot, std::span<const sizing::MapRow> columns, double width,
                std::span<const MapMark> marks) {
    std::vector<std::pair<Point, std::string>> places;
    for (const MapMark& mark : marks)
        for (std::size_t i = 0; i < columns.size(); ++i)
            if (std::abs(in_mm(columns[i].wire_diameter) - mark.wire_diameter_mm) < 1e-9)
                places.push_back(
                    {{plot.box.left + (static_cast<double>(i) + 0.5) * width, plot.y(mark.mean_diameter_mm)},
                     mark.letter});
    std::stable_sort(places.begin(), places.end(), [](const auto& a, const auto& b) { return a.first.y < b.first.y; });
    std::vector<Spot> spots;
    const double pitch =
        std::min(kLetterPitch, plot.box.height() / static_cast<double>(std::max<std::size_t>(1, places.size())));
    for (const auto& place : places) spots.push_back({place.first.y, pitch});
    const auto heights = spread(spots, plot.box.bottom, plot.box.top);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Point at = places[i].first;
        drawing.add(Line{{at, {plot.box.right + 4.0, heights[i]}}, LineKind::narrow, false});
        drawing.add(Disc{at, 1.1, 1.0});
        const Item ring = Arc{at, 1.1, LineKind::wide};
        drawing.add(ring);
        drawing.add(Text{.at = {plot.box.right + 5.0, heights[i] - 0.5 * kLettering},
                         .words = places[i].second,
                         .face = Face::bold});
    }
}

}  // namespace

bool has_fit(std::span<const sizing::MapRow> map) { return std::any_of(map.begin(), map.end(), holds_something); }

void draw_fit_map(Drawing& drawing, const Box& box, std::span<const sizing::MapRow> map,
                  std::span<const MapMark> marks) {
    const auto columns = columns_of(map);
    const ColumnRange range = range_of(columns);
    const Shades shades = shades_for(columns);
    const double low = (static_cast<double>(range.first) - 0.5) * range.step;
    const double high = (static_cast<double>(range.last) + 0.5) * range.step;
    Box inner{box.left + left_of_plot(low, high, kMapTicks), box.bottom + 17.0, box.right - kLetterStrip,
              box.top - kKeyHeight - kAbovePlot};
    const double width = std::min(kWidestColumn, inner.width() / static_cast<double>(columns.size()));
    inner.right = inner.left + width * static_cast<double>(columns.size());
    const Plot plot{inner, 0.0, 1.0, low, high};
    const long together = std::max(
        1L, std::lround(std::ceil(kLeastCell * static_cast<double>(range.last - range.first + 1) / inner.height())));
    draw_key(drawing, box, shades);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double left = inner.left + width * static_cast<double>(i);
        draw_column(drawing, plot, left, left + width, columns[i], range, together, shades);
    }
    for (std::size_t i = 1; i <= columns.size(); ++i)
        drawing.line({inner.left + width * static_cast<double>(i), inner.bottom},
                     {inner.left + width * static_cast<double>(i), inner.top});
    drawing.line({inner.left, inner.top}, {inner.right, inner.top});
    draw_column_labels(drawing, plot, columns, width);
    drawing.add(Text{{inner.left, box.bottom + 0.8}, "wire diameter d [mm]"});
    draw_upright_axis(drawing, plot, "mean diameter D [mm]", kMapTicks);
    draw_marks(drawing, plot, columns, width, marks);
}

}  // namespace seatload::sheet
