// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::demand {

/// What a maker must know to answer an enquiry, beside the springs; texts may be empty.
struct Correspondence {
    std::string reply_by;    ///< the last day for an answer, ISO 8601, given, never the clock
    std::string address;     ///< where the answer goes
    std::string contact;     ///< whom to ask
    std::string deliver_to;  ///< where the springs go, when not to that address
};

}  // namespace seatload::demand
