// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// The lines of a text broken at blanks so that none is wider than `width` [mm] when drawn at a height and squeeze.
/// A line also ends at each '\n'. A number stays in one line with its unit, and "±" with the deviation behind it; what
/// is wider still is broken before a sign, and only a single number or word that is too wide between characters. At
/// least one line comes back.
std::vector<std::string> wrapped(std::string_view words, double width, double height = kLettering,
                                 Face face = Face::regular, double squeeze = 1.0);

/// Width [mm] of the widest part that wrapped() would have to cut between letters in a narrower column.
double widest_word(std::string_view words, double height = kLettering, Face face = Face::regular);

}  // namespace seatload::sheet
