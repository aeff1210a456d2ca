// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::cli {

/// What the program says when it is called without a word.
inline constexpr const char* kFirstWords =
    "seatload tells what an old compression spring gives and what a better one must\n"
    "give, finds every spring that does it in the room there is, and writes the\n"
    "sheets and the enquiry that a spring maker quotes and winds from.\n"
    "\n"
    "You have                       Type first                   and then\n"
    "  an old spring and a scale    seatload start readings      seatload bench\n"
    "  a plunger and its pressures  seatload start plunger       seatload budget\n"
    "  room and loads for a spring  seatload start requirement   seatload size\n"
    "  makers' answers              seatload start reply         seatload quotes\n"
    "  a lot that has come          seatload start samples       seatload inspect\n"
    "\n"
    "seatload start lists all files to fill in, seatload --help all commands.\n";

}  // namespace seatload::cli
