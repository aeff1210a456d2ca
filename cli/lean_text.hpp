// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/check/evaluation.hpp>

namespace seatload::cli {

/// How far a spring leans on its sliding seat and how far it may, in front; what that hangs on behind it; of a spring
/// that was found, and not to be ordered, what there is to look at. In lines of at most `width` columns; empty where
/// lean is not looked at.
std::string lean_text(const check::Evaluation& evaluation, bool is_found, int width);

}  // namespace seatload::cli
