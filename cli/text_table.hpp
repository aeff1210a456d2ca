// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace seatload::cli {

/// A table for the terminal: columns as wide as their widest cell, numbers to the right.
class TextTable {
  public:
    enum class Align { left, right };

    explicit TextTable(std::vector<Align> columns) : columns_(std::move(columns)) {}
    void add(std::vector<std::string> cells);
    /// The lines, each set in by `indent` blanks, cells parted by two.
    std::string text(std::size_t indent) const;

  private:
    std::vector<Align> columns_;
    std::vector<std::vector<std::string>> rows_;
};

/// The words in lines of at most `width` columns: the first set in by `indent`, the others by `hanging`.
std::string wrapped(const std::string& words, int width, std::size_t indent, std::size_t hanging);

}  // namespace seatload::cli
