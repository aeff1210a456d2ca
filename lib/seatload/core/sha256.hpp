// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace seatload {

/// The SHA-256 digest of the bytes (FIPS 180-4) as 64 lower-case hexadecimal digits.
std::string sha256_hex(std::string_view bytes);

}  // namespace seatload
