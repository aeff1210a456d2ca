// SPDX-License-Identifier: MIT
#include "patterns.hpp"

namespace seatload::test {
namespace {

const std::string kUnsigned = "(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?";
const std::string kBlanks = "[ \\t]*";
const std::string kFraction = "(?:(?:[ \\t]+" + kUnsigned + ")?/" + kUnsigned + ")?";
const std::string kBothWays = "(?:±|\\+/-|\\+-)";

std::string units_of(const units::Dimension& dimension) {
    std::string names;
    for (const units::UnitSize& unit : dimension.units) names += (names.empty() ? "" : "|") + std::string(unit.name);
    return "(?:" + names + ")";
}

/// A tolerance: the quantity, or per cent.
std::string width_pattern(const units::Dimension& dimension) {
    return "(?:" + quantity_pattern(dimension, false) + "|" + quantity_pattern(units::dimension_of<Share>(), false) +
           ")";
}

std::string unequal_pattern(const units::Dimension& dimension, bool is_signed) {
    const std::string width = width_pattern(dimension);
    return quantity_pattern(dimension, is_signed) + "(?: \\+" + width + "| -(?! )" + width + ")+";
}

std::string equal_pattern(const units::Dimension& dimension, bool is_signed) {
    return quantity_pattern(dimension, is_signed) + kBothWays + width_pattern(dimension);
}

std::string bound_pattern(const units::Dimension& dimension, bool is_signed, const std::string& words) {
    return kBlanks + words + quantity_pattern(dimension, is_signed);
}

}  // namespace

const std::string kNumberPattern = "-?" + kUnsigned;

std::string quantity_pattern(const units::Dimension& dimension, bool is_signed) {
    return kBlanks + (is_signed ? "[+-]?" : "\\+?") + kUnsigned + kFraction + kBlanks + units_of(dimension) + kBlanks;
}

std::string stated_pattern(const units::Dimension& dimension, bool is_signed) {
    return "(?:" + quantity_pattern(dimension, is_signed) + "|" + equal_pattern(dimension, is_signed) + "|" +
           unequal_pattern(dimension, is_signed) + ")";
}

std::string two_limits_pattern(const units::Dimension& dimension, bool is_signed) {
    const std::string one = quantity_pattern(dimension, is_signed);
    return "(?:" + one + "\\.\\." + one + "|" + equal_pattern(dimension, is_signed) + "|" +
           unequal_pattern(dimension, is_signed) + ")";
}

std::string at_most_pattern(const units::Dimension& dimension, bool is_signed) {
    return bound_pattern(dimension, is_signed, "(?:at most|<=|≤)");
}

std::string at_least_pattern(const units::Dimension& dimension, bool is_signed) {
    return bound_pattern(dimension, is_signed, "(?:at least|>=|≥)");
}

std::string whole_text(std::initializer_list<std::string> alternatives) {
    std::string all;
    for (const std::string& each : alternatives) all += (all.empty() ? "" : "|") + each;
    return "^(?:" + all + ")$";
}

}  // namespace seatload::test
