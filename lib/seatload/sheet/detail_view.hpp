// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/scale.hpp>
#include <seatload/spring/spring.hpp>

namespace seatload::sheet {

/// The part of a spring's side view that is shown once more, larger: a circle round its left end [mm, as coil_outline].
struct Detail {
    Scale scale;
    Point centre;
    double radius = 0.0;
};

/// How far the leader to its wire leaves a detail's circle [mm].
inline constexpr double kDetailLeader = 2.5;

/// What is written at a detail.
struct DetailWords {
    const std::string& letter;
    const std::string& wire;  ///< diameter of the wire; empty: not shown
};

/// Room that a detail's title takes above its circle [mm].
inline constexpr double kDetailTitle = 5.5;

/// The detail of the left end at the largest scale of ISO 5455 at which its circle is no larger on paper than
/// `largest_radius` [mm]: the whole end, or its upper edge when only that can be shown large enough. Nothing when there
/// is no room at a scale larger than that of the view, or when the wire would still be too thin to read.
std::optional<Detail> end_detail(const spring::Spring& spring, Scale view, double largest_radius);

/// Marks the detail in the side view, whose left face lies at `face` on the axis; the letter stands above or under the
/// circle, on the left.
void mark_detail(Drawing& drawing, const Detail& detail, Point face, Scale view, const std::string& letter,
                 bool letter_above);

/// Draws the detail with its circle centred on the paper at `at`, "X (10:1)" above it (ISO 128-3), and a leader
/// to its wire on the right.
void draw_detail(Drawing& drawing, const spring::Spring& spring, const Detail& detail, Point at,
                 const DetailWords& words);

}  // namespace seatload::sheet
