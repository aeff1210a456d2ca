// SPDX-License-Identifier: MIT
#include <seatload/sheet/ruled_table.hpp>

#include <algorithm>

#include <seatload/core/assert.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kRuledPitch = 4.0;
constexpr double kRuledPad = 1.2;

Face face_of(const RuledTable& table, std::size_t row, std::size_t column) {
    const auto& naming = table.naming;
    const bool names = row == 0 || std::find(naming.begin(), naming.end(), column) != naming.end();
    return names ? Face::bold : Face::regular;
}

std::vector<std::string> cell_lines(const RuledTable& table, std::size_t row, std::size_t column) {
    return wrapped(table.rows[row][column], table.widths[column] - 2.0 * kRuledPad, kLettering,
                   face_of(table, row, column));
}

}  // namespace

double row_height(const RuledTable& table, std::size_t row) {
    SEATLOAD_ASSERT(table.rows[row].size() == table.widths.size());
    std::size_t lines = 1;
    for (std::size_t column = 0; column < table.widths.size(); ++column)
        lines = std::max(lines, cell_lines(table, row, column).size());
    const double least = row == 0 ? 0.0 : table.least_row_height;
    return std::max(least, kRuledPitch * static_cast<double>(lines) + kRuledPad);
}

bool has_room_for_words(const RuledTable& table) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        for (std::size_t column = 0; column < table.widths.size(); ++column)
            if (widest_word(table.rows[row][column], kLettering, face_of(table, row, column)) >
                table.widths[column] - 2.0 * kRuledPad)
                return false;
    return true;
}

double height(const RuledTable& table) {
    double sum = 0.0;
    for (std::size_t row = 0; row < table.rows.size(); ++row) sum += row_height(table, row);
    return sum;
}

void draw(Drawing& drawing, Point upper_left, const RuledTable& table) {
    double top = upper_left.y;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const double bottom = top - row_height(table, row);
        double left = upper_left.x;
        for (std::size_t column = 0; column < table.widths.size(); ++column) {
            drawing.box({left, bottom, left + table.widths[column], top});
            double y = top - 0.4;
            for (const std::string& line : cell_lines(table, row, column)) {
                y -= kRuledPitch;
                drawing.add(
                    Text{.at = {left + kRuledPad, y + 0.4}, .words = line, .face = face_of(table, row, column)});
            }
            left += table.widths[column];
        }
        top = bottom;
    }
}

}  // namespace seatload::sheet
