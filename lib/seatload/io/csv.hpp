// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/node.hpp>
#include <seatload/io/source_text.hpp>

namespace seatload::io {

/// A cell of a CSV file: its text without quotes and without blanks at its ends, and where it starts.
struct CsvCell {
    std::string text;
    Position at;
};

using CsvRow = std::vector<CsvCell>;

/// A CSV text (RFC 4180: commas between cells, quotes doubled inside quotes, lines ending in CR LF or LF) taken apart,
/// and the complaints about it. A byte order mark is passed over, and so are rows without anything in them.
class CsvText {
  public:
    CsvText(std::string_view text, std::string file_name);
    CsvText(const CsvText&) = delete;
    CsvText& operator=(const CsvText&) = delete;

    /// False when quotes or bytes are such that cells cannot be told apart; there are then no rows.
    bool is_readable() const { return is_readable_; }
    const std::vector<CsvRow>& rows() const { return rows_; }

    /// Adds an error at a position.
    void error(Position at, DiagnosticId id, std::string message, std::string hint = {});
    void warning(Position at, DiagnosticId id, std::string message, std::string hint = {});
    bool has_error() const { return seatload::has_error(diagnostics_); }
    /// All complaints by position.
    Diagnostics diagnostics() const { return sorted(diagnostics_); }

  private:
    std::string bytes_;
    SourceText source_;
    std::vector<CsvRow> rows_;
    bool is_readable_ = true;
    Diagnostics diagnostics_;
};

}  // namespace seatload::io
