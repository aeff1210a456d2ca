// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/specs_options.hpp>

namespace seatload::cli {

/// Does what `seatload specs` was asked for in the library of specs. Returns 0; 1 when a spec was changed, no longer
/// comes out as it did, cannot be approved, or none is found; 2 for wrong input.
int run_specs(const SpecsOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
