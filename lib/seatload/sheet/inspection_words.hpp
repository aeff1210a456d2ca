// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/inspection/lot_verdict.hpp>

namespace seatload::sheet {

/// The symbol with its subscript.
std::string kind_symbol(inspection::Kind kind);

/// "seated load F1".
std::string kind_words(inspection::Kind kind);

/// "F1 [N]".
std::string axis_name(inspection::Kind kind);

/// "seated load F1: 20 pieces, 18 conform, 1 not proven, 1 fails".
std::string plot_title(const inspection::Judged& judged);

/// "5.04 to 6.50", "at most 8.70", or that there is none; in the unit of the kind. Of coils whose end tips are ordered
/// "180° ± 15°", as the sheet has it.
std::string limits_words(const inspection::Characteristic& characteristic);

/// What the sheet calls it: "seated load F1", "end tips apart".
std::string characteristic_words(const inspection::Characteristic& characteristic);

/// "± 0.037", in the unit of the limits, or a dash where it is nothing.
std::string doubt_words(const inspection::Judged& judged);

}  // namespace seatload::sheet
