// SPDX-License-Identifier: MIT
#include <seatload/core/diagnostic.hpp>

#include <algorithm>
#include <tuple>

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

std::string render_one(const Diagnostic& d) {
    const std::string head = where(d.place);
    std::string text = head.empty() ? std::string{} : head + ": ";
    text += (d.severity == Severity::error ? "error: " : "warning: ") + d.message + '\n';
    text += quoted(d.source_line, d.place.column);
    if (!d.hint.empty()) text += "    hint: " + d.hint + '\n';
    if (!d.related.file.empty()) {
        text += where(d.related) + ": note: " + d.related_note + '\n';
        text += quoted(d.related_line, d.related.column);
    }
    return text;
}

}  // namespace

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

std::string render(const Diagnostics& diagnostics, std::size_t limit) {
    std::string text;
    for (std::size_t i = 0; i < std::min(limit, diagnostics.size()); ++i) text += render_one(diagnostics[i]);
    if (diagnostics.size() > limit) text += "(" + std::to_string(diagnostics.size() - limit) + " more not shown)\n";
    return text;
}

}  // namespace seatload
