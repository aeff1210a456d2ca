// SPDX-License-Identifier: MIT
#include <seatload/sheet/lettering.hpp>

#include <fmt/format.h>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/utf8.hpp>

namespace seatload::sheet {
namespace {

constexpr double kAscender = 1.06;             ///< of Liberation Sans, over capital height (0.729 / 0.688)
constexpr double kDescender = 0.31;            ///< (0.212 / 0.688)
constexpr std::string_view kSubstitute = "□";  // U+25A1, never without a warning

std::string marked(std::string_view letter, char mark, std::string_view index) {
    std::string out(letter);
    out += mark;
    out += index;
    out += kPlain;
    return out;
}

}  // namespace

std::string with_sub(std::string_view letter, std::string_view index) { return marked(letter, kSub, index); }
std::string with_super(std::string_view letter, std::string_view exponent) { return marked(letter, kSuper, exponent); }

std::vector<Run> runs(std::string_view words) {
    std::vector<Run> out(1);
    for (const char c : words) {
        if (c != kSub && c != kSuper && c != kPlain) {
            out.back().words += c;
            continue;
        }
        const Script script = c == kSub ? Script::sub : c == kSuper ? Script::super : Script::plain;
        if (out.back().words.empty()) out.pop_back();
        out.push_back({"", script});
    }
    if (out.back().words.empty()) out.pop_back();
    return out;
}

std::string plain(std::string_view words) {
    std::string out;
    for (const Run& run : runs(words)) out += run.words;
    return out;
}

double text_width(std::string_view words, double height, Face face) {
    const FontMetrics& font = metrics(face);
    const double em = height / font.capital_height();
    double width = 0.0;
    for (const Run& run : runs(words)) {
        const double size = run.script == Script::plain ? em : kScriptSize * em;
        for (const char32_t c : characters(run.words)) width += size * font.advance(c);
    }
    return width;
}

double text_width(const Text& text) { return text.squeeze * text_width(text.words, text.height, text.face); }

Box text_box(const Text& text) {
    const double width = text_width(text);
    const double left = text.align == Align::left ? 0.0 : text.align == Align::centre ? -0.5 * width : -width;
    const Point low = turned({left, -kDescender * text.height}, text.turn);
    const Point high = turned({left + width, kAscender * text.height}, text.turn);
    return include(include(empty_box(), text.at + low), text.at + high);
}

Text fitted(Text text, double width, double narrowest) {
    const double natural = text_width(text.words, text.height, text.face);
    if (natural * text.squeeze <= width) return text;
    text.squeeze = std::max(narrowest, width / natural);
    if (text_width(text) <= width * (1.0 + 1e-9)) return text;
    std::vector<std::string> letters = code_points(plain(text.words));
    do {
        letters.pop_back();
        text.words = join(letters, "") + "…";
    } while (!letters.empty() && text_width(text) > width);
    return text;
}

std::string readable(std::string_view text, std::string_view what, Diagnostics& diagnostics) {
    if (first_invalid_utf8(text)) {
        diagnostics.push_back(error("not-utf8"_id, fmt::format("{}: not UTF-8 text", what), "save the file as UTF-8"));
        return {};
    }
    std::string out;
    std::string missing;
    for (const std::string& letter : code_points(text)) {
        const char32_t c = characters(letter).front();
        const bool control = c < 0x20 || (c >= 0x7F && c < 0xA0);
        if (control) {
            out += ' ';
        } else if (metrics(Face::regular).has(c) && metrics(Face::bold).has(c)) {
            out += letter;
        } else {
            out += kSubstitute;
            missing += fmt::format("{}U+{:04X}", missing.empty() ? "" : ", ", static_cast<unsigned>(c));
        }
    }
    if (!missing.empty())
        diagnostics.push_back(
            complaint(Severity::warning, "letter-not-printable"_id,
                      fmt::format("{}: the sheet's typeface has no sign for {}; a □ is printed instead", what, missing),
                      "Latin, Greek and Cyrillic letters can be printed"));
    return out;
}

}  // namespace seatload::sheet
