// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "workshop.hpp"

namespace seatload::test {

/// What a writer puts into its folder when nothing is amiss; it is left in the folder "whole".
Contents whole_of(const Workshop& shop, const std::string& words);

/// Checks that each file is one of `whole`, byte for byte; the lock of a library may be there.
void check_only_whole(const Contents& found, const Contents& whole);

}  // namespace seatload::test
