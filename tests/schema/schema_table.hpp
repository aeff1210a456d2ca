// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string_view>
#include <vector>

#include "shapes.hpp"

namespace seatload::test {

/// What is told of each key of a table.
using KeyWords = std::map<std::string_view, std::string_view>;

/// The schema of one TOML table, put together key by key. Keys that are not named are refused.
class SchemaTable {
  public:
    /// A key that may be left out, and one that must be there.
    template <class T>
    SchemaTable& may(std::string_view key, std::string_view words, const io::Span& span = io::kAny) {
        return put(key, Shape<T>::json(span), words);
    }
    template <class T>
    SchemaTable& must(std::string_view key, std::string_view words, const io::Span& span = io::kAny) {
        return may<T>(key, words, span).need(key);
    }
    /// A list of values.
    template <class T>
    SchemaTable& list(std::string_view key, std::string_view words, const io::Span& span = io::kAny,
                      std::size_t fewest = 0) {
        Json shape{{"type", "array"}, {"items", Shape<T>::json(span)}};
        if (fewest > 0) shape["minItems"] = fewest;
        return put(key, std::move(shape), words);
    }
    /// A list of lists: the shapes of the members of a row, of which the first `fewest` must be there.
    SchemaTable& rows(std::string_view key, const std::vector<Json>& members, std::size_t fewest,
                      std::string_view words, std::size_t fewest_rows = 0);
    /// A table inside this one, and an array of tables.
    SchemaTable& table(std::string_view key, const SchemaTable& inside, std::string_view words);
    SchemaTable& tables(std::string_view key, const SchemaTable& each, std::string_view words,
                        bool one_at_least = false);
    /// A key with a schema of its own.
    SchemaTable& put(std::string_view key, Json shape, std::string_view words);

    SchemaTable& need(std::string_view key);
    /// Exactly one of these keys must be there.
    SchemaTable& one_of(std::initializer_list<std::string_view> keys);
    /// One of these sets of keys must be there.
    SchemaTable& one_set_of(std::initializer_list<std::vector<std::string_view>> sets);
    /// What else must hold of the table as a whole.
    SchemaTable& also(Json shape);
    /// Keys besides those named are let pass when they have this shape.
    SchemaTable& others(Json shape);

    /// The keys a field table of lib/seatload/io visits; each must have its words, and no words may be left over.
    template <class Visit>
    SchemaTable& visited(const KeyWords& words, const Visit& visit);

    Json json() const;
    /// The schema as a file of its own.
    Json file(std::string_view title, std::string_view words) const;

  private:
    Json properties_ = Json::object();
    std::vector<std::string> needed_;
    Json all_of_ = Json::array();
    Json others_ = false;
};

/// Takes the place of a reader or writer in a field table and notes keys, types and spans.
class FieldLister {
  public:
    FieldLister(SchemaTable& table, const KeyWords& words) : table_(table), words_(words) {}

    template <class T>
    void field(std::string_view key, const T&, const io::Span& span, std::string_view) {
        table_.may<T>(key, words(key), span);
    }
    template <class T>
    void field(std::string_view key, const std::optional<T>&, const io::Span& span, std::string_view) {
        table_.may<T>(key, words(key), span);
    }
    template <class T>
    void field(std::string_view key, const std::vector<T>&, const io::Span& span, std::string_view) {
        table_.list<T>(key, words(key), span);
    }
    template <class T>
    void needed(std::string_view key, std::string_view, const T&, const io::Span& span, std::string_view) {
        table_.must<T>(key, words(key), span);
    }
    template <class T>
    void answer(std::string_view key, const std::optional<T>&, const io::Span& span, std::string_view) {
        table_.may<io::Answer<T>>(key, words(key), span);
    }
    void words(std::string_view key, const std::string&, std::string_view) { table_.may<std::string>(key, words(key)); }

    std::size_t told() const { return told_; }

  private:
    std::string_view words(std::string_view key);

    SchemaTable& table_;
    const KeyWords& words_;
    std::size_t told_ = 0;
};

[[noreturn]] void words_left_over(const KeyWords& words);

template <class Visit>
SchemaTable& SchemaTable::visited(const KeyWords& words, const Visit& visit) {
    FieldLister lister(*this, words);
    visit(lister);
    if (lister.told() != words.size()) words_left_over(words);
    return *this;
}

}  // namespace seatload::test
