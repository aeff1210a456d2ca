// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include <seatload/core/result.hpp>

namespace seatload::io {

/// How a reader gets at the text of a file that another file names; by default from the disk.
using FileOpener = std::function<Result<std::string>(const std::string& path)>;

/// The path of a file named in another one, from the folder of that one; empty when the name leads out of it.
std::string path_beside(const std::string& file, const std::string& name);

/// Opens files from the disk, none that a link leads to outside the folder of `file`. `what` names the file in the
/// complaint ("the readings").
FileOpener opener_beside(const std::string& file, const std::string& what);

}  // namespace seatload::io
