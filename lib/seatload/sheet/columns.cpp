// SPDX-License-Identifier: MIT
#include <seatload/sheet/columns.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kPitch = 3.8;  ///< between base lines (ISO 3098, 1.5 h at least without accents)
constexpr double kPad = 2.0;    ///< inside a column, left and right
constexpr double kSignWidth = 3.6;
constexpr double kNameShare = 0.43;  ///< of what the sign leaves
constexpr double kNameGap = 1.5;
constexpr std::size_t kWithHeading = 2;  ///< entries that stay with their heading, so that F1 and F2 do
constexpr double kGridName = 16.0;       ///< width of a grid's row names
constexpr double kGridGap = 1.0;         ///< between its columns
constexpr double kHeadingGap = 0.9;      ///< above a heading that is not at the top
constexpr double kRuleGap = 0.4;         ///< below a heading's rule

/// One laid-out line: pieces with their distance from the column's left edge.
struct Piece {
    double from;
    Text text;
};
using Row = std::vector<Piece>;

/// Turns an entry into rows for a column width.
class Setter {
  public:
    Setter(double width, double squeeze) : width_(width), squeeze_(squeeze) {}

    std::vector<Row> operator()(const Heading& heading) const { return {{piece(kPad, heading.words, Face::bold)}}; }
    std::vector<Row> operator()(const Paragraph& paragraph) const {
        std::vector<Row> rows;
        const bool is_signed = *sign(paragraph.status) != '\0';
        const double start = is_signed ? kPad + kSignWidth : kPad;
        for (const std::string& line :
             wrapped(paragraph.words, width_ - start - kPad, kLettering, paragraph.face, squeeze_))
            rows.push_back({piece(start, line, paragraph.face)});
        if (is_signed) rows[0].insert(rows[0].begin(), piece(kPad, sign(paragraph.status)));
        return rows;
    }
    std::vector<Row> operator()(const Named& named) const {
        const double start = kPad + kSignWidth;
        const double name_width = kNameShare * (width_ - start - kPad);
        const double value_start = start + name_width + kNameGap;
        const Face face = named.status == Status::required ? Face::bold : Face::regular;
        const auto names = wrapped(named.name, name_width, kLettering, Face::regular, squeeze_);
        const auto values = wrapped(named.value, width_ - value_start - kPad, kLettering, face, squeeze_);
        std::vector<Row> rows(std::max(names.size(), values.size()));
        if (*sign(named.status) != '\0') rows[0].push_back(piece(kPad, sign(named.status)));
        for (std::size_t i = 0; i < names.size(); ++i) rows[i].push_back(piece(start, names[i]));
        for (std::size_t i = 0; i < values.size(); ++i) rows[i].push_back(piece(value_start, values[i], face));
        return rows;
    }
    std::vector<Row> operator()(const Grid& grid) const {
        const double start = kPad + kSignWidth;
        const double pitch = (width_ - start - kGridName - kPad) / static_cast<double>(grid.heads.size());
        const auto row = [&](const std::string& name, const std::vector<std::string>& values, Face face) {
            Row out;
            if (!name.empty()) out.push_back(piece(start, name));
            for (std::size_t i = 0; i < values.size(); ++i)
                if (!values[i].empty())
                    out.push_back({start + kGridName + pitch * static_cast<double>(i),
                                   fitted(Text{.at = {}, .words = values[i], .face = face, .squeeze = squeeze_},
                                          pitch - kGridGap, 0.6)});
            return out;
        };
        std::vector<Row> rows{row("", grid.heads, Face::bold)};
        for (const Grid::Row& r : grid.rows) rows.push_back(row(r.name, r.values, Face::regular));
        return rows;
    }

  private:
    Piece piece(double from, const std::string& words, Face face = Face::regular) const {
        return {from, Text{.at = {}, .words = words, .face = face, .squeeze = squeeze_}};
    }

    double width_;
    double squeeze_;
};

}  // namespace

std::size_t Columns::draw(Drawing& drawing, const Entries& entries) const {
    const double width = box.width() / count;
    const Setter setter(width, squeeze);
    int column = 0;
    double y = box.top;
    const auto next_column = [&] {
        ++column;
        y = box.top;
    };
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const bool is_heading = std::holds_alternative<Heading>(entries[i]);
        const std::vector<Row> rows = std::visit(setter, entries[i]);
        std::size_t together = rows.size();
        for (std::size_t next = i + 1; is_heading && next < std::min(i + 1 + kWithHeading, entries.size()); ++next) {
            if (std::holds_alternative<Heading>(entries[next])) break;
            together += std::visit(setter, entries[next]).size();
        }
        const double gap = is_heading && y < box.top ? kHeadingGap : 0.0;
        if (y - gap - kRuleGap - kPitch * static_cast<double>(together) < box.bottom) next_column();
        if (column >= count || box.height() < kPitch * static_cast<double>(together)) return i;
        if (y < box.top) y -= gap;
        const double left = box.left + width * column;
        for (const Row& row : rows) {
            y -= kPitch;
            for (Piece piece : row) {
                piece.text.at = {left + piece.from, y + 1.0};
                drawing.add(piece.text);
            }
        }
        if (!is_heading) continue;
        drawing.line({left + kPad, y + 0.1}, {left + width - kPad, y + 0.1});
        y -= kRuleGap;
    }
    return entries.size();
}

}  // namespace seatload::sheet
