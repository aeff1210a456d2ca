// SPDX-License-Identifier: MIT
#include <seatload/sheet/font_metrics.hpp>

#include <seatload/core/assert.hpp>
#include <seatload/core/embedded.hpp>

namespace seatload::sheet {
namespace {

// TrueType files are big-endian.
unsigned u16(std::string_view bytes, std::size_t at) {
    SEATLOAD_ASSERT(at + 2 <= bytes.size());
    return static_cast<unsigned>(static_cast<unsigned char>(bytes[at])) << 8 |
           static_cast<unsigned char>(bytes[at + 1]);
}

std::size_t u32(std::string_view bytes, std::size_t at) {
    return static_cast<std::size_t>(u16(bytes, at)) << 16 | u16(bytes, at + 2);
}

std::string_view table(std::string_view font, std::string_view tag) {
    const unsigned count = u16(font, 4);
    for (unsigned i = 0; i < count; ++i) {
        const std::size_t entry = 12 + 16 * static_cast<std::size_t>(i);
        if (font.substr(entry, 4) == tag) return font.substr(u32(font, entry + 8), u32(font, entry + 12));
    }
    throw InternalError("the built-in font has no table " + std::string(tag));
}

/// The Unicode (Windows, BMP) subtable, which libharu reads too.
std::string_view unicode_map(std::string_view cmap) {
    const unsigned count = u16(cmap, 2);
    for (unsigned i = 0; i < count; ++i) {
        const std::size_t entry = 4 + 8 * static_cast<std::size_t>(i);
        if (u16(cmap, entry) != 3 || u16(cmap, entry + 2) != 1) continue;
        const std::string_view map = cmap.substr(u32(cmap, entry + 4));
        if (u16(map, 0) == 4) return map;
    }
    throw InternalError("the built-in font has no Unicode character map");
}

std::vector<std::uint16_t> glyphs_by_character(std::string_view map) {
    std::vector<std::uint16_t> glyphs(0x10000, 0);
    const std::size_t segments = u16(map, 6) / 2;
    const std::size_t ends = 14;
    const std::size_t starts = ends + 2 * segments + 2;
    const std::size_t deltas = starts + 2 * segments;
    const std::size_t offsets = deltas + 2 * segments;
    for (std::size_t s = 0; s < segments; ++s) {
        const unsigned start = u16(map, starts + 2 * s);
        const unsigned end = u16(map, ends + 2 * s);
        const unsigned delta = u16(map, deltas + 2 * s);
        const unsigned offset = u16(map, offsets + 2 * s);
        for (unsigned c = start; c <= end && c != 0xFFFF; ++c) {
            unsigned glyph = c;
            if (offset != 0) glyph = u16(map, offsets + 2 * s + offset + 2 * static_cast<std::size_t>(c - start));
            if (offset == 0 || glyph != 0) glyph = (glyph + delta) & 0xFFFF;
            glyphs[c] = static_cast<std::uint16_t>(glyph);
        }
    }
    return glyphs;
}

std::vector<double> advances_by_glyph(std::string_view font) {
    const unsigned em = u16(table(font, "head"), 18);
    const unsigned full = u16(table(font, "hhea"), 34);
    const unsigned count = u16(table(font, "maxp"), 4);
    const std::string_view hmtx = table(font, "hmtx");
    std::vector<double> advances;
    for (unsigned g = 0; g < count; ++g)
        advances.push_back(static_cast<double>(u16(hmtx, 4 * static_cast<std::size_t>(std::min(g, full - 1)))) / em);
    return advances;
}

}  // namespace

FontMetrics::FontMetrics(std::string_view font_file)
    : glyphs_(glyphs_by_character(unicode_map(table(font_file, "cmap")))),
      advances_(advances_by_glyph(font_file)),
      capital_height_(static_cast<double>(u16(table(font_file, "OS/2"), 88)) / u16(table(font_file, "head"), 18)) {
    SEATLOAD_ASSERT(capital_height_ > 0.5 && capital_height_ < 1.0);
}

bool FontMetrics::has(char32_t character) const { return character < glyphs_.size() && glyphs_[character] != 0; }

double FontMetrics::advance(char32_t character) const {
    return advances_.at(character < glyphs_.size() ? glyphs_[character] : 0);
}

std::string_view font_file(Face face) {
    return embedded(face == Face::bold ? "data/fonts/LiberationSans-Bold.ttf"
                                       : "data/fonts/LiberationSans-Regular.ttf");
}

const FontMetrics& metrics(Face face) {
    static const FontMetrics regular(font_file(Face::regular));
    static const FontMetrics bold(font_file(Face::bold));
    return face == Face::bold ? bold : regular;
}

}  // namespace seatload::sheet
