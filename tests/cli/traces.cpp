// SPDX-License-Identifier: MIT
#include "traces.hpp"

#include <sys/stat.h>

namespace seatload::test {

namespace fs = std::filesystem;

std::map<std::string, Trace> traces(const fs::path& folder) {
    std::map<std::string, Trace> found;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder)) {
        struct stat info {};
        if (::lstat(entry.path().c_str(), &info) != 0 || S_ISDIR(info.st_mode)) continue;
        found[fs::relative(entry.path(), folder).string()] = {info.st_ino, info.st_size, info.st_mtim.tv_sec,
                                                              info.st_mtim.tv_nsec};
    }
    return found;
}

}  // namespace seatload::test
