// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace seatload::inspection {

/// What is measured on a piece of a lot.
enum class Kind {
    seated_load,
    full_travel_load,
    outside_diameter,
    inside_diameter,
    free_length,
    wire_diameter,
    total_coils,
    squareness,
    parallelism,
};

inline constexpr std::array kKinds{Kind::seated_load,     Kind::full_travel_load, Kind::outside_diameter,
                                   Kind::inside_diameter, Kind::free_length,      Kind::wire_diameter,
                                   Kind::total_coils,     Kind::squareness,       Kind::parallelism};

/// What kind of number it is: newtons, millimetres, or a plain count.
enum class Measure { force, length, count };

constexpr Measure measure(Kind kind) {
    if (kind == Kind::seated_load || kind == Kind::full_travel_load) return Measure::force;
    return kind == Kind::total_coils ? Measure::count : Measure::length;
}

/// "N", "mm", or empty.
constexpr std::string_view unit(Kind kind) {
    switch (measure(kind)) {
        case Measure::force:
            return "N";
        case Measure::length:
            return "mm";
        case Measure::count:
            break;
    }
    return {};
}

/// How files call it.
constexpr std::string_view key(Kind kind) {
    constexpr std::array<std::string_view, kKinds.size()> kKeys{
        "seated_load",   "full_travel_load", "outside_diameter", "inside_diameter", "free_length",
        "wire_diameter", "total_coils",      "squareness",       "parallelism"};
    return kKeys[static_cast<std::size_t>(kind)];
}

/// How people call it, in English.
constexpr std::string_view words(Kind kind) {
    constexpr std::array<std::string_view, kKinds.size()> kWords{
        "seated load",   "full-travel load", "outside diameter", "inside diameter", "free length",
        "wire diameter", "total coils",      "squareness",       "parallelism"};
    return kWords[static_cast<std::size_t>(kind)];
}

/// Its symbol by EN 13906-1, without a subscript: "F1", "De".
constexpr std::string_view symbol(Kind kind) {
    constexpr std::array<std::string_view, kKinds.size()> kSymbols{"F1", "F2", "De", "Di", "L0", "d", "nt", "e1", "e2"};
    return kSymbols[static_cast<std::size_t>(kind)];
}

/// The least and the largest value that conforms, in the unit of the kind; either may be open.
struct Limits {
    std::optional<double> least;
    std::optional<double> most;

    bool is_open() const { return !least && !most; }
    bool operator==(const Limits&) const = default;
};

/// What a measured value of it means for the lot.
enum class Role {
    load,       ///< measured as the plan for loads says
    dimension,  ///< measured on a few pieces, all of which must be inside
    condition,  ///< like a dimension, but a lot that is good otherwise and lacks it is accepted on condition that it
                ///< holds
    bound,      ///< what the maker had to keep whatever he altered: looked at when measured
    noted,      ///< a reference value: told, and decides nothing
};

/// A characteristic of a piece with the limits its sheet prints.
struct Characteristic {
    Kind kind = Kind::seated_load;
    Role role = Role::noted;
    double nominal = 0.0;
    Limits limits;
    /// Whole turns more or less are the maker's to choose: only the part of a turn is held to the limits.
    bool whole_turns_free = false;
    /// A further upper limit (of a free length) for pieces that are measured to have their end tips so close to half a
    /// turn apart; all others are held to `limits`.
    struct FurtherByTips {
        double most = 0.0;
        double degrees = 0.0;  ///< plus-minus
    };
    std::optional<FurtherByTips> further_by_tips = {};

    /// Its end tips are ordered: how far each may stand from half a turn apart [degrees]. Only of coils whose whole
    /// turns are free.
    double ordered_tip_degrees() const { return 360.0 * (*limits.most - nominal); }
};

}  // namespace seatload::inspection
