// SPDX-License-Identifier: MIT
#include <seatload/core/diagnostic.hpp>

#include <algorithm>
#include <span>
#include <string_view>
#include <tuple>
#include <utility>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

namespace seatload {
namespace {

constexpr std::size_t kUsualColumns = 100;  // of a source line, when no width is given
constexpr std::size_t kSetIn = 4;           // columns before a source line and the lines after a first one

std::string where(const Place& place) {
    std::string text = place.file;
    if (place.line != 0) text += ':' + std::to_string(place.line);
    if (place.line != 0 && place.column != 0) text += ':' + std::to_string(place.column);
    return text;
}

/// The letters as they are shown: a tab or a control character as one blank, so that the caret stands right.
std::string seen(std::span<const std::string> letters) {
    std::string shown;
    for (const std::string& letter : letters) {
        const auto byte = static_cast<unsigned char>(letter.front());
        shown += byte < 0x20 || byte == 0x7f ? " " : letter;
    }
    return shown;
}

/// The source line with a caret under `column`; of a line longer than `width` what stands round the caret, with dots
/// where something was left out.
std::string quoted(const std::string& line, unsigned column, int width) {
    if (line.empty()) return {};
    constexpr std::string_view kDots = "...";
    const std::vector<std::string> letters = code_points(line);
    const std::size_t room =
        width == 0 ? kUsualColumns : std::max<std::size_t>(static_cast<std::size_t>(width), 40) - kSetIn;
    const std::size_t at = column == 0 ? 0 : std::min<std::size_t>(column - 1, letters.size());
    const std::size_t needed = std::max(letters.size(), at + 1);
    std::size_t first = 0;
    if (needed > room && at > room * 2 / 3) first = std::min(at - room * 2 / 3, needed - room);
    const std::size_t last = std::min(letters.size(), first + room);
    std::string before = first == 0 ? "" : std::string(kDots);
    std::string after = last == letters.size() ? "" : std::string(kDots);
    const std::span<const std::string> kept(letters.data() + first + before.size(),
                                            last - first - before.size() - after.size());
    const std::string indent(kSetIn, ' ');
    return indent + before + seen(kept) + after + '\n' + indent + std::string(at - first, ' ') + "^\n";
}

/// A name too long to be read, with dots in place of its middle.
std::string shortened(const std::vector<std::string>& letters) {
    constexpr std::size_t kBegin = 60, kEnd = 20;
    const std::span<const std::string> all(letters);
    return join(all.first(kBegin), "") + "..." + join(all.last(kEnd), "");
}

/// The words, each name in quotation marks and each word by itself shortened that no one would read to its end.
std::string without_endless_names(const std::string& words) {
    constexpr std::size_t kLongestName = 160;
    if (words.size() <= kLongestName) return words;
    std::string out;
    for (std::size_t from = 0; from < words.size();) {
        const bool is_quoted = words[from] == '"' && words.find('"', from + 1) != std::string::npos;
        if (words[from] == '"' || words[from] == ' ') out += words[from++];
        const std::size_t to =
            std::min(is_quoted ? words.find('"', from) : words.find_first_of(" \"", from), words.size());
        const std::string name = words.substr(from, to - from);
        const std::vector<std::string> letters = code_points(name);
        out += letters.size() > kLongestName && name.find('/') == std::string::npos ? shortened(letters) : name;
        from = to;
        if (is_quoted) out += words[from++];
    }
    return out;
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
    const std::string hint = "    hint: ";
    const std::string head = where(d.place).empty() ? std::string{} : where(d.place) + ": ";
    const std::string name = d.id.words.empty() ? std::string{} : " [" + std::string(d.id.words) + ']';
    std::string text = lines(head + (d.severity == Severity::error ? "error: " : "warning: "),
                             without_endless_names(d.message) + name, width, kSetIn);
    text += quoted(d.source_line, d.place.column, width);
    if (!d.hint.empty()) text += lines(hint, without_endless_names(d.hint), width, hint.size());
    if (!d.related.file.empty()) {
        text += lines(where(d.related) + ": note: ", without_endless_names(d.related_note), width, kSetIn);
        text += quoted(d.related_line, d.related.column, width);
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
