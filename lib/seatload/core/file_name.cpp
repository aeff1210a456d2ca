// SPDX-License-Identifier: MIT
#include <seatload/core/file_name.hpp>

#include <algorithm>

namespace seatload {
namespace {

constexpr std::size_t kLongestName = 100;

bool is_small(char c) { return c >= 'a' && c <= 'z'; }
bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_in_the_middle(char c) {
    return is_small(c) || is_capital(c) || is_digit(c) || c == '.' || c == '-' || c == '_' || c == ' ';
}
bool is_at_an_end(char c) { return is_in_the_middle(c) && c != '.' && c != ' '; }

}  // namespace

std::string file_stem(std::string_view words) {
    std::string stem;
    for (const char c : words) {
        const bool keep = is_small(c) || is_digit(c);
        if (keep) stem += c;
        if (is_capital(c)) stem += static_cast<char>(c - 'A' + 'a');
        if (!keep && !is_capital(c) && !stem.empty() && stem.back() != '-') stem += '-';
    }
    while (!stem.empty() && stem.back() == '-') stem.pop_back();
    return stem.empty() ? "spring" : stem;
}

bool is_plain_file_name(std::string_view name) {
    return !name.empty() && name.size() <= kLongestName && std::all_of(name.begin(), name.end(), is_in_the_middle) &&
           is_at_an_end(name.front()) && is_at_an_end(name.back());
}

}  // namespace seatload
