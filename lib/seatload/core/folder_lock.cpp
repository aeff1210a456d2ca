// SPDX-License-Identifier: MIT
#include <seatload/core/folder_lock.hpp>

#include <fcntl.h>
#include <sys/file.h>

#include <chrono>
#include <cstring>
#include <thread>

namespace seatload {
namespace {

constexpr const char* kLock = ".lock";
constexpr std::chrono::milliseconds kPause(5);

/// Whether the lock was got; false with errno set.
bool lock_within(int fd, int operation, double longest_wait) {
    const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(longest_wait);
    while (::flock(fd, operation | LOCK_NB) != 0) {
        if (errno != EWOULDBLOCK && errno != EINTR) return false;
        if (std::chrono::steady_clock::now() >= end) {
            errno = EWOULDBLOCK;
            return false;
        }
        std::this_thread::sleep_for(kPause);
    }
    return true;
}

}  // namespace

Result<FolderLock> FolderLock::take(const Folder& folder, Kind kind, double longest_wait) {
    const bool writes = kind == Kind::exclusive;
    const int flags = writes ? O_RDWR | O_CREAT : O_RDONLY;
    Descriptor fd(::openat(folder.descriptor(), kLock, flags | O_NOFOLLOW | O_CLOEXEC, 0666));
    const std::string path = folder.path().string();
    if (!fd.is_open()) {
        if (!writes && (errno == ENOENT || errno == EACCES)) return FolderLock(Descriptor(-1));
        return error_in(path, "cannot-lock"_id, "cannot lock this library: " + std::string(std::strerror(errno)));
    }
    if (lock_within(fd.get(), writes ? LOCK_EX : LOCK_SH, longest_wait)) return FolderLock(std::move(fd));
    if (errno != EWOULDBLOCK)
        return error_in(path, "cannot-lock"_id, "cannot lock this library: " + std::string(std::strerror(errno)),
                        "some network file systems know no locks: keep the library on a disk of this machine");
    return error_in(path, "library-in-use"_id, "another program has been at work in this library for too long",
                    "wait until it has ended, or end it; the lock goes with it");
}

}  // namespace seatload
