// SPDX-License-Identifier: MIT
#include <seatload/core/line_wrap.hpp>

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include <seatload/core/text.hpp>

namespace seatload {
namespace {

constexpr int kNarrowest = 40;
constexpr std::array<std::string_view, 13> kUnits{"mm", "N",  "N/mm",  "MPa", "°C",  "%",    "s",
                                                  "g",  "Hz", "kg/m3", "bar", "mm²", "N/mm²"};

bool is_figure(char c) { return c >= '0' && c <= '9'; }

/// Whether a word goes on with the number before it: a unit, or the next three digits.
bool continues_number(std::string_view word) {
    while (!word.empty() && std::string_view("),;.:").find(word.back()) != std::string_view::npos)
        word.remove_suffix(1);
    if (std::find(kUnits.begin(), kUnits.end(), word) != kUnits.end()) return true;
    return word.size() == 3 && std::all_of(word.begin(), word.end(), is_figure);
}

/// The words between blanks; what a command in backticks holds in single quotes is one word, its blanks as they are.
std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    bool is_command = false, is_quoted = false;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= text.size(); ++i) {
        if (i == text.size() || (text[i] == ' ' && !is_quoted)) {
            if (i > from) words.push_back(text.substr(from, i - from));
            from = i + 1;
        } else if (is_command && text[i] == '\'') {
            // Not one that a backslash shields, nor an apostrophe within a word.
            is_quoted = !is_quoted && std::string_view(" ='").find(text[i - 1]) != std::string_view::npos;
        } else if (text[i] == '`' && !is_quoted) {
            is_command = !is_command;
        }
    }
    return words;
}

/// The words, those that belong together joined by a blank.
std::vector<std::string> unbroken(std::string_view words) {
    std::vector<std::string> pieces;
    for (const std::string_view word : words_of(words)) {
        if (!pieces.empty() && is_figure(pieces.back().back()) && continues_number(word))
            pieces.back() += ' ' + std::string(word);
        else
            pieces.emplace_back(word);
    }
    return pieces;
}

}  // namespace

std::string wrapped(const std::string& start, const std::string& words, int width, std::size_t indent) {
    const auto room = static_cast<std::size_t>(std::max(width, kNarrowest));
    std::string out = start;
    std::size_t column = length_in_code_points(start);
    bool is_first = true;
    for (const std::string& piece : unbroken(words)) {
        const std::size_t length = length_in_code_points(piece) + (is_first ? 0 : 1);
        if (!is_first && column + length > room) {
            out += '\n' + std::string(indent, ' ');
            column = indent + length - 1;
        } else {
            if (!is_first) out += ' ';
            column += length;
        }
        out += piece;
        is_first = false;
    }
    return out + '\n';
}

}  // namespace seatload
