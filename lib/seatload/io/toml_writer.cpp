// SPDX-License-Identifier: MIT
#include <seatload/io/toml_writer.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

constexpr std::size_t kFarthestComment = 56;  // a longer value carries its comment right behind it

}  // namespace

void TomlWriter::comment(std::string_view text) {
    flush();
    text_ += text.empty() ? "#" : "# ";
    text_ += text;
    text_ += '\n';
}

void TomlWriter::table(std::string_view path) {
    flush();
    if (!text_.empty()) text_ += '\n';
    text_ += '[';
    text_ += path;
    text_ += "]\n";
}

void TomlWriter::next_table(std::string_view path) { table('[' + std::string(path) + ']'); }

void TomlWriter::entry(std::string_view key, std::string value, std::string_view comment) {
    lines_.push_back({std::string(key) + " = " + std::move(value), std::string(comment)});
}

std::string TomlWriter::text() && {
    flush();
    return std::move(text_);
}

void TomlWriter::flush() {
    std::size_t column = 0;
    for (const Line& line : lines_) {
        const std::size_t width = length_in_code_points(line.assignment);
        if (!line.comment.empty() && width <= kFarthestComment) column = std::max(column, width);
    }
    for (const Line& line : lines_) {
        text_ += line.assignment;
        if (!line.comment.empty()) {
            const std::size_t width = length_in_code_points(line.assignment);
            text_ += std::string(width < column ? column - width : 0, ' ') + "  # " + line.comment;
        }
        text_ += '\n';
    }
    lines_.clear();
}

}  // namespace seatload::io
