// SPDX-License-Identifier: MIT
#include <seatload/core/sha256.hpp>

#include <openssl/evp.h>

#include <array>

#include <seatload/core/assert.hpp>

namespace seatload {

std::string sha256_hex(std::string_view bytes) {
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned length = 0;
    const int done = EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr);
    SEATLOAD_ASSERT(done == 1 && length == 32);
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string hex;
    for (unsigned i = 0; i < length; ++i) {
        hex += kDigits[digest[i] >> 4];
        hex += kDigits[digest[i] & 15];
    }
    return hex;
}

}  // namespace seatload
