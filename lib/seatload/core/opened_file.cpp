// SPDX-License-Identifier: MIT
#include <seatload/core/opened_file.hpp>

#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include <seatload/core/diagnostic.hpp>

namespace seatload {
namespace {

constexpr std::size_t kBytesOfMebibyte = 1024 * 1024;

/// Reads until the end of the file or of the room; how many bytes, or -1 with errno set.
ssize_t fill(int descriptor, std::string& room) {
    std::size_t have = 0;
    while (have < room.size()) {
        const ssize_t n = ::read(descriptor, room.data() + have, room.size() - have);
        if (n < 0 && errno == EINTR) continue;
        if (n < 0) return -1;
        if (n == 0) break;
        have += static_cast<std::size_t>(n);
    }
    return static_cast<ssize_t>(have);
}

bool is_as_it_was(const struct stat& before, const struct stat& now) {
    return before.st_size == now.st_size && before.st_mtim.tv_sec == now.st_mtim.tv_sec &&
           before.st_mtim.tv_nsec == now.st_mtim.tv_nsec;
}

}  // namespace

Result<std::string> read_opened(int descriptor, const std::filesystem::path& shown, std::size_t largest) {
    const std::string file = shown.string();
    const auto unreadable = [&](const std::string& doing) {
        return error_in(file, "cannot-read"_id, doing + ": " + std::strerror(errno));
    };
    struct stat before {};
    if (::fstat(descriptor, &before) != 0) return unreadable("cannot look at the file");
    if (S_ISDIR(before.st_mode)) return error_in(file, "folder-given"_id, "this is a folder, not a file");
    if (!S_ISREG(before.st_mode)) return error_in(file, "not-a-file"_id, "not a regular file");
    const auto size = static_cast<std::size_t>(before.st_size);
    if (size > largest)
        return error_in(file, "too-large"_id,
                        "the file is larger than " + std::to_string(largest / kBytesOfMebibyte) +
                            " MiB, far more than a spring file needs",
                        "is this the right file?");
    std::string bytes(size + 1, '\0');  // one more shows whether it has grown
    const ssize_t count = fill(descriptor, bytes);
    struct stat now {};
    if (count < 0 || ::fstat(descriptor, &now) != 0) return unreadable("cannot read the file");
    if (static_cast<std::size_t>(count) != size || !is_as_it_was(before, now))
        return error_in(file, "changed-while-read"_id, "the file changed while it was read",
                        "run again when whatever writes it has ended");
    bytes.resize(size);
    return bytes;
}

}  // namespace seatload
