// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>
#include <string>

namespace seatload::cli {

/// What `seatload wire` was asked for.
struct WireOptions {
    std::string grade;              ///< id of the grade to show; empty: list all
    std::string series = "metric";  ///< stock series whose sizes are shown
    std::string file;               ///< the user's own wire file, laid over the built-in data; empty: none
    std::string diameter;           ///< show the strength at this diameter only ("0.43 mm"); empty: all sizes
    bool json = false;              ///< for programs, in full precision
    int width = 80;                 ///< columns of the terminal
};

/// Lists the wire grades, or shows one. Returns the exit code: 0 done; 2 when a name, a file or a diameter is wrong,
/// with the reasons on `err` and nothing on `out`.
int run_wire(const WireOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
