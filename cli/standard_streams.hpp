// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::cli {

/// Makes sure that input, output and error output are open, so that no file opened later takes the place of a closed
/// one and gets what was meant for the screen; what is written to one that was closed fails. A reader that leaves early
/// ends nothing until all work is done: writing to it merely fails.
void hold_standard_streams();

/// Whether output is a pipe that nobody reads any more.
bool is_output_abandoned();

/// Ends the process as a filter whose reader has left ends by custom: by SIGPIPE, which a shell shows as 141.
[[noreturn]] void end_as_abandoned();

}  // namespace seatload::cli
