// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

namespace seatload::sheet {

/// The characters of a text known to be UTF-8.
inline std::vector<char32_t> characters(std::string_view utf8) {
    std::vector<char32_t> out;
    for (const char byte : utf8) {
        const auto b = static_cast<unsigned char>(byte);
        if ((b & 0xC0u) == 0x80u && !out.empty()) {
            out.back() = out.back() << 6 | (b & 0x3Fu);
        } else {
            out.push_back(b < 0x80 ? b : b < 0xE0 ? b & 0x1Fu : b < 0xF0 ? b & 0x0Fu : b & 0x07u);
        }
    }
    return out;
}

}  // namespace seatload::sheet
