// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "script.hpp"

namespace seatload::test {

/// The lines "place = value" with the values a JSON text has there; a value equal to the one in the line (numbers
/// within one part in 10⁹) leaves the line as it is. A text that is not JSON gives one line that says so.
Lines with_values(const Lines& places, const std::string& json_text);

}  // namespace seatload::test
