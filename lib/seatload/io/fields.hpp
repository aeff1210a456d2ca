// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/io/reader.hpp>
#include <seatload/io/toml_writer.hpp>

namespace seatload::io {

// A field table is a function template `visit_x(Fields&, X&)` that names every key of a table with its member, once for
// reading (FieldReader, X) and writing (FieldWriter, const X).

/// Fills members from a table.
class FieldReader {
  public:
    explicit FieldReader(Reader& reader) : reader_(reader) {}

    /// A key that may be left out; the member then keeps its value.
    template <class T>
    void field(std::string_view key, T& member, const Span& span, std::string_view) {
        reader_.set(key, member, span);
    }
    template <class T>
    void field(std::string_view key, std::vector<T>& members, const Span& span, std::string_view) {
        if (reader_.has(key))
            members = reader_.list<T>(key, span);
        else
            reader_.allow(key);  // known, so that it is suggested for a misspelt one
    }
    /// A key that must be there; `example` shows how it is written.
    template <class T>
    void needed(std::string_view key, std::string_view example, T& member, const Span& span, std::string_view) {
        member = reader_.need<T>(key, example, span);
    }

  private:
    Reader& reader_;
};

/// Writes members as keys of a table; members that are absent or empty are left out.
class FieldWriter {
  public:
    explicit FieldWriter(TomlWriter& writer) : writer_(writer) {}

    template <class T>
    void field(std::string_view key, const T& member, const Span&, std::string_view comment) {
        if constexpr (requires { Form<T>::is_empty(member); }) {
            if (Form<T>::is_empty(member)) return;
        }
        writer_.entry(key, Form<T>::write(member), comment);
    }
    void field(std::string_view key, const std::string& text, const Span&, std::string_view comment) {
        if (!text.empty()) writer_.entry(key, Form<std::string>::write(text), comment);
    }
    template <class T>
    void field(std::string_view key, const std::optional<T>& member, const Span& span, std::string_view comment) {
        if (member) field(key, *member, span, comment);
    }
    template <class T>
    void field(std::string_view key, const std::vector<T>& members, const Span&, std::string_view comment) {
        if (members.empty()) return;
        std::string list;
        for (const T& member : members) list += (list.empty() ? "" : ", ") + Form<T>::write(member);
        writer_.entry(key, '[' + list + ']', comment);
    }
    template <class T>
    void needed(std::string_view key, std::string_view, const T& member, const Span&, std::string_view comment) {
        writer_.entry(key, Form<T>::write(member), comment);
    }

  private:
    TomlWriter& writer_;
};

}  // namespace seatload::io
