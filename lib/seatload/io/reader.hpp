// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/io/document.hpp>
#include <seatload/io/form.hpp>
#include <seatload/io/span.hpp>

namespace seatload::io {

/// Reads one list of a document member by member; for rows of a table such as ["0.80 mm", "2230 MPa"].
class RowReader {
  public:
    RowReader(Document& document, const List& list, Position at, std::string path)
        : document_(document), list_(list), at_(at), path_(std::move(path)) {}

    std::size_t size() const { return list_.size(); }
    Position at() const { return at_; }
    /// The member at `index`, which must be there, as it stands.
    const Node& node(std::size_t index) const { return list_[index]; }

    /// The member at `index`, or nothing when the row is shorter or the member is wrong (then complained of).
    template <class T>
    std::optional<T> find(std::size_t index, std::string_view name, const Span& span = kAny);
    /// The member at `index`; a row too short is complained of, and T{} returned.
    template <class T>
    T need(std::size_t index, std::string_view name, const Span& span = kAny);
    /// Complains of the row as a whole.
    void complain(DiagnosticId id, const std::string& message) { document_.error(at_, id, path_ + ": " + message); }
    /// Complains of members beyond the first `count`.
    void expect_at_most(std::size_t count);

  private:
    Document& document_;
    const List& list_;
    Position at_;
    std::string path_;
};

/// Reads one table of a document key by key. Everything wrong is added to the document's complaints and reading goes
/// on; what a failed read returns is of no use, so look at Document::has_error() in the end. When the reader ends,
/// every key that was never asked for is an error ("did you mean").
class Reader {
  public:
    /// The whole document.
    explicit Reader(Document& document);
    /// A table inside it; `path` ("space", "offer.wire") leads the messages.
    Reader(Document& document, const Node& table, std::string path);
    Reader(Reader&& other) noexcept;
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;
    Reader& operator=(Reader&&) = delete;
    ~Reader();

    Document& document() const { return *document_; }
    /// Where the table starts.
    Position at() const { return at_; }
    /// Where the value of a key stands, or the table when there is no such key.
    Position at(std::string_view key) const;
    bool has(std::string_view key) const { return find_entry(*table_, key) != nullptr; }
    /// The keys that stand in the table, in the order of the file.
    std::vector<std::string> keys() const;

    /// The value of a key; nothing when the key is absent, or wrong (then complained of).
    template <class T>
    std::optional<T> find(std::string_view key, const Span& span = kAny);
    /// The value of a key that must be there; `example` is how it is written ("\"9.00 mm\"").
    template <class T>
    T need(std::string_view key, std::string_view example, const Span& span = kAny);
    /// Puts the value into `target` when the key is there and right; true when it did.
    template <class T>
    bool set(std::string_view key, T& target, const Span& span = kAny);
    template <class T>
    bool set(std::string_view key, std::optional<T>& target, const Span& span = kAny);
    /// The members of a list; empty when the key is absent. Wrong members are complained of one by one.
    template <class T>
    std::vector<T> list(std::string_view key, const Span& span = kAny);

    /// A table; nothing when the key is absent, or no table (then complained of).
    std::optional<Reader> table(std::string_view key);
    /// A table that must be there; `example` is a line it would hold.
    std::optional<Reader> need_table(std::string_view key, std::string_view example);
    /// The tables of an array of tables; empty when the key is absent.
    std::vector<Reader> tables(std::string_view key);
    /// The lists inside a list; empty when the key is absent.
    std::vector<RowReader> rows(std::string_view key);

    /// Complains of a key's value (or of the table, when the key is absent).
    void error(std::string_view key, DiagnosticId id, std::string message, std::string hint = {});
    void warning(std::string_view key, DiagnosticId id, std::string message, std::string hint = {});
    /// Complains of a key that is missing.
    void missing(std::string_view key, std::string_view example);
    /// Marks keys as known without reading them.
    void allow(std::string_view key) { asked_.emplace_back(key); }
    void allow_all() { allows_all_ = true; }
    /// Lets messages on this table and those inside it speak of "offer B" instead of "the second offer".
    void call(std::string name) { member_ = std::move(name); }

  private:
    const Node* node(std::string_view key);
    std::string path(std::string_view key) const;
    /// The key as messages name it: "space.bore", "wire.diameter of the first offer".
    std::string called(std::string_view key) const;
    void report_unknown_keys();

    Document* document_;
    const Table* table_;
    Position at_;
    std::string path_;    ///< as a header names the table
    std::string member_;  ///< the member of a list that holds the table: "the first offer"; empty: none does
    std::string inside_;  ///< the path from that member to the table
    std::vector<std::string> asked_;
    bool allows_all_ = false;
};

namespace detail {

/// Complains of a node's value; `where` is the path of its key.
void complain(Document& document, const Node& node, std::string_view where, const units::Problem& problem);
void complain_of_span(Document& document, const Node& node, std::string_view where, const Span& span);

template <class T>
std::optional<T> read_value(Document& document, const Node& node, std::string_view where, const Span& span) {
    units::Parsed<T> parsed = Form<T>::read(node);
    if (!parsed.value) {
        complain(document, node, where, parsed.problem);
        return std::nullopt;
    }
    for (const double number : Form<T>::numbers(*parsed.value))
        if (!span.has(number)) {
            complain_of_span(document, node, where, span);
            return std::nullopt;
        }
    return std::move(parsed.value);
}

}  // namespace detail

template <class T>
std::optional<T> RowReader::find(std::size_t index, std::string_view name, const Span& span) {
    if (index >= list_.size()) return std::nullopt;
    return detail::read_value<T>(document_, list_[index], path_ + ": " + std::string(name), span);
}

template <class T>
T RowReader::need(std::size_t index, std::string_view name, const Span& span) {
    if (index >= list_.size()) {
        document_.error(at_, "row-length"_id, path_ + ": the row ends before its " + std::string(name));
        return T{};
    }
    return find<T>(index, name, span).value_or(T{});
}

template <class T>
std::optional<T> Reader::find(std::string_view key, const Span& span) {
    const Node* value = node(key);
    if (value == nullptr) return std::nullopt;
    return detail::read_value<T>(*document_, *value, called(key), span);
}

template <class T>
T Reader::need(std::string_view key, std::string_view example, const Span& span) {
    if (!has(key)) missing(key, example);
    return find<T>(key, span).value_or(T{});
}

template <class T>
bool Reader::set(std::string_view key, T& target, const Span& span) {
    std::optional<T> value = find<T>(key, span);
    if (value) target = std::move(*value);
    return value.has_value();
}

template <class T>
bool Reader::set(std::string_view key, std::optional<T>& target, const Span& span) {
    std::optional<T> value = find<T>(key, span);
    if (value) target = std::move(value);
    return target.has_value();
}

template <class T>
std::vector<T> Reader::list(std::string_view key, const Span& span) {
    std::vector<T> members;
    const Node* value = node(key);
    if (value == nullptr) return members;
    const List* list = std::get_if<List>(&value->value);
    if (list == nullptr) {
        detail::complain(*document_, *value, called(key),
                         {"wrong-kind"_id, "a list is wanted, this is " + std::string(kind_of(*value)),
                          "put it in brackets: " + std::string(key) + " = [ ... ]", 0});
        return members;
    }
    for (const Node& member : *list)
        if (auto read = detail::read_value<T>(*document_, member, called(key), span))
            members.push_back(std::move(*read));
    return members;
}

}  // namespace seatload::io
