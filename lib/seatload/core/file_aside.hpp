// SPDX-License-Identifier: MIT
#pragma once

#include <sys/types.h>

#include <string>
#include <string_view>

#include <seatload/core/descriptor.hpp>

namespace seatload {

/// A file in the making, in the folder where it will get its name as a whole.  Nameless, nothing is left of it when the
/// process is killed; where the file system knows no such files (vfat, NFS) it is `.aside.1` and so on, locked by its
/// writer, and one whose writer was killed is removed by the next.
class FileAside {
  public:
    enum class Manner { nameless, named };

    /// Begins a file in an open folder, and removes what killed writers left there; not open, with errno set, when the
    /// folder takes none.
    FileAside(int folder, Manner manner);
    FileAside(const FileAside&) = delete;
    FileAside& operator=(const FileAside&) = delete;
    ~FileAside();

    bool is_open() const { return file_.is_open(); }
    /// Writes all of it, safe on disk; permissions 0 are the usual ones. False with errno set.
    bool write(std::string_view bytes, mode_t permissions);
    /// Puts it in place of whatever has this name in the folder. False with errno set.
    bool give_name(const std::string& name);

  private:
    bool take_name();  ///< for a nameless file, to be renamed from: no call puts one in place of another

    int folder_;
    Descriptor file_{-1};
    std::string name_;  ///< the one it has now, or none
};

/// How far the placing of a file came; but for `done` errno is set.
enum class Placed { done, not_begun, not_written };

/// Puts bytes in place of a file of an open folder, wholly or not at all, nameless and, where that fails, named.
Placed place_file(int folder, const std::string& name, std::string_view bytes, mode_t permissions);

}  // namespace seatload
