// SPDX-License-Identifier: MIT
#include <seatload/io/words.hpp>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

std::string choices(std::span<const std::string> words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "\"" : ", \"") + word + '"';
    return text;
}

}  // namespace

units::Parsed<std::size_t> find_word(const Node& node, std::span<const std::string> words) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, wrong_kind(node, "one of a few words", '"' + words.front() + '"')};
    for (std::size_t i = 0; i < words.size(); ++i)
        if (lower(words[i]) == lower(*text)) return {i, {}};
    std::string hint = did_you_mean(*text, words);
    if (!hint.empty()) hint += ' ';
    return {std::nullopt,
            {"not-a-choice"_id, '"' + *text + "\" is not one of the words known here",
             hint + "one of: " + choices(words), 0}};
}

}  // namespace seatload::io
