// SPDX-License-Identifier: MIT
#pragma once

#include <cli/specs_options.hpp>

namespace CLI {
class App;
}

namespace seatload::cli {

/// Adds the actions of `seatload specs`, with what each takes, to the command.
void add_specs_actions(CLI::App& specs, SpecsOptions& options);

}  // namespace seatload::cli
