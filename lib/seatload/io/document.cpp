// SPDX-License-Identifier: MIT
// The one source file that knows the TOML library.
#include <seatload/io/document.hpp>

#include <toml++/toml.h>

#include <algorithm>
#include <optional>
#include <tuple>
#include <utility>

#include <seatload/core/text.hpp>
#include <seatload/io/prescan.hpp>

namespace seatload::io {
namespace {

Position position(const toml::source_region& region, Position otherwise) {
    if (region.begin.line == 0) return otherwise;
    return {region.begin.line, region.begin.column};
}

Node converted(const toml::node& from, Position otherwise);

Table converted_table(const toml::table& from, Position otherwise) {
    // Put in order before they are copied: entries are heavy to move about.
    std::vector<std::tuple<Position, const toml::key*, const toml::node*>> order;
    order.reserve(from.size());
    for (auto&& [key, value] : from) order.emplace_back(position(key.source(), otherwise), &key, &value);
    std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) {
        const Position one = std::get<Position>(a), other = std::get<Position>(b);
        return std::tie(one.line, one.column) < std::tie(other.line, other.column);
    });
    Table table;
    table.reserve(order.size());
    for (const auto& [at, key, value] : order) table.push_back({std::string(key->str()), at, converted(*value, at)});
    return table;
}

List converted_list(const toml::array& from, Position otherwise) {
    List list;
    list.reserve(from.size());
    for (const toml::node& member : from) list.push_back(converted(member, otherwise));
    return list;
}

Node converted(const toml::node& from, Position otherwise) {
    Node node;
    node.at = position(from.source(), otherwise);
    if (const auto* text = from.as_string())
        node.value = text->get();
    else if (const auto* whole = from.as_integer())
        node.value = whole->get();
    else if (const auto* number = from.as_floating_point())
        node.value = number->get();
    else if (const auto* flag = from.as_boolean())
        node.value = flag->get();
    else if (const auto* date = from.as_date())
        node.value = Date{date->get().year, date->get().month, date->get().day};
    else if (const auto* list = from.as_array())
        node.value = converted_list(*list, node.at);
    else if (const auto* table = from.as_table())
        node.value = converted_table(*table, node.at);
    else
        node.value = TimeOfDay{};
    return node;
}

/// Puts every place of a mended text where it stands in the text as written.
void put_back(Node& node, const Prescan& scan) {
    node.at = scan.as_written(node.at);
    if (List* list = std::get_if<List>(&node.value))
        for (Node& member : *list) put_back(member, scan);
    if (Table* table = std::get_if<Table>(&node.value))
        for (Entry& entry : *table) {
            entry.at = scan.as_written(entry.at);
            put_back(entry.node, scan);
        }
}

std::string_view key_of(std::string_view line) { return trim(line.substr(0, line.find('='))); }

/// The line on which the key of a line was first given in the same table, 0 when it is not found.
unsigned first_given(const SourceText& source, unsigned line) {
    if (line == 0 || line > source.lines().size()) return 0;
    const std::string_view key = key_of(source.lines()[line - 1]);
    const bool is_header = key.starts_with('[');
    for (unsigned earlier = line - 1; earlier > 0; --earlier) {
        const std::string_view candidate = trim(source.lines()[earlier - 1]);
        if (key_of(candidate) == key) return earlier;
        if (!is_header && candidate.starts_with('[')) return 0;
    }
    return 0;
}

Diagnostic twice_given(const SourceText& source, unsigned line) {
    const std::string_view text = source.lines()[line - 1];
    const auto indent = static_cast<unsigned>(text.find_first_not_of(" \t"));
    const std::string key(key_of(text));
    Diagnostic d = source.error({line, indent + 1}, "key-twice"_id, key + " is given twice", "keep one of the two");
    if (const unsigned first = first_given(source, line); first != 0) {
        d.related = source.place({first, 1});
        d.related_note = "first given here";
        d.related_line = source.shown_line(first);
    }
    return d;
}

/// What to say of a slip.
struct PlainWords {
    DiagnosticId id;
    std::string message;
    std::string hint;
};

