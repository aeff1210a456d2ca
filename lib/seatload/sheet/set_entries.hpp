// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/entry.hpp>

namespace seatload::sheet {

/// Least and most distance between base lines of entries [mm] (ISO 3098: 1.5 h at least without accents).
inline constexpr double kLeastPitch = 3.8;
inline constexpr double kMostPitch = 4.4;

/// What must stand in one column: every block, from a heading to the next, that is not too long for any; the blocks
/// with a grid only; or no more than a heading with the two entries after it.
enum class Together { blocks, grids, pairs };

/// How entries are laid into columns.
struct Keeping {
    Together together = Together::pairs;
    bool heads_again = true;  ///< the heading is said again over the rest of a block that is parted
};

/// Entries broken into lines for columns of one width, ready to be laid into columns of any height: top to bottom, one
/// column after the other; a heading stays with the two entries after it, and the last two entries of a block together.
class SetEntries {
  public:
    /// `squeeze` is the width of the letters over their natural width.
    SetEntries(const Entries& entries, double width, double squeeze);

    /// Whether all entries find room in the columns, their lines `pitch` mm apart.
    bool fit(std::span<const Box> columns, double pitch, const Keeping& keeping) const {
        return places(columns, pitch, keeping).has_value();
    }
    /// Draws them; nothing when they do not all fit.
    void draw(Drawing& drawing, std::span<const Box> columns, double pitch, const Keeping& keeping) const;

  private:
    class Setter;
    /// A piece of a line, with its distance from the column's left edge.
    struct Piece {
        double from;
        Text text;
    };
    using Line = std::vector<Piece>;
    struct Block {
        std::vector<Line> lines;
        bool is_heading;
        std::size_t lines_together;   ///< with those that must not part from it
        std::size_t block_lines = 0;  ///< of all entries under a heading and itself
        bool has_grid = false;        ///< of those
        Line again = {};              ///< of a heading, over the rest of its block in another column; may be empty
    };
    /// Where a block goes, and the heading that stands over it once more.
    struct Place {
        Point corner;  ///< upper left
        const Block* again = nullptr;
    };
    /// The lines for which there must be room where an entry begins.
    std::size_t lines_needed(const Block& block, std::span<const Box> columns, double pitch, Together together) const;
    /// Places of the blocks; nothing when one finds no room.
    std::optional<std::vector<Place>> places(std::span<const Box> columns, double pitch, const Keeping& keeping) const;
    void keep_together();
    void draw_line(Drawing& drawing, const Line& line, Point start) const;
    void draw_rule(Drawing& drawing, Point under) const;

    static std::vector<Block> blocks_of(const Entries& entries, const Setter& setter);

    double width_;
    std::vector<Block> blocks_;
};

}  // namespace seatload::sheet
