// SPDX-License-Identifier: MIT
#include <cli/spec_seal.hpp>

#include <seatload/core/file.hpp>
#include <seatload/core/sha256.hpp>

namespace seatload::cli {
namespace {

constexpr std::string_view kSeal = "# as written by seatload size, SHA-256: ";

std::string seal_of(std::string_view spec) { return std::string(kSeal) + sha256_hex(spec) + '\n'; }

}  // namespace

std::string sealed(const std::string& spec) { return spec + seal_of(spec); }

bool is_sealed(std::string_view text) {
    const std::size_t at = text.rfind(kSeal);
    return at != std::string_view::npos && text.substr(at) == seal_of(text.substr(0, at));
}

Diagnostics edits_in_the_way(const std::filesystem::path& path) {
    std::error_code unreadable;
    if (!std::filesystem::exists(path, unreadable)) return {};
    const auto text = read_text_file(path);
    if (!text) return text.error();
    if (is_sealed(*text)) return {};
    return {error_in(path.string(), "this spec is not as `seatload size` wrote it, and is kept",
                     "give another folder with --output, or write over it with --overwrite")};
}

}  // namespace seatload::cli
