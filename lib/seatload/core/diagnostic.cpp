// SPDX-License-Identifier: MIT
#include <seatload/core/diagnostic.hpp>

#include <algorithm>
#include <tuple>
#include <utility>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

namespace seatload {
namespace {

constexpr std::size_t kShownColumns = 100;  // a longer source line is cut round the caret

std::string where(const Place& place) {
    std::string text = place.file;
    if (place.line != 0) text += ':' + std::to_string(place.line);
    if (place.line != 0 && place.column != 0) text += ':' + std::to_string(place.column);
    return text;
}

/// The source line with a caret under `column`, tabs shown as one blank so that the caret stands right.
std::string quoted(const std::string& line, unsigned column) {
    if (line.empty()) return {};
    std::vector<std::string> letters = code_points(line);
    std::size_t at = column == 0 ? 0 : std::min<std::size_t>(column - 1, letters.size());
    const std::size_t first = at + 1 > kShownColumns ? at + 1 - kShownColumns : 0;
    const std::size_t last = std::min(letters.size(), first + kShownColumns);
    std::string shown = "    ";
    for (std::size_t i = first; i < last; ++i) {
        const auto byte = static_cast<unsigned char>(letters[i].front());
        shown += byte < 0x20 || byte == 0x7f ? " " : letters[i];
    }
    return shown + "\n    " + std::string(at - first, ' ') + "^\n";
}

/// The words broken into lines of at most `width` columns; a short text in quotes is kept in one line.
std::string lines(const std::string& start, std::string words, int width, std::size_t indent) {
    if (width == 0) return start + words + '\n';
    constexpr std::size_t kLongestQuoted = 40;
    constexpr char kHeld = '\x1f';
    constexpr std::string_view kQuotes = "\"`";
    const auto swap = [](std::string& text, char from, char to) { std::replace(text.begin(), text.end(), from, to); };
    for (std::size_t open = words.find_first_of(kQuotes); open != std::string::npos;) {
        const std::size_t close = words.find(words[open], open + 1);
        if (close == std::string::npos) break;
        std::string quoted = words.substr(open, close - open);
        if (quoted.size() <= kLongestQuoted) swap(quoted, ' ', kHeld);
        words.replace(open, quoted.size(), quoted);
        open = words.find_first_of(kQuotes, close + 1);
    }
    std::string broken = wrapped(start, words, width, indent);
    swap(broken, kHeld, ' ');
    return broken;
}

std::string render_one(const Diagnostic& d, int width) {
    constexpr std::size_t kIndent = 4;
    const std::string hint = "    hint: ";
    const std::string head = where(d.place).empty() ? std::string{} : where(d.place) + ": ";
    const std::string name = d.id.words.empty() ? std::string{} : " [" + std::string(d.id.words) + ']';
    std::string text =
        lines(head + (d.severity == Severity::error ? "error: " : "warning: "), d.message + name, width, kIndent);
    text += quoted(d.source_line, d.place.column);
    if (!d.hint.empty()) text += lines(hint, d.hint, width, hint.size());
    if (!d.related.file.empty()) {
        text += lines(where(d.related) + ": note: ", d.related_note, width, kIndent);
        text += quoted(d.related_line, d.related.column);
    }
    return text;
}

}  // namespace

Diagnostic complaint(Severity severity, DiagnosticId id, std::string message, std::string hint) {
    Diagnostic d;
    d.severity = severity;
    d.id = id;
    d.message = std::move(message);
    d.hint = std::move(hint);
    return d;
}

Diagnostic error(DiagnosticId id, std::string message, std::string hint) {
    return complaint(Severity::error, id, std::move(message), std::move(hint));
}

Diagnostic error_in(std::string file, DiagnosticId id, std::string message, std::string hint) {
    Diagnostic d = error(id, std::move(message), std::move(hint));
    d.place.file = std::move(file);
    return d;
}

bool has_error(const Diagnostics& diagnostics) {
    return std::any_of(diagnostics.begin(), diagnostics.end(),
                       [](const Diagnostic& d) { return d.severity == Severity::error; });
}

Diagnostics sorted(Diagnostics diagnostics) {
    std::stable_sort(diagnostics.begin(), diagnostics.end(), [](const Diagnostic& a, const Diagnostic& b) {
        return std::tie(a.place.file, a.place.line, a.place.column) <
               std::tie(b.place.file, b.place.line, b.place.column);
    });
    return diagnostics;
}

std::string render(const Diagnostics& diagnostics, std::size_t limit, int width) {
    std::string text;
    for (std::size_t i = 0; i < std::min(limit, diagnostics.size()); ++i) text += render_one(diagnostics[i], width);
    if (diagnostics.size() > limit) text += "(" + std::to_string(diagnostics.size() - limit) + " more not shown)\n";
    return text;
}

}  // namespace seatload
