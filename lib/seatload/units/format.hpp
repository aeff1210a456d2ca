// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/text.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::units {

/// The quantity in full precision with its unit, as our own files state it; parse() reads it back to the same number.
inline std::string exact(Length length) { return shortest(in_mm(length)) + " mm"; }
inline std::string exact(Force force) { return shortest(in_newton(force)) + " N"; }
inline std::string exact(Stress stress) { return shortest(in_mpa(stress)) + " MPa"; }
inline std::string exact(Rate rate) { return shortest(in_newton_per_mm(rate)) + " N/mm"; }
inline std::string exact(Frequency frequency) { return shortest(in_hertz(frequency)) + " Hz"; }
inline std::string exact(Celsius temperature) { return shortest(temperature.degrees) + " °C"; }

/// The number with so many decimals and its unit, for people.
inline std::string shown(Length length, int decimals) { return fixed(in_mm(length), decimals) + " mm"; }
inline std::string shown(Force force, int decimals) { return fixed(in_newton(force), decimals) + " N"; }
inline std::string shown(Stress stress, int decimals) { return fixed(in_mpa(stress), decimals) + " MPa"; }
inline std::string shown(Rate rate, int decimals) { return fixed(in_newton_per_mm(rate), decimals) + " N/mm"; }
inline std::string shown(Mass mass, int decimals) { return fixed(in_gram(mass), decimals) + " g"; }
inline std::string shown(Frequency frequency, int decimals) { return fixed(in_hertz(frequency), decimals) + " Hz"; }
inline std::string shown(Share share, int decimals) { return fixed(100.0 * share.value, decimals) + " %"; }
inline std::string shown(Celsius temperature) { return significant(temperature.degrees, 6) + " °C"; }

/// A pressure as hydraulics state it [bar].
inline std::string shown_bar(Stress pressure, int decimals) { return fixed(in_bar(pressure), decimals) + " bar"; }

/// A wire diameter as catalogues write it: at least two decimals, more only when needed [mm].
inline std::string shown_wire(Length diameter) {
    const double d = in_mm(diameter);
    const std::string two = fixed(d, 2);
    const std::string three = fixed(d, 3);
    return (three == two + "0" ? two : three) + " mm";
}

}  // namespace seatload::units
