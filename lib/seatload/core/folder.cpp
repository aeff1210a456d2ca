// SPDX-License-Identifier: MIT
#include <seatload/core/folder.hpp>

#include <dirent.h>
#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cstring>
#include <memory>

#include <seatload/core/file.hpp>
#include <seatload/core/file_aside.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/opened_file.hpp>

namespace seatload {
namespace {

constexpr int kFolderFlags = O_RDONLY | O_DIRECTORY | O_CLOEXEC;

Folder::Kind kind_of(int folder, const dirent& entry) {
    if (entry.d_type == DT_REG) return Folder::Kind::file;
    if (entry.d_type == DT_DIR) return Folder::Kind::folder;
    struct stat info {};
    if (entry.d_type != DT_UNKNOWN || ::fstatat(folder, entry.d_name, &info, AT_SYMLINK_NOFOLLOW) != 0)
        return Folder::Kind::other;
    if (S_ISREG(info.st_mode)) return Folder::Kind::file;
    return S_ISDIR(info.st_mode) ? Folder::Kind::folder : Folder::Kind::other;
}

}  // namespace

Result<Folder> Folder::open(const std::filesystem::path& path) {
    Descriptor fd(::open(path.c_str(), kFolderFlags));
    if (fd.is_open()) return Folder(path, std::move(fd));
    if (errno == ENOENT) return error_in(path.string(), "no-such-folder"_id, "no such folder");
    if (errno == ENOTDIR)
        return error_in(path.string(), "folder-expected"_id, "this is a file, and a folder is wanted");
    return error_in(path.string(), "cannot-read"_id, "cannot open the folder: " + std::string(std::strerror(errno)));
}

Diagnostic Folder::complaint(const std::string& name, DiagnosticId id, const std::string& doing) const {
    return error_in((path_ / name).string(), id, doing + ": " + std::strerror(errno));
}

Diagnostics Folder::refused(const std::string& name) const {
    if (is_plain_file_name(name)) return {};
    return {error_in(path_.string(), "bad-file-name"_id, "\"" + name + "\" is no name for a file in a library",
                     "letters a to z, digits, hyphens, underscores and dots make one, at most 100 of them")};
}

Result<Folder> Folder::inside(const std::string& name) const {
    if (Diagnostics wrong = refused(name); !wrong.empty()) return wrong;
    Descriptor fd(::openat(fd_.get(), name.c_str(), kFolderFlags | O_NOFOLLOW));
    if (fd.is_open()) return Folder(path_ / name, std::move(fd));
    if (errno == ENOENT) return error_in((path_ / name).string(), "no-such-folder"_id, "no such folder");
    // The system says the same of a link to a folder as of a file.
    if (errno == ENOTDIR || errno == ELOOP)
        return error_in((path_ / name).string(), "link-refused"_id,
                        "not a folder of this library, but a file or a link",
                        "links are not followed: put the folder itself there");
    return complaint(name, "cannot-read"_id, "cannot open the folder");
}

Result<Folder> Folder::made_inside(const std::string& name) const {
    if (Diagnostics wrong = refused(name); !wrong.empty()) return wrong;
    if (::mkdirat(fd_.get(), name.c_str(), 0777) == 0) {
        if (::fsync(fd_.get()) != 0)
            return complaint(name, "cannot-make-folder"_id, "cannot make the new folder safe on disk");
    } else if (errno != EEXIST) {
        return complaint(name, "cannot-make-folder"_id, "cannot make the folder");
    }
    return inside(name);
}

Result<std::vector<Folder::Entry>> Folder::entries() const {
    const int again = ::openat(fd_.get(), ".", kFolderFlags);
    const std::unique_ptr<DIR, int (*)(DIR*)> stream(again < 0 ? nullptr : ::fdopendir(again), ::closedir);
    if (!stream) {
        const Diagnostic d =
            error_in(path_.string(), "cannot-read"_id, "cannot read the folder: " + std::string(std::strerror(errno)));
        if (again >= 0) ::close(again);
        return d;
    }
    std::vector<Entry> found;
    errno = 0;
    while (const dirent* entry = ::readdir(stream.get()))
        if (entry->d_name[0] != '.') found.push_back({entry->d_name, kind_of(fd_.get(), *entry)});
    if (errno != 0)
        return error_in(path_.string(), "cannot-read"_id,
                        "cannot read the folder: " + std::string(std::strerror(errno)));
    std::sort(found.begin(), found.end(), [](const Entry& a, const Entry& b) { return a.name < b.name; });
    return found;
}

bool Folder::has(const std::string& name) const {
    struct stat info {};
    return is_plain_file_name(name) && ::fstatat(fd_.get(), name.c_str(), &info, AT_SYMLINK_NOFOLLOW) == 0;
}

Result<std::string> Folder::read(const std::string& name) const {
    if (Diagnostics wrong = refused(name); !wrong.empty()) return wrong;
    const std::string shown = (path_ / name).string();
    // Not to block on a pipe that stands where a file should.
    const Descriptor file(::openat(fd_.get(), name.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
    if (!file.is_open()) {
        if (errno == ENOENT) return error_in(shown, "no-such-file"_id, "no such file");
        if (errno == ELOOP)
            return error_in(shown, "link-refused"_id, "this is a link, not a file",
                            "links are not followed: put the file itself there");
        return complaint(name, "cannot-read"_id, "cannot read the file");
    }
    return read_opened(file.get(), shown, kLargestInput);
}

Diagnostics Folder::replace(const std::string& name, std::string_view bytes) const {
    if (Diagnostics wrong = refused(name); !wrong.empty()) return wrong;
    struct stat info {};
    const bool is_there = ::fstatat(fd_.get(), name.c_str(), &info, AT_SYMLINK_NOFOLLOW) == 0;
    if (is_there && !S_ISREG(info.st_mode))
        return {error_in((path_ / name).string(), "not-a-file"_id, "not a regular file; nothing written")};
    const mode_t permissions = is_there ? info.st_mode & 07777 : 0;
    if (place_file(fd_.get(), name, bytes, permissions) != Placed::done)
        return {complaint(name, "cannot-write"_id, "cannot write the file")};
    if (::fsync(fd_.get()) != 0) return {complaint(name, "cannot-write"_id, "cannot make the new name safe on disk")};
    return {};
}

}  // namespace seatload
