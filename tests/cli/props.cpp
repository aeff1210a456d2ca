// SPDX-License-Identifier: MIT
#include "props.hpp"

#include <unistd.h>

#include <support/scratch_folder.hpp>

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

/// The text with each \xHH as the byte it stands for.
std::string with_bytes(const std::string& text) {
    std::string bytes;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool is_byte = text.compare(i, 2, "\\x") == 0 && i + 3 < text.size();
        bytes += is_byte ? static_cast<char>(std::stoi(text.substr(i + 2, 2), nullptr, 16)) : text[i];
        if (is_byte) i += 3;
    }
    return bytes;
}

std::string repeated(std::size_t count, const std::string& text) {
    std::string all;
    all.reserve(count * text.size());
    for (std::size_t i = 0; i < count; ++i) all += text;
    return all;
}

void make_file(const Section& section, const Lines& words, const fs::path& path) {
    const std::string kind = words.size() > 2 ? words[2] : "";
    if (kind.empty())
        write_bytes(path, text_of(section.body));
    else if (kind == "bytes")
        write_bytes(path, with_bytes(text_of(section.body)));
    else if (kind == "repeat" && words.size() == 5)
        write_bytes(path, repeated(std::stoul(words[3]), words[4]));
    else
        throw std::runtime_error("no such kind of file: " + section.head);
}

void make_folder(bool is_locked, const fs::path& path) {
    fs::create_directories(path);
    if (!is_locked) return;
    if (::geteuid() == 0) throw NotHere("a locked folder stops no superuser");
    fs::permissions(path, fs::perms::owner_read | fs::perms::owner_exec);
}

}  // namespace

bool set_up(const Section& section, const fs::path& folder, const fs::path& repository) {
    const Lines words = words_of(section.head);
    if (words.size() < 2) return false;
    if (words[0] == "file") {
        make_file(section, words, folder / words[1]);
    } else if (words[0] == "folder") {
        make_folder(words.size() > 2 && words[2] == "locked", folder / words[1]);
    } else if (words[0] == "copy") {
        fs::copy_file(repository / words[1], folder / fs::path(words[1]).filename());
    } else {
        return false;
    }
    return true;
}

}  // namespace seatload::test
