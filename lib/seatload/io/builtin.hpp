// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/result.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The wire grades, stock series and bibliography built into the library. An error in them is an error of ours.
Result<wire::Catalogue> builtin_catalogue();

/// The tolerance tables of EN 15800 built into the library. An error in them is an error of ours.
Result<tolerance::Tables> builtin_tolerances();

}  // namespace seatload::io
