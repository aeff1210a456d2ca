// SPDX-License-Identifier: MIT
#include <seatload/core/file_aside.hpp>

#include <dirent.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <memory>
#include <vector>

namespace seatload {
namespace {

constexpr std::string_view kPrefix = ".aside.";
constexpr int kMostNames = 9999;  // left over where the file system knows no locks, too

std::string numbered(int number) { return std::string(kPrefix) + std::to_string(number); }

bool is_numbered(std::string_view name) {
    if (name.substr(0, kPrefix.size()) != kPrefix) return false;
    const std::string_view number = name.substr(kPrefix.size());
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    return !number.empty() && number.size() <= 4 && std::all_of(number.begin(), number.end(), is_digit);
}

/// Whether the name leads to this very file, and is no link.
bool leads_to(int folder, const std::string& name, int file) {
    struct stat named {};
    struct stat open {};
    return ::fstatat(folder, name.c_str(), &named, AT_SYMLINK_NOFOLLOW) == 0 && ::fstat(file, &open) == 0 &&
           named.st_dev == open.st_dev && named.st_ino == open.st_ino;
}

bool is_locked_by_us(int file) { return ::flock(file, LOCK_EX | LOCK_NB) == 0; }

std::vector<std::string> names_aside(int folder) {
    const int again = ::openat(folder, ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const std::unique_ptr<DIR, int (*)(DIR*)> stream(again < 0 ? nullptr : ::fdopendir(again), ::closedir);
    std::vector<std::string> names;
    if (!stream && again >= 0) ::close(again);
    if (!stream) return names;
    while (const dirent* entry = ::readdir(stream.get()))
        if (is_numbered(entry->d_name)) names.emplace_back(entry->d_name);
    return names;
}

/// Removes files aside that nobody holds locked, as their writers are no more.  Who has just made one and has not
/// locked it yet finds it gone and makes another.
void sweep(int folder) {
    for (const std::string& name : names_aside(folder)) {
        struct stat info {};
        if (::fstatat(folder, name.c_str(), &info, AT_SYMLINK_NOFOLLOW) != 0 || !S_ISREG(info.st_mode)) continue;
        const Descriptor left(::openat(folder, name.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
        if (left.is_open() && is_locked_by_us(left.get()) && leads_to(folder, name, left.get()))
            ::unlinkat(folder, name.c_str(), 0);
    }
}

/// A new file under the first name that is free; none, with errno set, when the folder takes none.
Descriptor made_with_name(int folder, std::string& name) {
    for (int number = 1; number <= kMostNames; ++number) {
        name = numbered(number);
        Descriptor file(::openat(folder, name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666));
        if (!file.is_open() && errno != EEXIST) break;
        if (!file.is_open()) continue;
        const bool knows_locks = is_locked_by_us(file.get()) || errno != EWOULDBLOCK;
        if (knows_locks && leads_to(folder, name, file.get())) return file;
    }
    name.clear();
    return Descriptor(-1);
}

/// The path by which an open file can be linked to without the rights of an administrator (open(2), O_TMPFILE).
std::string path_of(int file) { return "/proc/self/fd/" + std::to_string(file); }

}  // namespace

FileAside::FileAside(int folder, Manner manner) : folder_(folder) {
    sweep(folder);
    if (manner == Manner::named) {
        file_ = made_with_name(folder, name_);
        return;
    }
    file_ = Descriptor(::openat(folder, ".", O_TMPFILE | O_WRONLY | O_CLOEXEC, 0666));
    // Locked before it gets a name, it is nobody's leavings at any time.
    if (file_.is_open()) (void)::flock(file_.get(), LOCK_EX | LOCK_NB);
}

FileAside::~FileAside() {
    const int told = errno;
    if (!name_.empty()) ::unlinkat(folder_, name_.c_str(), 0);
    errno = told;
}

bool FileAside::write(std::string_view bytes, mode_t permissions) {
    if (permissions != 0 && ::fchmod(file_.get(), permissions) != 0) return false;
    return write_all(file_.get(), bytes) && ::fsync(file_.get()) == 0;
}

bool FileAside::take_name() {
    for (int number = 1; number <= kMostNames; ++number) {
        name_ = numbered(number);
        if (::linkat(AT_FDCWD, path_of(file_.get()).c_str(), folder_, name_.c_str(), AT_SYMLINK_FOLLOW) == 0)
            return true;
        if (errno != EEXIST) break;
    }
    name_.clear();
    return false;
}

bool FileAside::give_name(const std::string& name) {
    if (name_.empty() &&
        ::linkat(AT_FDCWD, path_of(file_.get()).c_str(), folder_, name.c_str(), AT_SYMLINK_FOLLOW) == 0)
        return true;
    if (name_.empty() && (errno != EEXIST || !take_name())) return false;
    if (::renameat(folder_, name_.c_str(), folder_, name.c_str()) != 0) return false;
    name_.clear();
    return true;
}

Placed place_file(int folder, const std::string& name, std::string_view bytes, mode_t permissions) {
    {
        FileAside file(folder, FileAside::Manner::nameless);
        if (file.is_open() && file.write(bytes, permissions) && file.give_name(name)) return Placed::done;
    }
    FileAside file(folder, FileAside::Manner::named);
    if (!file.is_open()) return Placed::not_begun;
    return file.write(bytes, permissions) && file.give_name(name) ? Placed::done : Placed::not_written;
}

}  // namespace seatload
