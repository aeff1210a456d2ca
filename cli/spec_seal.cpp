// SPDX-License-Identifier: MIT
#include <cli/spec_seal.hpp>

#include <seatload/core/file.hpp>
#include <seatload/core/sha256.hpp>

namespace seatload::cli {
namespace {

std::string seal_start(const std::string& command) { return "# as written by seatload " + command + ", SHA-256: "; }

std::string seal_of(std::string_view text, const std::string& command) {
    return seal_start(command) + sha256_hex(text) + '\n';
}

}  // namespace

std::string sealed(const std::string& text, const std::string& command) { return text + seal_of(text, command); }

bool is_sealed(std::string_view text, const std::string& command) {
    const std::size_t at = text.rfind(seal_start(command));
    return at != std::string_view::npos && text.substr(at) == seal_of(text.substr(0, at), command);
}

Diagnostics edits_in_the_way(const std::filesystem::path& path, const std::string& kind, const std::string& command) {
    std::error_code unreadable;
    if (!std::filesystem::exists(path, unreadable)) return {};
    const auto text = read_text_file(path);
    if (!text) return text.error();
    if (is_sealed(*text, command)) return {};
    return {error_in(path.string(), "file-in-the-way"_id,
                     "this " + kind + " is not as `seatload " + command + "` wrote it, and is kept",
                     "give another folder with --output, or write over it with --overwrite")};
}

}  // namespace seatload::cli
