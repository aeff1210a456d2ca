// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/demand/budget.hpp>

// How numbers and symbols of a plunger's budget are printed.

namespace seatload::sheet {

/// Four significant digits, or as many as asked; "∞" when it is endless,
/// "over 1 000 000" when it is absurd.
std::string pressure_number(double value, int digits = 4);

/// "4.8 to 5.3", or the one number when both are printed alike.
std::string range_words(double low, double high, int digits = 4);
std::string range_words(const demand::Interval<Force>& forces);
/// In bar, to three significant digits.
std::string range_words(const demand::Interval<Stress>& pressures);

/// "4.8 to 6.5 N", "at most 13.5 N", "any load".
std::string band_words(const demand::LoadBand& band);

/// The text with the trade's symbols ("F1", "pL", "μF") set as letter and index.
std::string with_symbols(std::string_view text);

/// The text with numbers kept on one line with their units.
std::string with_units_kept(std::string_view text);

}  // namespace seatload::sheet
