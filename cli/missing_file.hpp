// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

namespace seatload::cli {

/// What may have been meant by the name of a file that is not there: a name near it, one that it is part of, the same
/// name in a folder beside; else what the folder holds of that kind, or that there is no such folder. Never empty.
std::string hint_for_missing(const std::filesystem::path& file);

}  // namespace seatload::cli