/// Our words for the slips that the library names in its own.
std::optional<PlainWords> plain_words(std::string_view message) {
    const auto has = [&](std::string_view part) { return message.find(part) != std::string_view::npos; };
    if (has("while parsing string") || has("while parsing literal string") || (has("string") && has("end-of-file")))
        return PlainWords{"unclosed-quote"_id, "a text in quotes is not closed, or holds what must be escaped",
                          "close it with a \" on the same line; write a backslash as \\\\"};
    if (has("expected value, saw '\\n'") || has("expected value, saw '\\r'"))
        return PlainWords{"no-value"_id, "no value after the =", "write one, or put a # before the line"};
    if (has("expected '='")) return PlainWords{"not-toml"_id, "not of the form key = value", "put a # before a remark"};
    if (has("end-of-file"))
        return PlainWords{"unclosed-bracket"_id, "the file ends before a bracket is closed", "close the list with ]"};
    return std::nullopt;
}

/// The place, but none behind the end of its line: the library counts the end of the file as a letter more.
Position on_line(const SourceText& source, Position at) {
    if (at.line == 0 || at.line > source.lines().size()) return at;
    const std::size_t letters = length_in_code_points(source.lines()[at.line - 1]);
    return {at.line, std::min(at.column, static_cast<unsigned>(letters + 1))};
}

/// The library's complaint in our form.
Diagnostic grammar_error(const SourceText& source, const Prescan& scan, const toml::parse_error& error) {
    const Position at = on_line(source, scan.as_written(position(error.source(), {})));
    const std::string message(error.description());
    if (message.find("redefine") != std::string::npos && at.line <= source.lines().size())
        return twice_given(source, at.line);
    if (auto plain = plain_words(message))
        return source.error(at, plain->id, std::move(plain->message), std::move(plain->hint));
    const auto colon = message.find(": ");
    if (!message.starts_with("Error while parsing") || colon == std::string::npos)
        return source.error(at, "not-toml"_id, message);
    return source.error(at, "not-toml"_id,
                        "not TOML: " + message.substr(colon + 2) + " (" + message.substr(6, colon - 6) + ")");
}

}  // namespace

Document::Document(std::string_view text, std::string file_name)
    : bytes_(without_byte_order_mark(text)), source_(bytes_, std::move(file_name)) {
    parse();
}

void Document::parse() {
    Prescan scan = prescan(source_);
    diagnostics_ = std::move(scan.errors);
    if (!scan.is_safe) return;
    try {
        const toml::table table = toml::parse(std::string_view(scan.mended), std::string_view(source_.file_name()));
        root_.value = converted_table(table, {});
        if (!scan.mends.empty()) put_back(root_, scan);
        is_readable_ = true;
    } catch (const toml::parse_error& error) {
        diagnostics_.push_back(grammar_error(source_, scan, error));
    }
}

const Node* Document::find(std::string_view path) const {
    const Node* node = &root_;
    for (const std::string_view key : split(path, '.')) {
        const Table* table = std::get_if<Table>(&node->value);
        const Entry* entry = table != nullptr ? find_entry(*table, key) : nullptr;
        if (entry == nullptr) return nullptr;
        node = &entry->node;
    }
    return node;
}

Position Document::at(std::string_view path) const {
    for (;;) {
        if (const Node* node = find(path)) return node->at;
        const std::size_t point = path.rfind('.');
        if (point == std::string_view::npos) return root_.at;
        path = path.substr(0, point);
    }
}

void Document::error(Position at, DiagnosticId id, std::string message, std::string hint) {
    diagnostics_.push_back(source_.error(at, id, std::move(message), std::move(hint)));
}

void Document::contradiction(Position at, DiagnosticId id, std::string message, std::string hint, Position other,
                             std::string other_note) {
    Diagnostic d = source_.error(at, id, std::move(message), std::move(hint));
    d.related = source_.place(other);
    d.related_note = std::move(other_note);
    d.related_line = source_.shown_line(other.line);
    diagnostics_.push_back(std::move(d));
}

void Document::warning(Position at, DiagnosticId id, std::string message, std::string hint) {
    Diagnostic d = source_.error(at, id, std::move(message), std::move(hint));
    d.severity = Severity::warning;
    diagnostics_.push_back(std::move(d));
}

Position Document::inside_text(Position value, std::string_view text, std::size_t offset) const {
    if (value.line == 0 || value.line > source_.lines().size()) return value;
    const std::vector<std::string> letters = code_points(source_.lines()[value.line - 1]);
    std::string rest;
    for (std::size_t i = value.column; i < letters.size(); ++i) rest += letters[i];
    // only when the text stands there as it is, without escapes, can an offset inside it be told
    if (!rest.starts_with(text)) return value;
    return {value.line, value.column + 1 + static_cast<unsigned>(offset)};
}

}  // namespace seatload::io
