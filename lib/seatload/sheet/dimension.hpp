// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <string>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Of an extension line past its dimension line [mm]; the next row of words begins at 1.5.
inline constexpr double kExtensionOvershoot = 1.0;

/// A filled arrowhead with its point at `at`, pointing along `degrees` (ISO 129-1: closed, filled).
void arrow_head(Drawing& drawing, Point at, double degrees);

/// A distance along x between two features, its dimension line at height `line_y`; extension lines run from the
/// features. The words stand above the line, or right of it when they do not fit between the arrows.
struct HorizontalDimension {
    Point from;
    Point to;
    double line_y = 0.0;
    std::string words;
    bool extended_from = true;  ///< whether `from` gets an extension line of its own
    double words_from = 0.0;    ///< least x of words that do not fit between the arrows
};
void draw(Drawing& drawing, const HorizontalDimension& dimension);

/// A distance along y between two features, its dimension line at `line_x`; the words read from the right, and stand
/// left of the line, or clear of the extension lines when they do not fit between them.
struct VerticalDimension {
    Point from;
    Point to;
    double line_x = 0.0;
    std::string words;
    /// Of words that do not fit between the arrows; where they do not fit between these either, they are narrowed.
    double words_least_y = -std::numeric_limits<double>::infinity();
    double words_most_y = std::numeric_limits<double>::infinity();
};
void draw(Drawing& drawing, const VerticalDimension& dimension);

/// A leader from words on a short horizontal line to an arrowhead on a feature.
struct Leader {
    Point feature;
    Point knee;
    std::string words;
};
void draw(Drawing& drawing, const Leader& leader);

}  // namespace seatload::sheet
