// SPDX-License-Identifier: MIT
#include <cli/text_wrap.hpp>

#include <algorithm>
#include <span>
#include <vector>

#include <seatload/core/text.hpp>

namespace seatload::cli {

std::string padded(std::string text, std::size_t width) {
    const std::size_t length = length_in_code_points(text);
    if (length < width) text.append(width - length, ' ');
    return text;
}

std::string cut_name(const std::string& name, int width) {
    constexpr std::size_t kFewest = 40, kEnd = 20;
    const std::size_t most = 2 * std::max(static_cast<std::size_t>(std::max(width, 0)), kFewest);
    const std::vector<std::string> letters = code_points(name);
    if (letters.size() <= most) return name;
    const std::span<const std::string> all(letters);
    return join(all.first(most - kEnd), "") + "..." + join(all.last(kEnd), "");
}

}  // namespace seatload::cli
