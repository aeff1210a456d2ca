// SPDX-License-Identifier: MIT
#include <seatload/sheet/set_entries.hpp>

#include <algorithm>
#include <array>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kSetPad = 2.0;  ///< inside a column, left and right
constexpr double kSignWidth = 3.6;
/// Of what the sign leaves, in order of liking: the one that takes the fewest lines serves.
constexpr std::array kNameShares{0.43, 0.38, 0.34};
constexpr double kNameGap = 1.5;
constexpr std::size_t kSetWithHeading = 2;  ///< entries that stay with their heading, so that F1 and F2 do
constexpr double kGridName = 16.0;          ///< width of a grid's row names
constexpr double kGridGap = 1.0;            ///< between its columns
constexpr double kNarrowestInGrid = 0.6;
constexpr double kFullSheet = 0.78;     ///< letters as narrow as this or narrower save lines
constexpr double kSetHeadingGap = 0.9;  ///< above a heading that is not at the top
constexpr double kRuleGap = 0.4;        ///< below a heading's rule

}  // namespace

/// Turns an entry into lines for a column width.
class SetEntries::Setter {
  public:
    Setter(double width, double squeeze, double name_share)
        : width_(width), squeeze_(squeeze), name_share_(name_share) {}

    std::vector<Line> operator()(const Heading& heading) const { return {{piece(kSetPad, heading.words, Face::bold)}}; }
    Line again(const Heading& heading) const {
        return heading.again.empty() ? Line{} : Line{piece(kSetPad, heading.again, Face::bold)};
    }
    std::vector<Line> operator()(const Paragraph& paragraph) const {
        std::vector<Line> lines;
        const bool is_signed = *sign(paragraph.status) != '\0';
        const double start = is_signed ? kSetPad + kSignWidth : kSetPad;
        for (const std::string& line :
             wrapped(paragraph.words, width_ - start - kSetPad, kLettering, paragraph.face, squeeze_))
            lines.push_back({piece(start, line, paragraph.face)});
        if (is_signed) lines[0].insert(lines[0].begin(), piece(kSetPad, sign(paragraph.status)));
        return lines;
    }
    std::vector<Line> operator()(const Named& named) const {
        const double start = kSetPad + kSignWidth;
        const double name_width = name_share_ * (width_ - start - kSetPad);
        const double value_start = start + name_width + kNameGap;
        const Face face = named.status == Status::required ? Face::bold : Face::regular;
        const auto names = wrapped(named.name, name_width, kLettering, Face::regular, squeeze_);
        const auto values = wrapped(named.value, width_ - value_start - kSetPad, kLettering, face, squeeze_);
        std::vector<Line> lines(std::max(names.size(), values.size()));
        if (*sign(named.status) != '\0') lines[0].push_back(piece(kSetPad, sign(named.status)));
        for (std::size_t i = 0; i < names.size(); ++i) lines[i].push_back(piece(start, names[i]));
        for (std::size_t i = 0; i < values.size(); ++i) lines[i].push_back(piece(value_start, values[i], face));
        return lines;
    }
    std::vector<Line> operator()(const Grid& grid) const {
        std::vector<Line> lines{grid_line(grid, "", grid.heads, Face::bold)};
        for (const Grid::Row& row : grid.rows) {
            if (const auto both = squeeze_ <= kFullSheet ? both_in_one(grid, row) : std::nullopt) {
                lines.push_back(*both);
                continue;
            }
            lines.push_back(grid_line(grid, row.name, row.values, Face::regular));
            if (!row.metric.empty()) lines.push_back(grid_line(grid, row.metric_name, row.metric, Face::regular));
        }
        return lines;
    }

  private:
    double grid_pitch(const Grid& grid) const {
        return (width_ - kSetPad - kSignWidth - kGridName - kSetPad) / static_cast<double>(grid.heads.size());
    }
    /// A row with its metric values in the same line, all letters as wide; nothing when they would get too narrow.
    std::optional<Line> both_in_one(const Grid& grid, const Grid::Row& row) const {
        if (row.metric.empty()) return std::nullopt;
        std::vector<std::string> values;
        double squeeze = squeeze_;
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            values.push_back(row.values[i].empty() ? "" : row.values[i] + " " + row.metric[i]);
            if (!values.back().empty())
                squeeze = std::min(squeeze, (grid_pitch(grid) - kGridGap) / text_width(values.back(), kLettering));
        }
        if (squeeze < kNarrowestInGrid) return std::nullopt;
        Line out = grid_line(grid, row.name + " " + row.metric_name, values, Face::regular);
        for (std::size_t i = 1; i < out.size(); ++i) out[i].text.squeeze = squeeze;
        return out;
    }
    Line grid_line(const Grid& grid, const std::string& name, const std::vector<std::string>& values, Face face) const {
        const double start = kSetPad + kSignWidth;
        const double pitch = grid_pitch(grid);
        Line out;
        if (!name.empty()) {
            const Text text{.at = {}, .words = name, .squeeze = squeeze_};
            out.push_back({start, fitted(text, kGridName - kGridGap, kNarrowestInGrid)});
        }
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (values[i].empty()) continue;
            const Text text{.at = {}, .words = values[i], .face = face, .squeeze = squeeze_};
            out.push_back(
                {start + kGridName + pitch * static_cast<double>(i), fitted(text, pitch - kGridGap, kNarrowestInGrid)});
        }
        return out;
    }
    Piece piece(double from, const std::string& words, Face face = Face::regular) const {
        return {from, Text{.at = {}, .words = words, .face = face, .squeeze = squeeze_}};
    }

    double width_;
    double squeeze_;
    double name_share_;
};

