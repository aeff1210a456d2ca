// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::demand {

/// A change that a part went through, as its papers list it; the date is given, never taken from the clock.
struct Revision {
    std::string index;   ///< at most 2 characters (ISO 7200)
    std::string date;    ///< ISO 8601
    std::string change;  ///< what was altered
    std::string by;      ///< may be empty

    bool operator==(const Revision&) const = default;
};

}  // namespace seatload::demand
