// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <cli/command_table.hpp>

namespace seatload::cli {

/// The script that teaches bash to complete the program's commands, options, files and words.
std::string bash_completion(const CommandEntry& program);

/// The same for zsh, to lie in its fpath as `_seatload`.
std::string zsh_completion(const CommandEntry& program);

/// The same for fish, to lie in its completions folder as `seatload.fish`.
std::string fish_completion(const CommandEntry& program);

}  // namespace seatload::cli
