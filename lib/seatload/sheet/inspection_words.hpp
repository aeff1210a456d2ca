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

/// "5.04 to 6.50", "at most 8.70", or that there is none; in the unit of the kind.
std::string limits_words(const inspection::Characteristic& characteristic);

}  // namespace seatload::sheet
