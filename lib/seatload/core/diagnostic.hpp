// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload {

/// A position in a text file; line and column count from 1 (columns in code points), 0 when unknown.
struct Place {
    std::string file;
    unsigned line = 0;
    unsigned column = 0;

    bool operator==(const Place&) const = default;
};

enum class Severity { error, warning };

/// The lasting name of one kind of complaint, in small letters and hyphens, which a user can look up; written
/// `"bare-number"_id`. Wording may change, the name does not.
struct DiagnosticId {
    std::string_view words;  ///< empty: no name

    constexpr DiagnosticId() = default;
    constexpr explicit DiagnosticId(std::string_view name) : words(name) {}  // explicit: no message slips in as a name
    bool operator==(const DiagnosticId&) const = default;
};

/// True when `words` is a name for a complaint: letters a to z and figures, in words joined by single hyphens.
constexpr bool is_diagnostic_id(std::string_view words) {
    char before = '-';
    for (const char c : words) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (!plain && (c != '-' || before == '-')) return false;
        before = c;
    }
    return before != '-';
}

/// The name of a complaint; one that is no name does not compile.
consteval DiagnosticId operator""_id(const char* words, std::size_t size) {
    if (!is_diagnostic_id({words, size})) throw "a complaint is named in small letters and hyphens";
    return DiagnosticId({words, size});
}

/// One complaint about something a user wrote, with where it stands and what would mend it.
struct Diagnostic {
    Severity severity = Severity::error;
    DiagnosticId id;
    Place place;
    std::string message;
    std::string hint;          ///< what to write instead; empty when there is nothing useful to say
    Place related;             ///< second place of a contradiction; its file is empty when there is none
    std::string related_note;  ///< what stands at the second place
    std::string source_line;   ///< the offending line as written; empty when there is no text
    std::string related_line;  ///< the line at the second place
};

using Diagnostics = std::vector<Diagnostic>;

/// A complaint without a place: whoever read the file knows where its parts stood.
Diagnostic complaint(Severity severity, DiagnosticId id, std::string message, std::string hint = {});
/// An error without a place.
Diagnostic error(DiagnosticId id, std::string message, std::string hint = {});
/// An error in a file as a whole.
Diagnostic error_in(std::string file, DiagnosticId id, std::string message, std::string hint = {});

/// True when at least one of them is an error.
bool has_error(const Diagnostics& diagnostics);

/// The diagnostics ordered by file, line and column; equal places keep their order.
Diagnostics sorted(Diagnostics diagnostics);

/// The text shown to a user: `file:line:col: error: message [id]`, the source line, a caret, the hint and the second
/// place. At most `limit` diagnostics are written out; a last line counts the rest. Messages and hints are broken at
/// blanks so that no line is longer than `width` columns (0: never broken), the lines after the first set in; what
/// stands in quotes and paths stay whole, source lines are cut round the caret, endless names in their middle.
std::string render(const Diagnostics& diagnostics, std::size_t limit = 20, int width = 0);

}  // namespace seatload
