// SPDX-License-Identifier: MIT
#include <seatload/io/unquoted.hpp>

#include <algorithm>
#include <array>
#include <charconv>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool is_ascii(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

bool is_key(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
        return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '-' || c == '.' ||
               c == ' ';
    });
}

bool is_decimal(std::string_view text) {
    std::string plain(text);
    std::erase(plain, '_');
    double value = 0.0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    return error != std::errc::invalid_argument && end == plain.data() + plain.size();
}

/// Dates, times of day and numbers with a base, told by their beginning; the TOML library judges the rest.
bool starts_like_time_or_base(std::string_view text) {
    if (text.size() >= 3 && is_digit(text[0]) && is_digit(text[1]) && text[2] == ':') return true;
    if (text.size() >= 5 && std::all_of(text.begin(), text.begin() + 4, is_digit) && text[4] == '-') return true;
    return text.starts_with("0x") || text.starts_with("0o") || text.starts_with("0b");
}

bool is_bare_toml(std::string_view value) {
    if (value == "true" || value == "false" || starts_like_time_or_base(value)) return true;
    if (value.starts_with('+') || value.starts_with('-')) value.remove_prefix(1);
    return is_decimal(value);
}

bool is_typographic(std::string_view letter) { return with_plain_quotes(letter) != letter; }

/// The text without typographic quotes at its ends: one of the two was forgotten.
std::string without_typographic_ends(std::string_view text) {
    std::string out;
    const std::vector<std::string> letters = code_points(text);
    for (std::size_t i = 0; i < letters.size(); ++i)
        if ((i != 0 && i + 1 != letters.size()) || !is_typographic(letters[i])) out += letters[i];
    return out;
}

/// The value in quotes, a decimal comma turned into a point.
std::string in_quotes(std::string_view value) {
    std::string text = without_typographic_ends(value);
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == ',' && is_digit(text[i - 1]) && is_digit(text[i + 1])) text[i] = '.';
    return '"' + text + '"';
}

/// The list with quotes round every member, or nothing when all members are sound.
std::optional<std::string> list_in_quotes(std::string_view list) {
    std::string mended;
    bool sound = true;
    for (const std::string_view piece : split(list.substr(1, list.size() - 2), ',')) {
        const std::string_view member = trim(piece);
        if (member.empty()) continue;
        sound = sound && is_bare_toml(member);
        mended += (mended.empty() ? "" : ", ") + in_quotes(member);
    }
    if (sound) return std::nullopt;
    return '[' + mended + ']';
}

/// The value with plain quotes in place of typographic ones; nothing when it has none, or they stand inside plain ones.
std::optional<std::string> with_quotes_mended(std::string_view value) {
    const std::string plain = with_plain_quotes(value);
    if (plain == value || plain.size() < 2) return std::nullopt;
    if (plain.front() == '[' && plain.back() == ']') {
        std::string list;
        for (const std::string_view piece : split(value.substr(1, value.size() - 2), ',')) {
            const auto member = with_quotes_mended(trim(piece));
            if (!member) return std::nullopt;
            list += (list.empty() ? "" : ", ") + *member;
        }
        return '[' + list + ']';
    }
    const bool is_whole =
        plain.front() == '"' && plain.back() == '"' &&
        std::string_view(plain).substr(1, plain.size() - 2).find_first_of("\"\\") == std::string::npos;
    return is_whole ? std::optional(plain) : std::nullopt;
}

std::optional<std::string> mended_value(std::string_view value) {
    if (value.empty() || value.find_first_of("\"'{}\\") != std::string_view::npos) return std::nullopt;
    if (value.front() == '[' && value.back() == ']' && value.rfind('[') == 0) return list_in_quotes(value);
    if (value.find_first_of("[]=") != std::string_view::npos || is_bare_toml(value)) return std::nullopt;
    return in_quotes(value);
}

}  // namespace

std::string with_plain_quotes(std::string_view text) {
    constexpr std::array<std::string_view, 10> kTypographic{"“", "”", "„", "‟", "«", "»", "‘", "’", "‚", "‛"};
    if (is_ascii(text)) return std::string(text);
    std::string plain;
    for (const std::string& letter : code_points(text))
        plain += std::find(kTypographic.begin(), kTypographic.end(), letter) != kTypographic.end() ? "\"" : letter;
    return plain;
}

std::optional<Unquoted> find_unquoted(std::string_view line) {
    const std::size_t equals = line.find('=');
    if (equals == std::string_view::npos || !is_key(trim(line.substr(0, equals)))) return std::nullopt;
    const std::string_view value = trim(line.substr(equals + 1, line.find('#', equals) - equals - 1));
    const auto with_quotes = with_quotes_mended(value);
    const auto mended = with_quotes ? with_quotes : mended_value(value);
    if (!mended) return std::nullopt;
    Unquoted found;
    found.offset = static_cast<std::size_t>(value.data() - line.data());
    found.value = value;
    found.quoted = *mended;
    found.assignment = std::string(trim(line.substr(0, equals))) + " = " + *mended;
    found.is_curly = with_quotes.has_value() || (without_typographic_ends(value) != value);
    found.has_digit = std::any_of(value.begin(), value.end(), is_digit);
    return found;
}

}  // namespace seatload::io
