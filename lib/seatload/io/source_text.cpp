// SPDX-License-Identifier: MIT
#include <seatload/io/source_text.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::io {

SourceText::SourceText(std::string_view text, std::string file_name) : text_(text), file_name_(std::move(file_name)) {
    for (std::string_view line : split(text, '\n')) {
        if (line.ends_with('\r')) line.remove_suffix(1);
        lines_.push_back(line);
    }
}

std::string SourceText::shown_line(unsigned line) const {
    constexpr std::size_t kLongestShown = 2000;  // nobody wrote a longer line by hand
    if (line == 0 || line > lines_.size() || lines_[line - 1].size() > kLongestShown) return {};
    std::string shown;
    for (const std::string& letter : code_points(lines_[line - 1]))
        shown += first_invalid_utf8(letter) ? "\uFFFD" : letter;
    return shown;
}

Position SourceText::position_of_byte(std::size_t offset) const {
    const std::string_view before = text_.substr(0, offset);
    const std::size_t line_start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return {static_cast<unsigned>(1 + std::count(before.begin(), before.end(), '\n')),
            static_cast<unsigned>(1 + length_in_code_points(before.substr(line_start)))};
}

Diagnostic SourceText::error(Position at, DiagnosticId id, std::string message, std::string hint) const {
    Diagnostic d;
    d.place = place(at);
    d.id = id;
    d.message = std::move(message);
    d.hint = std::move(hint);
    d.source_line = shown_line(at.line);
    return d;
}

}  // namespace seatload::io
