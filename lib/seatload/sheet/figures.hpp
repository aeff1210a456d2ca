// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/record/spec.hpp>
#include <seatload/units/quantities.hpp>

// Numbers as papers print them: decimal point, no needless zeros, the unit left to the caller.

namespace seatload::sheet {

/// The number with at most so many decimals, trailing zeros left out.
std::string trimmed(double value, int most_decimals);

/// A length [mm] with at most three decimals.
inline std::string number(Length length) { return trimmed(in_mm(length), 3); }

/// A wire diameter [mm]: two decimals, three when needed.
std::string wire_number(Length diameter);

/// A load with its tolerances [N]: "4.80 ± 0.30" or "4.80 +0.50/−0.30", all with the same decimals.
std::string toleranced(const record::LoadAtLength& load);

/// The least, nominal and largest value of a load with its tolerances [N], all with the same decimals.
struct LoadLimits {
    std::string least;
    std::string nominal;
    std::string most;
};
LoadLimits limits(const record::LoadAtLength& load);

/// A length with its tolerance [mm], both with the same decimals (ISO 129-1): "8.45 ± 0.30".
std::string with_tolerance(Length nominal, Length plus_minus, int least_decimals = 0);

/// The number in the brackets of a reference value (ISO 129-1, auxiliary dimension).
inline std::string reference(const std::string& words) { return "(" + words + ")"; }

}  // namespace seatload::sheet