std::vector<SetEntries::Block> SetEntries::blocks_of(const Entries& entries, const Setter& setter) {
    std::vector<Block> blocks;
    for (const Entry& entry : entries) {
        std::vector<Line> lines = std::visit(setter, entry);
        const std::size_t count = lines.size();
        const auto* const heading = std::get_if<Heading>(&entry);
        blocks.push_back({std::move(lines), heading != nullptr, count, count, std::holds_alternative<Grid>(entry),
                          heading != nullptr ? setter.again(*heading) : Line{}});
    }
    return blocks;
}

SetEntries::SetEntries(const Entries& entries, double width, double squeeze) : width_(width) {
    std::size_t fewest = 0;
    for (const double name_share : kNameShares) {
        std::vector<Block> blocks = blocks_of(entries, Setter(width, squeeze, name_share));
        std::size_t count = 0;
        for (const Block& block : blocks) count += block.lines.size();
        if (!blocks_.empty() && count >= fewest) continue;
        fewest = count;
        blocks_ = std::move(blocks);
    }
    keep_together();
}

void SetEntries::keep_together() {
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        const std::size_t last = blocks_[i].is_heading ? std::min(i + kSetWithHeading, blocks_.size() - 1) : i;
        for (std::size_t next = i + 1; next <= last && !blocks_[next].is_heading; ++next)
            blocks_[i].lines_together += blocks_[next].lines.size();
    }
    const auto ends_here = [&](std::size_t i) { return i + 1 == blocks_.size() || blocks_[i + 1].is_heading; };
    for (std::size_t i = 1; i + 1 < blocks_.size(); ++i)
        if (!blocks_[i].is_heading && !ends_here(i) && ends_here(i + 1))
            blocks_[i].lines_together += blocks_[i + 1].lines.size();
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        if (!blocks_[i].is_heading) continue;
        for (std::size_t next = i + 1; next < blocks_.size() && !blocks_[next].is_heading; ++next) {
            blocks_[i].block_lines += blocks_[next].lines.size();
            blocks_[i].has_grid = blocks_[i].has_grid || blocks_[next].has_grid;
        }
    }
}

std::size_t SetEntries::lines_needed(const Block& block, std::span<const Box> columns, double pitch,
                                     Together together) const {
    const bool is_kept = together == Together::blocks || (together == Together::grids && block.has_grid);
    if (!block.is_heading || !is_kept) return block.lines_together;
    const double height = pitch * static_cast<double>(block.block_lines) + kRuleGap;
    const bool can_fit =
        std::any_of(columns.begin(), columns.end(), [&](const Box& c) { return height <= c.height(); });
    return can_fit ? block.block_lines : block.lines_together;
}

std::optional<std::vector<SetEntries::Place>> SetEntries::places(std::span<const Box> columns, double pitch,
                                                                 const Keeping& keeping) const {
    std::vector<Place> out;
    std::size_t column = 0;
    double y = columns.front().top;
    const Block* heading = nullptr;
    for (const Block& block : blocks_) {
        const double together =
            pitch * static_cast<double>(lines_needed(block, columns, pitch, keeping.together)) + kRuleGap;
        const auto gap = [&] { return block.is_heading && y < columns[column].top ? kSetHeadingGap : 0.0; };
        const Block* again = nullptr;
        while (y - gap() - together < columns[column].bottom) {
            if (++column == columns.size()) return std::nullopt;
            y = columns[column].top;
            if (block.is_heading || heading == nullptr || heading->again.empty() || !keeping.heads_again) continue;
            again = heading;
            y -= pitch + kRuleGap;
        }
        if (block.is_heading) heading = &block;
        y -= gap();
        out.push_back({{columns[column].left, y}, again});
        y -= pitch * static_cast<double>(block.lines.size()) + (block.is_heading ? kRuleGap : 0.0);
    }
    return out;
}

void SetEntries::draw_line(Drawing& drawing, const Line& line, Point start) const {
    for (Piece piece : line) {
        piece.text.at = {start.x + piece.from, start.y};
        drawing.add(piece.text);
    }
}

void SetEntries::draw_rule(Drawing& drawing, Point under) const {
    const double y = under.y + 0.1;
    drawing.line({under.x + kSetPad, y}, {under.x + width_ - kSetPad, y});
}

void SetEntries::draw(Drawing& drawing, std::span<const Box> columns, double pitch, const Keeping& keeping) const {
    const auto at = places(columns, pitch, keeping);
    if (!at) return;
    const double base = 1.0 + 0.5 * (pitch - kLeastPitch);  // letters stand in the middle of a wider pitch
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        const Point corner = (*at)[i].corner;
        if (const Block* const heading = (*at)[i].again) {
            draw_line(drawing, heading->again, corner + Point{0.0, kRuleGap + base});
            draw_rule(drawing, corner + Point{0.0, kRuleGap});
        }
        double y = corner.y;
        for (const Line& line : blocks_[i].lines) {
            y -= pitch;
            draw_line(drawing, line, {corner.x, y + base});
        }
        if (blocks_[i].is_heading) draw_rule(drawing, {corner.x, y});
    }
}

}  // namespace seatload::sheet
