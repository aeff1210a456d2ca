// SPDX-License-Identifier: MIT
#include "line_diff.hpp"

#include <algorithm>

namespace seatload::test {
namespace {

constexpr std::size_t kAround = 2;

struct Edit {
    char mark;  // ' ' same, '-' only expected, '+' only actual
    std::string line;
};

/// The edits along a longest common subsequence, found by the usual table.
std::vector<Edit> edits(const Lines& a, const Lines& b) {
    std::vector<std::vector<std::size_t>> common(a.size() + 1, std::vector<std::size_t>(b.size() + 1, 0));
    for (std::size_t i = a.size(); i-- > 0;)
        for (std::size_t j = b.size(); j-- > 0;)
            common[i][j] = a[i] == b[j] ? common[i + 1][j + 1] + 1 : std::max(common[i + 1][j], common[i][j + 1]);
    std::vector<Edit> all;
    std::size_t i = 0, j = 0;
    while (i < a.size() || j < b.size()) {
        if (i < a.size() && j < b.size() && a[i] == b[j]) {
            all.push_back({' ', a[i++]});
            ++j;
        } else if (j == b.size() || (i < a.size() && common[i + 1][j] >= common[i][j + 1])) {
            all.push_back({'-', a[i++]});
        } else {
            all.push_back({'+', b[j++]});
        }
    }
    return all;
}

bool is_near_change(const std::vector<Edit>& all, std::size_t at) {
    const std::size_t from = at > kAround ? at - kAround : 0;
    const std::size_t to = std::min(all.size(), at + kAround + 1);
    return std::any_of(all.begin() + static_cast<std::ptrdiff_t>(from), all.begin() + static_cast<std::ptrdiff_t>(to),
                       [](const Edit& edit) { return edit.mark != ' '; });
}

}  // namespace

std::string line_diff(const Lines& expected, const Lines& actual) {
    const std::vector<Edit> all = edits(expected, actual);
    std::string text;
    bool was_shown = true;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool is_shown = is_near_change(all, i);
        if (is_shown && !was_shown) text += "...\n";
        if (is_shown) text += std::string(1, all[i].mark) + ' ' + all[i].line + '\n';
        was_shown = is_shown;
    }
    return text;
}

}  // namespace seatload::test
