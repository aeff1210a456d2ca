// SPDX-License-Identifier: MIT
#include <seatload/units/dimension.hpp>

#include <array>
#include <numbers>

namespace seatload::units {
namespace {

// Exact by definition: 1 in = 25.4 mm and 1 lb = 0.45359237 kg (international yard and pound agreement, 1959);
// standard gravity 9.80665 m/s2 (3rd CGPM, 1901), so 1 lbf = 4.4482216152605 N; 1 bar = 0.1 MPa.
constexpr double kInch = 127.0;                          // over 5, in mm
constexpr double kPoundForce = 44482216152605.0;         // over 1e13, in N
constexpr double kGramForce = 980665.0;                  // over 1e8, in N
constexpr double kSquareInch = kInch * kInch;            // over 25, in mm2
constexpr double kPoundForceInch = kPoundForce * kInch;  // over 5e13, in N mm
constexpr double kPound = 45359237.0;                    // over 1e11, in t

constexpr UnitSize kLengths[] = {{"mm"}, {"cm", 10}, {"m", 1000}, {"in", kInch, 5}, {"thou", kInch, 5000}};
constexpr UnitSize kForces[] = {{"N"},
                                {"kN", 1000},
                                {"gf", kGramForce, 1e8},
                                {"kgf", kGramForce, 1e5},
                                {"lbf", kPoundForce, 1e13},
                                {"ozf", kPoundForce, 1.6e14}};
constexpr UnitSize kRates[] = {{"N/mm"}, {"gf/mm", kGramForce, 1e8}, {"lbf/in", kPoundForce, 2.54e14}};
constexpr UnitSize kStresses[] = {{"MPa"},
                                  {"GPa", 1000},
                                  {"bar", 1, 10},
                                  {"kPa", 1, 1000},
                                  {"N/mm2"},
                                  {"N/mm²"},
                                  {"psi", kPoundForce, 6.4516e15},
                                  {"ksi", kPoundForce, 6.4516e12},
                                  {"Mpsi", kPoundForce, 6.4516e9}};
constexpr UnitSize kPressures[] = {{"bar", 1, 10}, {"MPa"},   {"kPa", 1, 1000},
                                   {"N/mm2"},      {"N/mm²"}, {"psi", kPoundForce, 6.4516e15}};
constexpr UnitSize kAngles[] = {{"rad"}, {"deg", std::numbers::pi, 180}, {"°", std::numbers::pi, 180}};
constexpr UnitSize kMasses[] = {{"g", 1, 1e6}, {"kg", 1, 1e3}, {"lb", kPound, 1e11}, {"oz", kPound, 1.6e12}};
constexpr UnitSize kDensities[] = {{"kg/m3", 1, 1e12},
                                   {"kg/m³", 1, 1e12},
                                   {"kg/dm3", 1, 1e9},
                                   {"kg/dm³", 1, 1e9},
                                   {"g/cm3", 1, 1e9},
                                   {"g/cm³", 1, 1e9},
                                   {"lb/in3", kPound, 1.6387064e15}};
constexpr UnitSize kAreas[] = {
    {"mm2"}, {"mm²"}, {"cm2", 100}, {"cm²", 100}, {"in2", kSquareInch, 25}, {"in²", kSquareInch, 25}};
constexpr UnitSize kTimes[] = {{"s"}, {"ms", 1, 1000}, {"min", 60}};
constexpr UnitSize kTorques[] = {{"N mm"},
                                 {"N m", 1000},
                                 {"Nmm"},
                                 {"Nm", 1000},
                                 {"lbf in", kPoundForceInch, 5e13},
                                 {"lbf ft", kPoundForceInch * 12, 5e13}};
constexpr UnitSize kViscosities[] = {{"mPa s", 1, 1e9}, {"cP", 1, 1e9}, {"Pa s", 1, 1e6}};
constexpr UnitSize kFrequencies[] = {{"Hz"}};
constexpr UnitSize kTemperatures[] = {{"°C"}, {"K", 1, 1, -273.15}, {"°F", 5, 9, -160.0 / 9.0}};
constexpr UnitSize kShares[] = {{"%", 1, 100}};

const Dimension kLength{"a length", "9 mm", "mm", kLengths};
const Dimension kForce{"a force", "5.6 N", "N", kForces};
const Dimension kRate{"a spring rate", "1.2 N/mm", "N/mm", kRates};
const Dimension kStress{"a stress", "1900 MPa", "MPa", kStresses};
const Dimension kPressure{"a pressure", "1.6 bar", "MPa", kPressures};
const Dimension kAngle{"an angle", "15 deg", "rad", kAngles};
const Dimension kMass{"a mass", "2.5 g", "t", kMasses};
const Dimension kDensity{"a density", "7850 kg/m3", "t/mm3", kDensities};
const Dimension kFrequency{"a frequency", "25 Hz", "Hz", kFrequencies};
const Dimension kArea{"an area", "33 mm2", "mm2", kAreas};
const Dimension kTime{"a time", "1.5 s", "s", kTimes};
const Dimension kTorque{"a torque", "2.5 N m", "N mm", kTorques};
const Dimension kViscosity{"a dynamic viscosity", "400 mPa s", "MPa s", kViscosities};
const Dimension kTemperature{"a temperature", "120 °C", "°C", kTemperatures};
const Dimension kShare{"a share", "15 %", "", kShares};

const std::array<const Dimension*, 14> kAll{&kLength, &kForce,     &kRate,        &kStress, &kAngle,
                                            &kMass,   &kDensity,   &kFrequency,   &kArea,   &kTime,
                                            &kTorque, &kViscosity, &kTemperature, &kShare};

}  // namespace

template <>
const Dimension& dimension_of<Length>() {
    return kLength;
}
template <>
const Dimension& dimension_of<Force>() {
    return kForce;
}
template <>
const Dimension& dimension_of<Rate>() {
    return kRate;
}
template <>
const Dimension& dimension_of<Stress>() {
    return kStress;
}
template <>
const Dimension& dimension_of<Angle>() {
    return kAngle;
}
template <>
const Dimension& dimension_of<Mass>() {
    return kMass;
}
template <>
const Dimension& dimension_of<Density>() {
    return kDensity;
}
template <>
const Dimension& dimension_of<Frequency>() {
    return kFrequency;
}
template <>
const Dimension& dimension_of<Area>() {
    return kArea;
}
template <>
const Dimension& dimension_of<Time>() {
    return kTime;
}
template <>
const Dimension& dimension_of<Torque>() {
    return kTorque;
}
template <>
const Dimension& dimension_of<Viscosity>() {
    return kViscosity;
}
template <>
const Dimension& dimension_of<Celsius>() {
    return kTemperature;
}
template <>
const Dimension& dimension_of<Share>() {
    return kShare;
}

const Dimension& pressure_dimension() { return kPressure; }

std::span<const Dimension* const> all_dimensions() { return kAll; }

}  // namespace seatload::units
