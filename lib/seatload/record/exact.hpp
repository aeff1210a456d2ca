// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <boost/multiprecision/cpp_int.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::record {

/// A sum of money, or a share of one, as an exact fraction: duty, tax, exchange and the price of one piece of a lot are
/// reckoned without any rounding.
using Exact = boost::multiprecision::cpp_rational;

/// The amount in whole units of its currency, exactly.
Exact exact(const Money& money);

/// The share to the nearest millionth, so that 3.5 % is 35/1000 and not the binary fraction nearest to it.
Exact exact(const Share& share);

/// The amount with so many decimals, halves rounded up (commercial rounding: common practice, no source); this is the
/// only place where money is rounded. Never below zero.
std::string rounded_text(const Exact& amount, int decimals);

/// An amount of a lot with two decimals, that of one piece with three.
inline std::string lot_text(const Exact& amount) { return rounded_text(amount, 2); }
inline std::string piece_text(const Exact& amount) { return rounded_text(amount, 3); }

}  // namespace seatload::record
