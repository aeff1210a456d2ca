// SPDX-License-Identifier: MIT
#include <seatload/core/file.hpp>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include <seatload/core/descriptor.hpp>
#include <seatload/core/opened_file.hpp>

namespace seatload {
namespace {

namespace fs = std::filesystem;

Diagnostic complaint(const fs::path& path, DiagnosticId id, std::string message, std::string hint = {}) {
    Diagnostic d;
    d.place.file = path.string();
    d.id = id;
    d.message = std::move(message);
    d.hint = std::move(hint);
    return d;
}

Diagnostic system_complaint(const fs::path& path, DiagnosticId id, const std::string& doing) {
    return complaint(path, id, doing + ": " + std::strerror(errno));
}

mode_t permissions_for(const fs::path& target) {
    struct stat info {};
    if (::stat(target.c_str(), &info) == 0) return info.st_mode & 07777;
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666 & ~mask;
}

bool write_aside(Descriptor& file, mode_t permissions, std::string_view bytes) {
    return ::fchmod(file.get(), permissions) == 0 && write_all(file.get(), bytes) && ::fsync(file.get()) == 0 &&
           file.close();
}

}  // namespace

Result<std::string> read_text_file(const fs::path& path, std::size_t largest) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (status.type() == fs::file_type::not_found) return complaint(path, "no-such-file"_id, "no such file");
    if (error) return complaint(path, "cannot-read"_id, "cannot look at the file: " + error.message());
    if (fs::is_directory(status)) return complaint(path, "folder-given"_id, "this is a folder, not a file");
    if (!fs::is_regular_file(status)) return complaint(path, "not-a-file"_id, "not a regular file");
    // Not to block on a pipe that has taken the file's place by now.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));
    if (!file.is_open()) return system_complaint(path, "cannot-read"_id, "cannot read the file");
    return read_opened(file.get(), path, largest);
}

Diagnostics replace_file(const fs::path& path, std::string_view bytes) {
    std::error_code error;
    const bool is_link = fs::is_symlink(fs::symlink_status(path, error));
    error.clear();  // a file that is not there yet is no failure
    const fs::path target = is_link ? fs::canonical(path, error) : path;
    if (error) return {complaint(path, "cannot-write"_id, "cannot follow the link: " + error.message())};
    const fs::file_status status = fs::status(target, error);
    if (fs::exists(status) && !fs::is_regular_file(status))
        return {complaint(path, "not-a-file"_id, "not a regular file; nothing written")};
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    std::string aside = (folder / ".aside.XXXXXX").string();
    Descriptor file(::mkostemp(aside.data(), O_CLOEXEC));
    if (file.get() < 0)
        return {system_complaint(path, "cannot-write"_id, "cannot write in the folder " + folder.string())};
    if (!write_aside(file, permissions_for(target), bytes) || ::rename(aside.c_str(), target.c_str()) != 0) {
        Diagnostic d = system_complaint(path, "cannot-write"_id, "cannot write the file");
        ::unlink(aside.c_str());
        return {d};
    }
    Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (directory.get() < 0 || ::fsync(directory.get()) != 0)
        return {system_complaint(path, "cannot-write"_id, "cannot make the new name safe on disk")};
    return {};
}

Diagnostics make_folder(const fs::path& path) {
    std::error_code error;
    if (fs::exists(path, error) && !fs::is_directory(path, error))
        return {complaint(path, "folder-expected"_id, "a file stands where the folder should be")};
    fs::create_directories(path, error);
    if (error) return {complaint(path, "cannot-make-folder"_id, "cannot make the folder: " + error.message())};
    return {};
}

}  // namespace seatload
