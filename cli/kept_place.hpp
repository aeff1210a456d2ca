// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <cli/specs_shelves.hpp>

namespace seatload::cli {

/// A file of a library of specs, found by its path alone.
struct KeptPlace {
    SpecsOptions options;  ///< the library and the wires, for what is typed next
    OnShelf on;
};

/// Where a file is kept; none when it has no states below it, or lies in no library that can be read.
std::optional<KeptPlace> kept_place(const std::string& path, const std::string& wire_file,
                                    const References& references);

/// Warnings that a kept spec is not to be used as it is: withdrawn, superseded, changed since it was frozen, or
/// approved on a condition that is open.
Diagnostics doubts_on_kept(const KeptPlace& place);
/// Those on each of the files that is kept.
Diagnostics doubts_on_kept(const std::vector<std::string>& paths, const std::string& wire_file,
                           const References& references);

/// The state of a kept spec and what may be done with it next, in words.
std::string kept_next(const KeptPlace& place);

}  // namespace seatload::cli
