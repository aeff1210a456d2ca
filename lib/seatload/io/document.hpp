// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/node.hpp>
#include <seatload/io/source_text.hpp>

namespace seatload::io {

/// A TOML text taken apart, and the complaints about it. Reading goes on after a complaint, so that one run shows all.
class Document {
  public:
    /// Takes the text apart; what is wrong with its grammar is in diagnostics().
    Document(std::string_view text, std::string file_name);
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    /// False when the text could not be taken apart; the root table is then empty.
    bool is_readable() const { return is_readable_; }
    const Node& root() const { return root_; }
    const std::string& file_name() const { return source_.file_name(); }

    /// The value at a path of keys ("space.bore"), or null. Keys with points in them cannot be asked for.
    const Node* find(std::string_view path) const;
    /// Where the value at a path stands; where it is absent, the nearest table above.
    Position at(std::string_view path) const;

    /// Adds an error at a position.
    void error(Position at, DiagnosticId id, std::string message, std::string hint = {});
    /// Adds an error between two places of the file that contradict each other.
    void contradiction(Position at, DiagnosticId id, std::string message, std::string hint, Position other,
                       std::string other_note);
    void warning(Position at, DiagnosticId id, std::string message, std::string hint = {});

    bool has_error() const { return seatload::has_error(diagnostics_); }
    /// All complaints by position.
    Diagnostics diagnostics() const { return sorted(diagnostics_); }

    /// The column of a place inside a quoted value that starts at `value`: `offset` code points into `text`.
    Position inside_text(Position value, std::string_view text, std::size_t offset) const;

  private:
    void parse();

    std::string bytes_;
    SourceText source_;
    Node root_{{0, 0}, Table{}};  ///< the file as a whole stands on no line
    bool is_readable_ = false;
    Diagnostics diagnostics_;
};

}  // namespace seatload::io
