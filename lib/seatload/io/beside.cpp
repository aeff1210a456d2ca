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

}  // namespace

std::string path_beside(const std::string& file, const std::string& name) {
    for (const std::string_view part : split(name, '/'))
        if (!is_plain_file_name(part)) return {};
    return (fs::path(file).parent_path() / name).string();
}

FileOpener opener_beside(const std::string& file, const std::string& what) {
    const fs::path folder = fs::path(file).parent_path();
    return [=](const std::string& path) { return text_within(folder, path, what); };
}

}  // namespace seatload::io
