// SPDX-License-Identifier: MIT
#include <seatload/io/beside.hpp>

#include <algorithm>
#include <filesystem>

#include <seatload/core/file.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

namespace fs = std::filesystem;

/// The text of a file, unless a link leads out of `folder`.
Result<std::string> text_within(const fs::path& folder, const std::string& path, const std::string& what) {
    std::error_code failed;
    if (!fs::exists(path, failed)) return read_text_file(path);  // which says what is wrong with it
    const fs::path inside = fs::weakly_canonical(folder.empty() ? fs::path(".") : folder, failed);
    const fs::path real = fs::weakly_canonical(path, failed);
    const auto [end, rest] = std::mismatch(inside.begin(), inside.end(), real.begin(), real.end());
    if (!failed && end != inside.end())
        return error_in(path, "link-refused"_id, "a link leads out of the folder of " + what);
    return read_text_file(path);
}

/// The path of a file named in another one, from the folder of that one; empty when the name leads out of it.
std::string path_beside(const std::string& file, const std::string& name) {
    for (const std::string_view part : split(name, '/'))
        if (!is_plain_file_name(part)) return {};
    return (fs::path(file).parent_path() / name).string();
}

}  // namespace

FileOpener opener_beside(const std::string& file, const std::string& what) {
    const fs::path folder = fs::path(file).parent_path();
    return [=](const std::string& path) { return text_within(folder, path, what); };
}

std::optional<FileBeside> find_file_beside(Reader& table, const std::string& key, const FileOpener& open,
                                           const std::string& where, const std::string& hint) {
    const auto name = table.find<std::string>(key);
    if (!name) return std::nullopt;
    const std::string path = path_beside(table.document().file_name(), *name);
    if (path.empty()) {
        table.error(key, "bad-file-name"_id, where + " in the folder of this file, or below it", hint);
        return std::nullopt;
    }
    const Result<std::string> text = open(path);
    if (!text) {
        const Diagnostic& first = text.error().front();
        table.error(key, first.id, "\"" + *name + "\": " + first.message, first.hint);
        return std::nullopt;
    }
    return FileBeside{*name, path, *text};
}

}  // namespace seatload::io
