// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload::io {

/// Writes TOML in the order it is told, with comments behind the values lined up in each table.
class TomlWriter {
  public:
    void comment(std::string_view text);
    /// Begins the table [path].
    void table(std::string_view path);
    /// Begins the next of the tables [[path]].
    void next_table(std::string_view path);
    /// A key with a value that is TOML already (a Form writes it).
    void entry(std::string_view key, std::string value, std::string_view comment = {});

    /// All that was written.
    std::string text() &&;

  private:
    struct Line {
        std::string assignment;
        std::string comment;
    };
    void flush();

    std::string text_;
    std::vector<Line> lines_;  ///< of the table being written
};

}  // namespace seatload::io
