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

}  // namespace seatload::cli
