// SPDX-License-Identifier: MIT
#include "script.hpp"

#include <seatload/core/text.hpp>

namespace seatload::test {
namespace {

constexpr std::string_view kMark = "=== ";

/// Takes the blank lines at the end off a section and counts them.
void set_off(Section& section) {
    while (!section.body.empty() && section.body.back().empty()) {
        section.body.pop_back();
        ++section.blank_lines;
    }
}

}  // namespace

Lines lines_of(std::string_view text) {
    if (text.empty()) return {};
    const bool is_ended = text.back() == '\n';
    if (is_ended) text.remove_suffix(1);
    Lines lines;
    for (const std::string_view line : split(text, '\n')) lines.emplace_back(line);
    if (!is_ended) lines.emplace_back("(no line end)");
    if (lines.back().empty()) lines.back() = "(a blank line at the end)";
    return lines;
}

std::string text_of(const Lines& lines) {
    std::string text;
    for (const std::string& line : lines) text += line + '\n';
    return text;
}

Script parse_script(std::string_view text) {
    Script script;
    for (const std::string_view line : split(text, '\n')) {
        if (line.starts_with(kMark))
            script.sections.push_back({std::string(line.substr(kMark.size())), {}, 0});
        else
            (script.sections.empty() ? script.preface : script.sections.back().body).emplace_back(line);
    }
    for (Section& section : script.sections) set_off(section);
    return script;
}

Lines lines_of(const Script& script) {
    Lines lines = script.preface;
    for (std::size_t i = 0; i < script.sections.size(); ++i) {
        const Section& section = script.sections[i];
        lines.push_back(std::string(kMark) + section.head);
        lines.insert(lines.end(), section.body.begin(), section.body.end());
        const bool is_last = i + 1 == script.sections.size();
        if (!is_last) lines.insert(lines.end(), section.blank_lines, "");
    }
    return lines;
}

Lines words_of(std::string_view line) {
    Lines words;
    bool in_quotes = false, in_word = false;
    for (const char c : line) {
        if (c == '"') in_quotes = !in_quotes;
        const bool is_blank = c == ' ' && !in_quotes;
        if (!is_blank && !in_word) words.emplace_back();
        in_word = !is_blank;
        if (!is_blank && c != '"') words.back() += c;
    }
    return words;
}

}  // namespace seatload::test
