// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <ostream>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>

namespace seatload::cli {

/// A file to be written, kept in memory until all of them are made, so that a failure leaves nothing half-done.
struct Paper {
    std::filesystem::path path;
    std::string bytes;
};

/// Makes the folder and writes the papers, each wholly or not at all; the diagnostics of the first failure, or none.
Diagnostics write_papers(const std::filesystem::path& folder, const std::vector<Paper>& papers);

/// Papers of the same stem that lie in the folder and are none of these: left from an earlier run, by name.
std::vector<std::filesystem::path> stale_papers(const std::filesystem::path& folder, const std::string& stem,
                                                const std::vector<Paper>& papers);

/// The papers by name, for people.
std::string written_text(const std::vector<Paper>& papers);

/// "Next: " and what to do next, in lines of at most `width` columns.
std::string next_text(const std::string& what, int width);

/// Makes one paper of each file and writes them all, or none when any file is wrong; tells their names on `out`, what
/// is said of the files on `err`. Returns the exit code.
int write_each(const std::vector<std::string>& files, const std::filesystem::path& folder,
               const std::function<Result<Paper>(const std::string&)>& make, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
