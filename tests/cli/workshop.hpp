// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include <support/tool.hpp>

namespace seatload::test {

/// What stands in a folder: names, below it too, and bytes.
using Contents = std::map<std::string, std::string>;

/// The files of a folder and those below it, hidden ones too; none when there is no folder.
Contents contents_of(const std::filesystem::path& folder);

/// Files left aside by a writer that was ended, which the next one need not mind.
bool is_aside(const std::string& name);

/// A folder with something to do for every command that writes; sized once in a process, copied for each test.
class Workshop {
  public:
    Workshop();

    const ScratchFolder& folder() const { return folder_; }
    std::filesystem::path operator/(const std::string& name) const { return folder_ / name; }

    /// A command line of the shell, begun in the folder, in which SEATLOAD is the program.
    ToolRun sh(const std::string& command) const;

  private:
    ScratchFolder folder_;
};

/// The command lines that write files below the folder OUT, which is there.
std::vector<std::string> writers();

/// The text with the folder OUT named `out`.
std::string into(std::string words, const std::string& out);

}  // namespace seatload::test
