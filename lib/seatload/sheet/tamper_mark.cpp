// SPDX-License-Identifier: MIT
#include <seatload/sheet/tamper_mark.hpp>

#include <seatload/core/sha256.hpp>

namespace seatload::sheet {

std::string tamper_mark(std::string_view spec_text) {
    constexpr std::size_t kGroup = 8;
    const std::string hex = sha256_hex(spec_text);
    std::string mark;
    for (std::size_t i = 0; i < hex.size(); i += kGroup) mark += (i == 0 ? "" : " ") + hex.substr(i, kGroup);
    return mark;
}

}  // namespace seatload::sheet
