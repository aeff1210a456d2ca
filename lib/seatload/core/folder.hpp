// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/descriptor.hpp>
#include <seatload/core/result.hpp>

namespace seatload {

/// An open folder whose files are reached by plain names alone (see is_plain_file_name), without following links:
/// whatever is read or written through it lies in it, even when someone exchanges folders for links meanwhile.
class Folder {
  public:
    enum class Kind { file, folder, other };  ///< other: a link, a pipe, a device
    struct Entry {
        std::string name;
        Kind kind;
    };

    /// The folder at a path. Here alone a link is followed: the user names it. Errors: not there, not a folder.
    static Result<Folder> open(const std::filesystem::path& path);
    /// A folder inside this one. Errors: no plain name, not there, not a folder itself but a link to one.
    Result<Folder> inside(const std::string& name) const;
    /// The same, made when it is not there.
    Result<Folder> made_inside(const std::string& name) const;

    const std::filesystem::path& path() const { return path_; }
    int descriptor() const { return fd_.get(); }
    /// What stands in it, by name; names that begin with a dot are left out.
    Result<std::vector<Entry>> entries() const;
    /// Whether anything has this name.
    bool has(const std::string& name) const;
    /// The bytes of a regular file. Errors: no plain name, not there, a link or special file, larger than 1 MiB.
    Result<std::string> read(const std::string& name) const;
    /// Puts bytes in place of a file, wholly or not at all: written aside, fsynced, named, folder fsynced. Asks for
    /// the lock of the library, as what is written stands on what was read before.
    Diagnostics replace(const std::string& name, std::string_view bytes) const;

  private:
    Folder(std::filesystem::path path, Descriptor fd) : path_(std::move(path)), fd_(std::move(fd)) {}
    Diagnostic complaint(const std::string& name, DiagnosticId id, const std::string& doing) const;
    Diagnostics refused(const std::string& name) const;

    std::filesystem::path path_;
    Descriptor fd_;
};

}  // namespace seatload
