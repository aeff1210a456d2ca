// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/node.hpp>

namespace seatload::io {

/// The text without the mark by which some editors say that it is UTF-8.
constexpr std::string_view without_byte_order_mark(std::string_view text) {
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    return text.starts_with(kMark) ? text.substr(kMark.size()) : text;
}

/// The text of an input file with its name and lines. The bytes of the text must outlive it.
class SourceText {
  public:
    SourceText(std::string_view text, std::string file_name);

    std::string_view text() const { return text_; }
    const std::string& file_name() const { return file_name_; }
    const std::vector<std::string_view>& lines() const { return lines_; }

    /// A line, counted from 1, for showing: bytes that are not UTF-8 are replaced. Empty when there is no such line
    /// and for a line of more than 2000 bytes.
    std::string shown_line(unsigned line) const;

    Place place(Position at) const { return {file_name_, at.line, at.column}; }
    Position position_of_byte(std::size_t offset) const;

    /// An error at a position, with the line that stands there.
    Diagnostic error(Position at, DiagnosticId id, std::string message, std::string hint = {}) const;

  private:
    std::string_view text_;
    std::string file_name_;
    std::vector<std::string_view> lines_;  ///< without line ends
};

}  // namespace seatload::io
