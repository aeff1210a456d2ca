// SPDX-License-Identifier: MIT
#include <seatload/sheet/word_wrap.hpp>

#include <algorithm>
#include <array>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr std::string_view kHardBlank = "\u00a0";
constexpr std::string_view kPlusMinus = "±";
constexpr std::array<std::string_view, 17> kUnits{"mm", "N",   "N/mm",   "MPa", "°C", "°F", "g",   "s", "Hz",
                                                  "in", "lbf", "lbf/in", "ksi", "%",  "oz", "min", "h"};

/// Cuts letters that are too wide into pieces that are not; a script stays whole.
std::vector<std::string> cut(std::string_view word, double width, double height, Face face) {
    std::vector<std::string> pieces(1);
    bool in_script = false;
    for (const std::string& letter : code_points(word)) {
        const bool opens = letter[0] == kSub || letter[0] == kSuper;
        if (!in_script && !opens && !pieces.back().empty() && text_width(pieces.back() + letter, height, face) > width)
            pieces.emplace_back();
        in_script = opens || (in_script && letter[0] != kPlain);
        pieces.back() += letter;
    }
    return pieces;
}

/// A part of what is better kept in one line, with the blank that stands before it there.
struct Atom {
    std::string blank;
    std::string words;
};

/// The parts between blanks; "± 0.30" is one.
std::vector<Atom> blank_parts(std::string_view words) {
    std::vector<Atom> out(1);
    for (const std::string& letter : code_points(words)) {
        const bool is_blank = letter == " " || letter == kHardBlank;
        if (is_blank && !out.back().words.ends_with(kPlusMinus))
            out.push_back({letter, ""});
        else
            out.back().words += letter;
    }
    return out;
}

/// The parts that begin with a sign: "+0.74/" and "−0.72" of "+0.74/−0.72".
std::vector<Atom> signed_parts(std::string_view words) {
    std::vector<Atom> out(1);
    for (const std::string& letter : code_points(words)) {
        const bool is_sign = letter == "+" || letter == "−" || letter == kPlusMinus;
        const std::string& before = out.back().words;
        if (is_sign && !before.empty() && before != "(" && before != "[") out.emplace_back();
        out.back().words += letter;
    }
    return out;
}

/// As many atoms in a line as fit; one that is too wide alone is cut by `narrower`.
template <class Narrower>
std::vector<std::string> filled(const std::vector<Atom>& atoms, double width, double height, Face face,
                                Narrower narrower) {
    std::vector<std::string> lines;
    for (const Atom& atom : atoms) {
        const std::string longer = lines.empty() ? atom.words : lines.back() + atom.blank + atom.words;
        if (!lines.empty() && text_width(longer, height, face) <= width) {
            lines.back() = longer;
            continue;
        }
        const bool fits = text_width(atom.words, height, face) <= width;
        const std::vector<std::string> more = fits ? std::vector{atom.words} : narrower(atom.words);
        lines.insert(lines.end(), more.begin(), more.end());
    }
    return lines;
}

/// Cuts what is too wide into pieces that are not: at blanks, else before signs, else between letters.
std::vector<std::string> broken(std::string_view words, double width, double height, Face face) {
    return filled(blank_parts(words), width, height, face, [&](const std::string& part) {
        return filled(signed_parts(part), width, height, face,
                      [&](const std::string& number) { return cut(number, width, height, face); });
    });
}

bool is_unit(std::string_view word) {
    while (!word.empty() && std::string_view("),;.:]").find(word.back()) != std::string_view::npos)
        word.remove_suffix(1);
    return std::find(kUnits.begin(), kUnits.end(), word) != kUnits.end();
}

/// The words of a text; a number keeps its unit and its deviation beside it.
std::vector<std::string> joined_words(std::string_view text) {
    std::vector<std::string> out;
    for (const std::string_view word : split(text, ' ')) {
        if (word.empty()) continue;
        const bool after_number = !out.empty() && out.back().back() >= '0' && out.back().back() <= '9';
        const bool after_sign = !out.empty() && out.back().ends_with(kPlusMinus);
        if (after_sign || (after_number && is_unit(word)))
            out.back() += ' ' + std::string(word);
        else
            out.emplace_back(word);
    }
    return out;
}

/// The lines of a text without line ends.
std::vector<std::string> wrapped_line(std::string_view words, double room, double height, Face face) {
    std::vector<std::string> lines(1);
    for (const std::string& word : joined_words(words)) {
        const std::string longer = lines.back().empty() ? word : lines.back() + ' ' + word;
        if (text_width(longer, height, face) <= room) {
            lines.back() = longer;
            continue;
        }
        if (!lines.back().empty()) lines.emplace_back();
        const std::vector<std::string> pieces = broken(word, room, height, face);
        lines.back() = pieces.front();
        lines.insert(lines.end(), pieces.begin() + 1, pieces.end());
    }
    return lines;
}

}  // namespace

double widest_word(std::string_view words, double height, Face face) {
    double widest = 0.0;
    for (const std::string_view line : split(words, '\n'))
        for (const Atom& part : blank_parts(line))
            for (const Atom& atom : signed_parts(part.words))
                widest = std::max(widest, text_width(atom.words, height, face));
    return widest;
}

std::vector<std::string> wrapped(std::string_view words, double width, double height, Face face, double squeeze) {
    std::vector<std::string> lines;
    for (const std::string_view line : split(words, '\n')) {
        const auto more = wrapped_line(line, width / squeeze, height, face);
        lines.insert(lines.end(), more.begin(), more.end());
    }
    return lines;
}

}  // namespace seatload::sheet
