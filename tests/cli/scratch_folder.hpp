// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <tuple>

namespace seatload::test {

/// A fresh temporary folder that is gone when its scope ends.
class ScratchFolder {
  public:
    ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    ~ScratchFolder();
    const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// What tells a file from a later one of the same name: number on the disk, size, time of the last change.
using Trace = std::tuple<std::uint64_t, std::int64_t, std::int64_t, std::int64_t>;

/// All that stands in a folder and below it but folders, by name.
std::map<std::string, Trace> traces(const std::filesystem::path& folder);

std::string bytes_of(const std::filesystem::path& path);
void write_bytes(const std::filesystem::path& path, std::string_view bytes);

}  // namespace seatload::test
