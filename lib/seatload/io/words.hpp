// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>

#include <seatload/core/assert.hpp>
#include <seatload/io/form.hpp>

namespace seatload::io {

/// A word of a closed list and what it stands for.
template <class E>
struct Word {
    std::string_view text;
    E value;
};

/// The place of a word in a closed list (case is ignored), or a problem that lists the words and the nearest one.
units::Parsed<std::size_t> find_word(const Node& node, std::span<const std::string> words);

/// The form of a value out of a closed list: derive Form<E> from it and give it `static constexpr Word<E> kWords[]`.
template <class E, class Derived>
struct WordForm {
    static units::Parsed<E> read(const Node& node) {
        std::vector<std::string> texts;
        for (const Word<E>& word : Derived::kWords) texts.emplace_back(word.text);
        units::Parsed<std::size_t> index = find_word(node, texts);
        if (!index.value) return {std::nullopt, std::move(index.problem)};
        return {std::data(Derived::kWords)[*index.value].value, {}};
    }
    static std::string write(const E& value) { return quoted_text(text(value)); }
    static std::vector<double> numbers(const E&) { return {}; }

    /// The word of a value.
    static std::string_view text(const E& value) {
        for (const Word<E>& word : Derived::kWords)
            if (word.value == value) return word.text;
        throw InternalError("a value without a word");
    }
};

}  // namespace seatload::io
