// SPDX-License-Identifier: MIT
#include <cli/text_wrap.hpp>

#include <seatload/core/text.hpp>

namespace seatload::cli {

std::string padded(std::string text, std::size_t width) {
    const std::size_t length = length_in_code_points(text);
    if (length < width) text.append(width - length, ' ');
    return text;
}

}  // namespace seatload::cli
