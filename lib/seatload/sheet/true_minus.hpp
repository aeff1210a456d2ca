// SPDX-License-Identifier: MIT
#pragma once

#include <cctype>
#include <string>
#include <string_view>

namespace seatload::sheet {

/// The text with a true minus sign before each negative number, where a hyphen stood.
inline std::string with_true_minus(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool begins = i == 0 || text[i - 1] == ' ' || text[i - 1] == '(' || text[i - 1] == '\n';
        const bool is_number = i + 1 < text.size() && std::isdigit(static_cast<unsigned char>(text[i + 1])) != 0;
        if (text[i] == '-' && begins && is_number)
            out += "−";
        else
            out += text[i];
    }
    return out;
}

}  // namespace seatload::sheet
