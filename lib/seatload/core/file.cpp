// SPDX-License-Identifier: MIT
#include <seatload/core/file.hpp>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include <seatload/core/descriptor.hpp>
#include <seatload/core/file_aside.hpp>
#include <seatload/core/opened_file.hpp>

namespace seatload {
namespace {

namespace fs = std::filesystem;

Diagnostic system_complaint(const fs::path& path, DiagnosticId id, const std::string& doing) {
    return error_in(path.string(), id, doing + ": " + std::strerror(errno));
}

/// Those of the file that is there, 0 when there is none.
mode_t permissions_of(const fs::path& target) {
    struct stat info {};
    return ::stat(target.c_str(), &info) == 0 ? info.st_mode & 07777 : 0;
}

}  // namespace

Result<std::string> read_text_file(const fs::path& path, std::size_t largest) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (status.type() == fs::file_type::not_found) return error_in(path.string(), "no-such-file"_id, "no such file");
    if (error) return error_in(path.string(), "cannot-read"_id, "cannot look at the file: " + error.message());
    if (fs::is_directory(status)) return error_in(path.string(), "folder-given"_id, "this is a folder, not a file");
    if (!fs::is_regular_file(status)) return error_in(path.string(), "not-a-file"_id, "not a regular file");
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
    if (error) return {error_in(path.string(), "cannot-write"_id, "cannot follow the link: " + error.message())};
    const fs::file_status status = fs::status(target, error);
    if (fs::exists(status) && !fs::is_regular_file(status))
        return {error_in(path.string(), "not-a-file"_id, "not a regular file; nothing written")};
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    const Placed placed = !directory.is_open()
                              ? Placed::not_begun
                              : place_file(directory.get(), target.filename().string(), bytes, permissions_of(target));
    if (placed == Placed::not_begun)
        return {system_complaint(path, "cannot-write"_id, "cannot write in the folder " + folder.string())};
    if (placed == Placed::not_written) return {system_complaint(path, "cannot-write"_id, "cannot write the file")};
    if (::fsync(directory.get()) != 0)
        return {system_complaint(path, "cannot-write"_id, "cannot make the new name safe on disk")};
    return {};
}

Diagnostics make_folder(const fs::path& path) {
    std::error_code error;
    if (fs::exists(path, error) && !fs::is_directory(path, error))
        return {error_in(path.string(), "folder-expected"_id, "a file stands where the folder should be")};
    fs::create_directories(path, error);
    if (error) return {error_in(path.string(), "cannot-make-folder"_id, "cannot make the folder: " + error.message())};
    return {};
}

}  // namespace seatload
