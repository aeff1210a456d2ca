// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::cli {

/// How many decimals a value with this doubt deserves: two digits of the doubt (GUM 7.2.6), 6 at most.
int decimals_for(double plus_minus);

/// "3.42 ±0.04": both with the decimals the doubt deserves.
std::string doubt_text(double value, double plus_minus);

/// The number with a sign, also a plus; what rounds to nothing has none.
std::string signed_text(double value, int decimals);

/// A value, or the doubt itself, rounded as it is shown.
double rounded_as(double value, double plus_minus);

}  // namespace seatload::cli
