// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/record/spec.hpp>

namespace seatload::record {

/// The spec as it may leave the workshop: without why the alternative is offered, whose engine it is for, and the loads
/// the mechanism itself bears. All that a sheet shows or rests on stays, so that the copy gives the same sheet.
Spec makers_copy(Spec spec);

}  // namespace seatload::record
