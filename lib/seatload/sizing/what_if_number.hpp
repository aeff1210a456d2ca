// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/sizing/easing.hpp>

namespace seatload::sizing {

/// One number of a requirement that can be tried at other values than the stated one.
struct WhatIfNumber {
    std::string key;            ///< "space.bore", "load.seated.at_least"
    std::string name;           ///< "bore", "seated load at least"
    const Easing* easing;       ///< how it is set, and its unit
    double lowest = 0.0;        ///< it may have, in its unit
    bool above_lowest = false;  ///< the lowest itself is out
    double highest = 0.0;
};

/// Every such number, in the order of easings().
const std::vector<WhatIfNumber>& what_if_numbers();

/// What a requirement states for it, in its unit; nothing when it states nothing.
std::optional<double> stated(const WhatIfNumber& number, const demand::Requirement& requirement);

/// A number and the values it is tried between.
struct WhatIf {
    const WhatIfNumber* number;
    double from = 0.0;
    double to = 0.0;  ///< above `from`
};

/// The question a text such as "bore = 8.5 mm .. 9.5 mm" asks of a requirement. The number is named by its key, by the
/// last part of its key when no other ends so, or by its name. Errors: no such number, or several; a range that cannot
/// be read, or leaves what the requirement's file may state; values with which the requirement contradicts itself; a
/// number the requirement has no use for.
Result<WhatIf> read_what_if(std::string_view text, const demand::Requirement& requirement);

}  // namespace seatload::sizing
