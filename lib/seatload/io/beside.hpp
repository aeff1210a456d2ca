// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>

#include <seatload/core/result.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {

/// How a reader gets at the text of a file that another file names; by default from the disk.
using FileOpener = std::function<Result<std::string>(const std::string& path)>;

/// Opens files from the disk, none that a link leads to outside the folder of `file`. `what` names the file in the
/// complaint ("the readings").
FileOpener opener_beside(const std::string& file, const std::string& what);

/// A file that another one names.
struct FileBeside {
    std::string name;  ///< as the key has it
    std::string path;
    std::string text;
};

/// The file that a key of a table names, from the folder of the table's own; nothing when the key is not there, or when
/// the file cannot be had, which is complained of: `where` says in the complaint where such files lie, `hint` how a
/// name is written.
std::optional<FileBeside> find_file_beside(Reader& table, const std::string& key, const FileOpener& open,
                                           const std::string& where, const std::string& hint);

}  // namespace seatload::io
