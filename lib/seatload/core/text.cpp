// SPDX-License-Identifier: MIT
#include <seatload/core/text.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace seatload {
namespace {

/// Length of the well-formed sequence at `at`, or 0 (RFC 3629, section 4: no overlong forms, no surrogates).
std::size_t sequence_length(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const auto tail = [&](std::size_t i) { return i < text.size() && byte(i) >= 0x80 && byte(i) <= 0xBF; };
    const unsigned char lead = byte(at);
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return tail(at + 1) ? 2 : 0;
    if (!tail(at + 1)) return 0;
    const unsigned char second = byte(at + 1);
    if (lead >= 0xE0 && lead <= 0xEF) {
        if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F)) return 0;
        return tail(at + 2) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        if ((lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F)) return 0;
        return tail(at + 2) && tail(at + 3) ? 4 : 0;
    }
    return 0;
}

}  // namespace

std::string_view trim(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> pieces;
    for (std::size_t from = 0;;) {
        const std::size_t to = text.find(separator, from);
        pieces.push_back(text.substr(from, to == std::string_view::npos ? to : to - from));
        if (to == std::string_view::npos) return pieces;
        from = to + 1;
    }
}

std::string join(std::span<const std::string> pieces, std::string_view separator) {
    std::string text;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i != 0) text += separator;
        text += pieces[i];
    }
    return text;
}

std::optional<std::size_t> first_invalid_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = sequence_length(text, at);
        if (length == 0) return at;
        at += length;
    }
    return std::nullopt;
}

std::vector<std::string> code_points(std::string_view text) {
    std::vector<std::string> letters;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = std::max<std::size_t>(1, sequence_length(text, at));
        letters.emplace_back(text.substr(at, length));
        at += length;
    }
    return letters;
}

std::size_t length_in_code_points(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t at = 0; at < text.size(); ++count) at += std::max<std::size_t>(1, sequence_length(text, at));
    return count;
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
    // three rows of the table of prefixes: a swap looks two rows back
    std::vector<std::size_t> before(b.size() + 1);
    std::vector<std::size_t> above(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        before.swap(above);
        above.swap(row);
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] != b[j - 1] ? 1u : 0u)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
    }
    return row.back();
}

std::optional<std::string> nearest(std::string_view word, std::span<const std::string> candidates) {
    constexpr std::size_t kLongestWord = 64;  // a longer word is no slip of the finger
    if (word.size() > kLongestWord) return std::nullopt;
    std::size_t best = 3;
    std::optional<std::string> found;
    for (const std::string& candidate : candidates) {
        const std::size_t distance = edit_distance(lower(word), lower(candidate));
        if (distance < best && 2 * distance < std::max(word.size(), candidate.size())) {
            best = distance;
            found = candidate;
        }
    }
    return found;
}

std::string did_you_mean(std::string_view word, std::span<const std::string> candidates) {
    const auto found = nearest(word, candidates);
    return found ? "did you mean \"" + *found + "\"?" : std::string{};
}

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

std::string shortest(double value) {
    std::array<char, 40> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    return {buffer.data(), end};
}

std::string fixed(double value, int decimals) {
    std::array<char, 400> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals).ptr;
    std::string text(buffer.data(), end);
    if (text.front() == '-' && text.find_first_of("123456789in") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string significant(double value, int digits) {
    if (value == 0.0 || !std::isfinite(value)) return fixed(value, 0);
    // Rounded in scientific form first: the digits before the point count as well.
    std::array<char, 40> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::scientific,
                                   std::clamp(digits - 1, 0, 17))
                         .ptr;
    double rounded = value;
    std::from_chars(buffer.data(), end, rounded);
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(rounded))));
    std::string text = fixed(rounded, std::clamp(digits - 1 - magnitude, 0, 12));
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string grouped(unsigned long long count) {
    std::string text = std::to_string(count);
    for (std::size_t at = text.size(); at > 3;) {
        at -= 3;
        text.insert(at, " ");
    }
    return text;
}

}  // namespace seatload
