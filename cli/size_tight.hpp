// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/sizing/tight_limits.hpp>

namespace seatload::cli {

/// Which limits hold the answer when few springs fit, and what easing each by 1 % would bring, for people; lines of at
/// most `width` columns.
std::string tight_text(const sizing::TightLimits& tight, int width);

/// The same for programs.
nlohmann::ordered_json tight_json(const sizing::TightLimits& tight);

}  // namespace seatload::cli
