// SPDX-License-Identifier: MIT
#include <cli/missing_file.hpp>

#include <algorithm>
#include <vector>

#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kMostListed = 6;
constexpr std::size_t kMostFolders = 100;  // looked into for the same name

struct Names {
    std::vector<std::string> files;
    std::vector<std::string> folders;
};

/// What a folder holds by name, in the order of the alphabet; nothing where it cannot be read.
Names names_in(const fs::path& folder) {
    Names names;
    std::error_code unreadable;
    for (fs::directory_iterator at(folder.empty() ? "." : folder, unreadable), end; at != end;
         at.increment(unreadable)) {
        if (unreadable) break;
        std::error_code unknown;
        (at->is_directory(unknown) ? names.folders : names.files).push_back(at->path().filename().string());
    }
    for (std::vector<std::string>* each : {&names.files, &names.folders}) {
        std::erase_if(*each, [](const std::string& name) { return name.starts_with('.'); });
        std::sort(each->begin(), each->end());
    }
    return names;
}

std::string quoted_path(const fs::path& path) { return '"' + path.string() + '"'; }

/// The same name in one of the folders beside, such as templates; empty when it is in none.
fs::path same_name_below(const fs::path& folder, const std::vector<std::string>& folders, const fs::path& name) {
    std::error_code unknown;
    for (std::size_t i = 0; i < std::min(folders.size(), kMostFolders); ++i)
        if (fs::path path = folder / folders[i] / name; fs::is_regular_file(path, unknown)) return path;
    return {};
}

/// The files whose name holds that of the one typed, as "ahead_latch.toml" does for "latch.toml" or "ahead".
std::vector<std::string> names_around(const std::vector<std::string>& files, const fs::path& file) {
    constexpr std::size_t kShortest = 3;
    const std::string stem = lower(file.stem().string());
    std::vector<std::string> found;
    for (const std::string& name : files) {
        const bool same_kind = !file.has_extension() || fs::path(name).extension() == file.extension();
        if (same_kind && stem.size() >= kShortest && lower(name).find(stem) != std::string::npos)
            found.push_back(quoted_path(file.parent_path() / name));
    }
    return found;
}

/// The files of a kind, as many as are worth listing.
std::string listed(const fs::path& folder, const std::vector<std::string>& files, const std::string& kind) {
    const std::string place = folder.empty() ? "this folder" : quoted_path(folder);
    std::vector<std::string> of_kind;
    for (const std::string& name : files)
        if (kind.empty() || fs::path(name).extension() == kind) of_kind.push_back(name);
    const std::string what = kind.empty() ? "file" : kind + " file";
    if (of_kind.empty()) return place + " holds no " + what + "; look for a slip in the name or the folder";
    if (of_kind.size() > kMostListed)
        return place + " holds " + std::to_string(of_kind.size()) + ' ' + what + "s, none of a name like it";
    return place + " holds " + join(of_kind, ", ");
}

}  // namespace

std::string hint_for_missing(const fs::path& file) {
    std::error_code unreadable;
    const fs::path folder = file.parent_path();
    if (!folder.empty() && !fs::exists(folder, unreadable))
        return "there is no folder " + quoted_path(folder) + " either";
    const Names names = names_in(folder);
    if (const auto near = nearest(file.filename().string(), names.files))
        return "did you mean " + quoted_path(folder / *near) + '?';
    const std::vector<std::string> around = names_around(names.files, file);
    if (!around.empty() && around.size() <= kMostListed) return "did you mean " + join(around, " or ") + '?';
    if (const fs::path path = same_name_below(folder, names.folders, file.filename()); !path.empty())
        return "did you mean " + quoted_path(path) + '?';
    return listed(folder, names.files, file.extension().string());
}

}  // namespace seatload::cli
