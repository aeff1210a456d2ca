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

/// Entries broken into lines for columns of one width, ready to be laid into columns of any height: top to bottom, one
/// column after the other; a heading stays with the two entries after it.
class SetEntries {
  public:
    /// `squeeze` is the width of the letters over their natural width.
    SetEntries(const Entries& entries, double width, double squeeze);

    /// Whether all entries find room in the columns, their lines `pitch` mm apart.
    bool fit(std::span<const Box> columns, double pitch, Together together) const {
        return places(columns, pitch, together).has_value();
    }
    /// Draws them; nothing when they do not all fit.
    void draw(Drawing& drawing, std::span<const Box> columns, double pitch, Together together) const;

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
    };
    /// The lines for which there must be room where an entry begins.
    std::size_t lines_needed(const Block& block, std::span<const Box> columns, double pitch, Together together) const;
    /// Upper left corners of the blocks; nothing when one finds no room.
    std::optional<std::vector<Point>> places(std::span<const Box> columns, double pitch, Together together) const;

    static std::vector<Block> blocks_of(const Entries& entries, const Setter& setter);

    double width_;
    std::vector<Block> blocks_;
};

}  // namespace seatload::sheet
