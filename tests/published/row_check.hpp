// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "published/subject.hpp"

namespace seatload::published {

/// What came of one row.
struct Outcome {
    bool passed = false;
    double used = 0.0;   ///< share of the tolerance used; 0 for a row that is not a matter of tolerance
    std::string report;  ///< id, quantity, source, what was got and what was expected
};

/// Works the quantity of a row out with our library and holds it against the printed number.
Outcome check_row(const Subject& subject, const Case& one, const Row& row);

}  // namespace seatload::published
