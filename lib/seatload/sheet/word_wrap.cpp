// SPDX-License-Identifier: MIT
#include <seatload/sheet/word_wrap.hpp>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

/// Cuts a word that is too wide into pieces that are not; a script stays whole.
std::vector<std::string> broken(const std::string& word, double width, double height, Face face) {
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

/// The lines of a text without line ends.
std::vector<std::string> wrapped_line(std::string_view words, double room, double height, Face face) {
    std::vector<std::string> lines(1);
    for (const std::string_view word : split(words, ' ')) {
        if (word.empty()) continue;
        const std::string longer = lines.back().empty() ? std::string(word) : lines.back() + ' ' + std::string(word);
        if (text_width(longer, height, face) <= room) {
            lines.back() = longer;
            continue;
        }
        if (!lines.back().empty()) lines.emplace_back();
        const std::vector<std::string> pieces = broken(std::string(word), room, height, face);
        lines.back() = pieces.front();
        lines.insert(lines.end(), pieces.begin() + 1, pieces.end());
    }
    return lines;
}

}  // namespace

std::vector<std::string> wrapped(std::string_view words, double width, double height, Face face, double squeeze) {
    std::vector<std::string> lines;
    for (const std::string_view line : split(words, '\n')) {
        const auto more = wrapped_line(line, width / squeeze, height, face);
        lines.insert(lines.end(), more.begin(), more.end());
    }
    return lines;
}

}  // namespace seatload::sheet
