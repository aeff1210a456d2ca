// SPDX-License-Identifier: MIT
#include <cli/text_table.hpp>

#include <algorithm>
#include <span>

#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kWidestCell = 70;

}  // namespace

void TextTable::add(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    // What a cell holds of our own is shorter; of a name out of a file its beginning tells which one it is.
    for (std::string& cell : cells) {
        if (cell.size() <= kWidestCell) continue;
        const std::vector<std::string> letters = code_points(cell);
        if (letters.size() > kWidestCell) cell = join(std::span(letters).first(kWidestCell - 3), "") + "...";
    }
    rows_.push_back(std::move(cells));
}

std::string TextTable::text(std::size_t indent) const {
    std::vector<std::size_t> widths(columns_.size(), 0);
    for (const auto& row : rows_)
        for (std::size_t c = 0; c < row.size(); ++c) widths[c] = std::max(widths[c], length_in_code_points(row[c]));
    std::string out;
    for (const auto& row : rows_) {
        std::string line(indent, ' ');
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string fill(widths[c] - length_in_code_points(row[c]), ' ');
            if (c != 0) line += "  ";
            line += columns_[c] == Align::right ? fill + row[c] : row[c] + fill;
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + '\n';
    }
    return out;
}

}  // namespace seatload::cli
