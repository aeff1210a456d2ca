// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// The terminal as far as output follows it.
struct Terminal {
    int width = 80;            ///< columns, 80 when the output is no terminal
    int error_width = 80;      ///< columns of the error stream
    bool errors_seen = false;  ///< whether a person watches the error stream
};

/// The options of the command asked for, or the exit code when there is nothing more to do: 0 after help or the version
/// (written on `out`), 2 when the words make no sense (said on `err`).
struct Arguments {
    std::optional<Options> options;
    int exit_code = 0;
};
Arguments parse_arguments(int argc, const char* const* argv, const Terminal& terminal, std::ostream& out,
                          std::ostream& err);

}  // namespace seatload::cli
