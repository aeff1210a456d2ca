// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/bench/measured.hpp>

// How numbers of a bench run are printed.

namespace seatload::sheet {

/// A value and its expanded uncertainty as printed: two significant digits of the uncertainty, and as many decimals of
/// the value (GUM 7.2.6).
struct ValueWithDoubt {
    std::string value;
    std::string doubt;

    /// "5.123 ± 0.061"
    std::string together() const { return value + "\u00a0± " + doubt; }
};
ValueWithDoubt with_doubt(double value, double expanded);

template <class Q>
ValueWithDoubt with_doubt(const bench::Estimate<Q>& estimate) {
    return with_doubt(in_base_unit(estimate.value), in_base_unit(estimate.expanded));
}

/// The spring by its name and its role: "latch 3, suspect".
std::string spring_words(const bench::MeasuredSpring& spring);

/// A name cut to what a cell of a table holds on two lines; whole names stand in the key.
std::string short_name(const std::string& name);

/// A number with so many decimals and a true minus sign.
std::string signed_fixed(double value, int decimals);

/// Degrees of freedom in whole numbers, rounded down; "∞" above a thousand.
std::string degrees_of_freedom(double value);

}  // namespace seatload::sheet
