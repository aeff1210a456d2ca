// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// What layout must know of a typeface: which characters it has and how wide they are.
class FontMetrics {
  public:
    /// Reads the tables of a TrueType font (ISO/IEC 14496-22: head, hhea, hmtx, OS/2, cmap format 4).
    /// A font without them is an error of ours: only built-in fonts are used.
    explicit FontMetrics(std::string_view font_file);

    /// True when the typeface draws this character; characters above U+FFFF never are.
    bool has(char32_t character) const;
    /// Advance of the character over the size of the typeface (em); of the missing-character box when it has none.
    double advance(char32_t character) const;
    /// Height of a capital letter over em.
    double capital_height() const { return capital_height_; }

  private:
    std::vector<std::uint16_t> glyphs_;  ///< by character, U+0000 to U+FFFF
    std::vector<double> advances_;       ///< by glyph
    double capital_height_ = 0.0;
};

/// The built-in typeface (Liberation Sans, SIL Open Font Licence 1.1).
const FontMetrics& metrics(Face face);
/// Its file.
std::string_view font_file(Face face);

}  // namespace seatload::sheet
