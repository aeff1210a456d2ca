// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::bench {

/// Chance that chi-square of so many degrees of freedom comes out at least this large.
double chance_of_larger(double chi_square, double degrees_of_freedom);

/// Twice the smaller tail of chi-square at this value, at most 1: small when it is too large or too small for chance.
double two_sided(double chi_square, double degrees_of_freedom);

/// Chance that a normal deviate lies at least `sigmas` from its mean, either side.
double chance_beyond(double sigmas);

}  // namespace seatload::bench
