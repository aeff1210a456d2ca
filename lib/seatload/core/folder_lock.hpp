// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/folder.hpp>

namespace seatload {

/// A hold on a folder that other processes with a hold on it respect, until the scope or the process ends, however it
/// ends (flock on the file ".lock", which is never renamed or removed).
class FolderLock {
  public:
    enum class Kind {
        shared,    ///< to read files that belong together; several may
        exclusive  ///< to change what stands there; one alone
    };
    /// The hold, waited for at most so long [s]. A reader where no writer ever was, or who may not write, gets by
    /// without the file. Errors: another one holds it all the time; the file cannot be made.
    static Result<FolderLock> take(const Folder& folder, Kind kind, double longest_wait = 30.0);

  private:
    explicit FolderLock(Descriptor fd) : fd_(std::move(fd)) {}
    Descriptor fd_;
};

}  // namespace seatload
