// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include <seatload/bench/estimate.hpp>
#include <seatload/spring/ends.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::bench {

/// What a scale shows: a mass, which becomes a force by the gravity the scale was adjusted for, or a force as it is.
using ScaleReading = std::variant<Mass, Force>;

/// Where a scale was adjusted.
struct Site {
    Angle latitude;  ///< north or south alike
    Length height;   ///< above the sea
};
struct StandardGravity {};  ///< its maker states the standard value 9.80665 m/s2

/// What is known of a scale's adjustment; monostate: nothing, and gravity may be that of any place on earth.
using Adjustment = std::variant<std::monostate, StandardGravity, Site>;

struct Scale {
    ScaleReading resolution;           ///< step of the display
    Share span_error;                  ///< plus-minus on the span, the same for all readings
    ScaleReading linearity;            ///< plus-minus on each reading
    ScaleReading zero;                 ///< plus-minus on the zero, the same for all readings
    std::optional<ScaleReading> tare;  ///< shown with the fixture and no spring; empty: it shows zero then
    Adjustment adjusted_at;
};

/// What sets the heights between the plates: a mill quill, a height stop.
struct HeightGauge {
    Length resolution;  ///< step of its dial or display
    Length error;       ///< plus-minus on each height
    Share span_error;   ///< plus-minus on the span, the same for all
    Length zero;        ///< plus-minus on its zero (plates touching), the same for all
};

/// How the plunger of an indicator bears on the pan of the scale.
enum class Bearing {
    none,      ///< it does not touch the pan
    adds,      ///< it presses the pan down: the scale shows more than the spring carries
    relieves,  ///< it lifts the pan: the scale shows less
};

struct PlungerLine {
    Force at_zero;    ///< force at travel zero
    Rate per_travel;  ///< rise with travel
};
using PlungerTable = std::vector<std::pair<Length, Force>>;  ///< by rising travel, straight between

struct Indicator {
    Length resolution;                             ///< step of the dial or display
    Length error;                                  ///< plus-minus on each reading
    Share span_error;                              ///< plus-minus on the span, the same for all readings
    std::optional<Stated<Length>> height_at_zero;  ///< height between the plates where it shows zero
    Bearing bearing = Bearing::none;
    std::variant<Force, PlungerLine, PlungerTable> plunger;  ///< measuring force, positive
    Force plunger_error;                ///< plus-minus on the force, friction included; the same for all readings
    std::optional<Length> tare_travel;  ///< its travel when the scale was tared; empty: it did not touch the pan then
};

/// A rigid block in the place of the spring: what the gauge shows and what the scale shows.
struct BlockReading {
    Length travel;  ///< how far the gauge moved on, rising with load
    ScaleReading scale;
};

/// How far scale and frame give way under load. Both empty: they are taken as rigid.
struct LoadPath {
    std::optional<Stated<Rate>> stiffness;
    std::vector<BlockReading> block_run;  ///< used when no stiffness is stated
};

struct Preload {
    int count = 0;                 ///< compressions before the readings
    std::optional<Length> height;  ///< to this height; empty: to solid
};

/// A height at which the load is asked for.
struct AskedHeight {
    std::string name;  ///< "seated", "full travel", or the user's own
    Stated<Length> height;
};

enum class Role { suspect, good, new_made };

constexpr std::string_view word(Role role) {
    return role == Role::suspect ? "suspect" : role == Role::good ? "good" : "new";
}

/// What was measured on the spring itself, with calliper and micrometer.
struct Dimensions {
    std::optional<Stated<Length>> wire_diameter;     ///< d
    std::optional<Stated<Length>> outside_diameter;  ///< De
    std::optional<Stated<double>> total_coils;       ///< nt
    std::optional<Stated<Length>> free_length;       ///< L0 as it is now, loose, touched only
    std::optional<Stated<Length>> free_length_new;   ///< L0 it had when new, where a drawing or an order tells
    std::optional<spring::Ends> ends;
    std::string grade;  ///< id of the wire grade when known, else empty
};

/// One reading of the bench. A height or a travel must stand; with both, the height counts and the travel tells the
/// plunger's force.
struct Reading {
    std::optional<Length> height;
    std::optional<Length> travel;
    ScaleReading scale;
    bool unloading = false;
};

/// One spring pressed on the bench.
struct SpringRun {
    std::string name;
    Role role = Role::suspect;
    Dimensions dimensions;
    Preload preload;
    std::vector<Reading> readings;
};

/// A session at the bench: fixture, instruments, springs.
struct Readings {
    std::string title;
    std::string date;
    std::string fixture;
    HeightGauge gauge;
    Indicator indicator;
    Scale scale;
    LoadPath load_path;
    Stated<double> temperature{20.0, 5.0};  ///< of springs and bench [deg C]
    std::vector<AskedHeight> heights;
    double coverage_factor = 2.0;  ///< k of a result whose uncertainty is well known
    std::vector<SpringRun> springs;
};

}  // namespace seatload::bench
