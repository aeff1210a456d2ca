// SPDX-License-Identifier: MIT
#include <seatload/io/reader.hpp>

#include <algorithm>
#include <array>

#include <seatload/core/assert.hpp>
#include <seatload/core/text.hpp>

namespace seatload::io {
namespace detail {

void complain(Document& document, const Node& node, std::string_view where, const units::Problem& problem) {
    Position at = node.at;
    if (const auto* text = std::get_if<std::string>(&node.value); text != nullptr && problem.offset > 0)
        at = document.inside_text(node.at, *text, problem.offset);
    document.error(at, problem.id, std::string(where) + ": " + problem.message, problem.hint);
}

void complain_of_span(Document& document, const Node& node, std::string_view where, const Span& span) {
    document.error(node.at, "out-of-span"_id, std::string(where) + ": must be " + std::string(span.text));
}

}  // namespace detail

namespace {

/// "first", "second", up to "tenth", then "11th".
std::string ordinal(std::size_t number) {
    constexpr std::array<std::string_view, 10> kWords{"first", "second",  "third",  "fourth", "fifth",
                                                      "sixth", "seventh", "eighth", "ninth",  "tenth"};
    if (number <= kWords.size()) return std::string(kWords[number - 1]);
    const std::size_t last = number / 10 % 10 == 1 ? 0 : number % 10;
    return std::to_string(number) + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
}

/// The one known key that begins with a word cut short, of four letters or more; empty when none or several do.
std::string key_cut_short(std::string_view word, const std::vector<std::string>& known) {
    constexpr std::size_t kShortest = 4;  // letters that mean one thing
    std::string found;
    for (const std::string& key : known) {
        if (word.size() < kShortest || !key.starts_with(lower(word))) continue;
        if (!found.empty()) return {};
        found = key;
    }
    return found;
}

}  // namespace

void RowReader::expect_at_most(std::size_t count) {
    if (list_.size() > count)
        document_.error(list_[count].at, "row-length"_id,
                        path_ + ": a row has at most " + std::to_string(count) + " members");
}

Reader::Reader(Document& document) : Reader(document, document.root(), {}) {}

Reader::Reader(Document& document, const Node& table, std::string path)
    : document_(&document), table_(std::get_if<Table>(&table.value)), at_(table.at), path_(std::move(path)) {
    SEATLOAD_ASSERT(table_ != nullptr);
}

Reader::Reader(Reader&& other) noexcept
    : document_(other.document_),
      table_(other.table_),
      at_(other.at_),
      path_(std::move(other.path_)),
      member_(std::move(other.member_)),
      inside_(std::move(other.inside_)),
      asked_(std::move(other.asked_)),
      allows_all_(other.allows_all_) {
    other.allows_all_ = true;  // what is moved away reports nothing
}

Reader::~Reader() {
    if (!allows_all_) report_unknown_keys();
}

Position Reader::at(std::string_view key) const {
    const Entry* entry = find_entry(*table_, key);
    return entry != nullptr ? entry->node.at : at_;
}

std::vector<std::string> Reader::keys() const {
    std::vector<std::string> keys;
    for (const Entry& entry : *table_) keys.push_back(entry.key);
    return keys;
}

const Node* Reader::node(std::string_view key) {
    asked_.emplace_back(key);
    const Entry* entry = find_entry(*table_, key);
    return entry != nullptr ? &entry->node : nullptr;
}

std::string Reader::path(std::string_view key) const {
    return path_.empty() ? std::string(key) : path_ + '.' + std::string(key);
}

std::string Reader::called(std::string_view key) const {
    if (member_.empty()) return path(key);
    return (inside_.empty() ? "" : inside_ + '.') + std::string(key) + " of " + member_;
}

std::optional<Reader> Reader::table(std::string_view key) {
    const Node* value = node(key);
    if (value == nullptr) return std::nullopt;
    if (!std::holds_alternative<Table>(value->value)) {
        detail::complain(*document_, *value, called(key),
                         {"wrong-kind"_id, "a table is wanted, this is " + std::string(kind_of(*value)),
                          "begin it with a line [" + path(key) + "]", 0});
        return std::nullopt;
    }
    std::optional<Reader> found(std::in_place, *document_, *value, path(key));
    found->member_ = member_;
    if (!member_.empty()) found->inside_ = (inside_.empty() ? "" : inside_ + '.') + std::string(key);
    return found;
}

std::optional<Reader> Reader::need_table(std::string_view key, std::string_view example) {
    if (!has(key)) {
        asked_.emplace_back(key);
        document_->error(at_, "missing-table"_id, "the table [" + path(key) + "] is missing",
                         "add it, for example: [" + path(key) + "] and below it " + std::string(example));
    }
    return table(key);
}

std::vector<Reader> Reader::tables(std::string_view key) {
    std::vector<Reader> readers;
    const Node* value = node(key);
    if (value == nullptr) return readers;
    const List* list = std::get_if<List>(&value->value);
    const bool all_tables = list != nullptr && std::all_of(list->begin(), list->end(), [](const Node& member) {
                                return std::holds_alternative<Table>(member.value);
                            });
    if (!all_tables) {
        detail::complain(*document_, *value, called(key),
                         {"wrong-kind"_id, "tables in a list are wanted, this is " + std::string(kind_of(*value)),
                          "begin each with a line [[" + path(key) + "]]", 0});
        return readers;
    }
    for (std::size_t i = 0; i < list->size(); ++i) {
        readers.emplace_back(*document_, (*list)[i], path(key));
        readers.back().call("the " + ordinal(i + 1) + ' ' + std::string(key) +
                            (member_.empty() ? "" : " of " + member_));
    }
    return readers;
}

std::vector<RowReader> Reader::rows(std::string_view key) {
    std::vector<RowReader> readers;
    const Node* value = node(key);
    if (value == nullptr) return readers;
    const List* list = std::get_if<List>(&value->value);
    if (list == nullptr) {
        detail::complain(
            *document_, *value, called(key),
            {"wrong-kind"_id, "a list of lists is wanted, this is " + std::string(kind_of(*value)), "", 0});
        return readers;
    }
    for (const Node& member : *list) {
        if (const List* row = std::get_if<List>(&member.value))
            readers.emplace_back(*document_, *row, member.at, called(key));
        else
            detail::complain(*document_, member, called(key),
                             {"wrong-kind"_id, "a list is wanted, this is " + std::string(kind_of(member)), "", 0});
    }
    return readers;
}

void Reader::error(std::string_view key, DiagnosticId id, std::string message, std::string hint) {
    document_->error(at(key), id, called(key) + ": " + std::move(message), std::move(hint));
}

void Reader::warning(std::string_view key, DiagnosticId id, std::string message, std::string hint) {
    document_->warning(at(key), id, called(key) + ": " + std::move(message), std::move(hint));
}

void Reader::missing(std::string_view key, std::string_view example) {
    document_->error(at_, "missing-key"_id, called(key) + " is missing",
                     "add for example: " + std::string(key) + " = " + std::string(example));
}

void Reader::report_unknown_keys() {
    for (const Entry& entry : *table_) {
        if (std::find(asked_.begin(), asked_.end(), entry.key) != asked_.end()) continue;
        std::string hint = did_you_mean(entry.key, asked_);
        if (hint.empty() && !asked_.empty()) {
            std::vector<std::string> known(asked_);
            std::sort(known.begin(), known.end());
            known.erase(std::unique(known.begin(), known.end()), known.end());
            const std::string whole = key_cut_short(entry.key, known);
            hint = whole.empty() ? "known here: " + join(known, ", ") : "did you mean \"" + whole + "\"?";
        }
        document_->error(entry.at, "unknown-key"_id, "unknown key " + called(entry.key), std::move(hint));
    }
}

}  // namespace seatload::io
