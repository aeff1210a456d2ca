// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/bench/estimate.hpp>
#include <seatload/bench/problem.hpp>
#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// What became of a reading.
enum class Use {
    line,     ///< it helps to make the straight line
    outlier,  ///< it helps to make the line, though it lies further off than chance explains: shown, never dropped
    before_contact,  ///< left out: the plate did not yet bear on the whole spring
    coils_closing,   ///< left out: coils touch and the spring grows stiffer
    unloading,       ///< counts for hysteresis only
};

constexpr std::string_view word(Use use) {
    switch (use) {
        case Use::line:
            return "used";
        case Use::outlier:
            return "used, outlier";
        case Use::before_contact:
            return "before contact";
        case Use::coils_closing:
            return "coils closing";
        case Use::unloading:
            return "unloading";
    }
    return "used";
}

/// A reading corrected for tare, gravity, plunger and load path.
struct Point {
    std::size_t reading = 0;  ///< its place in SpringRun::readings, from 0
    Length stated_height;     ///< as set, or height at zero less travel
    Length height;            ///< of the spring, the give of the load path taken off
    Force force;              ///< the spring carries
    Length u_height;          ///< standard uncertainties of this reading alone, without what is common to all
    Force u_force;
    Use use = Use::line;
    std::string why;      ///< of a point left out or an outlier: the reason in words; else empty
    Force residual;       ///< force less the line's
    double sigmas = 0.0;  ///< residual over its standard uncertainty
};

/// A height lies between two readings.
struct Bracket {
    Length above;
    Length below;
};

enum class Straightness {
    as_stated,   ///< scatter about the line is what the stated uncertainties let one expect
    too_large,   ///< uncertainties stated too small, or not a straight line
    too_small,   ///< uncertainties stated too large
    not_judged,  ///< no more points than a line needs
};

struct ChiSquare {
    double value = 0.0;
    double degrees_of_freedom = 0.0;
    double p = 1.0;  ///< two-sided
    Straightness verdict = Straightness::not_judged;
    std::string text;  ///< the verdict in a sentence
};

/// Loading less unloading at equal heights.
struct Hysteresis {
    Force largest;
    Length at;  ///< height of the largest
    Force mean;
    std::size_t heights = 0;  ///< how many were read both ways
    Share of_largest_load;    ///< largest difference, as a share of the largest load used
};

struct LoadAtHeight {
    AskedHeight asked;
    Estimate<Force> force;
    bool outside = false;  ///< the height lies beyond the readings of the line, more than a tenth of their spread
};

/// How one error that all readings share shifts the line, at one standard uncertainty.
struct CommonShift {
    std::string name;
    double rate_n_mm = 0.0;
    double centre_force_n = 0.0;  ///< at Line::centre
};

/// Independent errors of one kind, as variances of the line.
struct IndependentPart {
    std::string name;
    std::array<double, 3> covariance{};  ///< of rate^2, rate and centre force, centre force^2
    double degrees_of_freedom = std::numeric_limits<double>::infinity();
};

/// F(L) = centre_force - rate (L - centre).
struct Line {
    double centre_mm = 0.0;  ///< weighted mean height
    double centre_force_n = 0.0;
    double rate_n_mm = 0.0;
    std::vector<IndependentPart> independent;
    std::vector<CommonShift> common;
};

/// A spring as the bench found it, at the temperature of the session.
struct MeasuredSpring {
    std::string name;
    Role role = Role::suspect;
    std::vector<Point> points;       ///< in the order of the readings
    std::optional<Bracket> contact;  ///< the plate begins to bear on the whole spring; empty: above the first reading
    std::optional<Bracket> closing;  ///< coils begin to touch; empty: not reached
    Line line;
    double coverage_factor = 2.0;  ///< k asked for
    Estimate<Rate> rate;
    Estimate<Length> free_length;  ///< where the line meets no load: not what a calliper shows on the loose spring
    std::vector<LoadAtHeight> loads;
    std::optional<Hysteresis> hysteresis;
    ChiSquare chi_square;
    std::optional<Force> repeatability;  ///< pooled standard deviation of readings repeated at a height
    double repeatability_degrees_of_freedom = 0.0;
    std::vector<std::string> remarks;  ///< what a reader should know, sentences
};

/// The spring, or why there is none; warnings may stand beside a spring.
struct Measurement {
    std::optional<MeasuredSpring> spring;
    std::vector<RunProblem> problems;
};

/// What the readings of one spring say. Straight stretch, contact and closing coils are found, not assumed.
Measurement measure(const Readings& session, const SpringRun& run);

/// The load at any height [N] with its uncertainty, that of the height included.
Estimate<Force> load_at(const MeasuredSpring& spring, const Stated<Length>& height);

}  // namespace seatload::bench
