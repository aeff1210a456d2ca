// SPDX-License-Identifier: MIT
#include "fuzz/seeds.hpp"

#include <algorithm>
#include <filesystem>
#include <map>
#include <random>

#include <seatload/core/text.hpp>

#include "fuzz/targets.hpp"
#include "support/scratch_folder.hpp"

namespace seatload::fuzz {
namespace {

namespace fs = std::filesystem;
using test::bytes_of;

const fs::path kRoot = SEATLOAD_SOURCE_DIR;

/// Where seeds of a target lie: folders, the mark in their first lines that tells the kind, and the ending.
struct Source {
    std::vector<const char*> folders;
    std::string_view mark;  ///< "" takes every file of the folders
    std::string_view ending = ".toml";
};

const std::map<std::string_view, Source>& sources() {
    static const std::map<std::string_view, Source> all{
        {"requirement", {{"templates", "specs", "tests/bad_input"}, "[load]"}},
        {"spring", {{"specs", "tests/unit", "tests/cli"}, "[spring]"}},
        {"readings", {{"templates", "specs", "tests/bad_input/readings"}, "[scale]"}},
        {"readings_table", {{"templates", "specs", "tests/bad_input/readings"}, "scale [", ".csv"}},
        {"reply", {{"templates/replies", "tests/bad_input/reply"}, ""}},
        {"samples", {{"templates", "specs", "tests/bad_input/samples"}, "[pieces]"}},
        {"samples_table", {{"templates", "specs", "tests/bad_input/samples"}, "piece", ".csv"}},
        {"spec", {{"specs", "tests/unit/record"}, "seatload spec"}},
        {"kept_spec", {{"specs", "tests/bad_input/kept"}, "[[state]]"}},
        {"lot", {{"specs", "tests/bad_input/lot"}, "seatload lot"}},
        {"plunger", {{"templates", "tests/bad_input/plunger"}, "[plunger"}},
        {"maker", {{"templates", "lib/data/makers", "tests/bad_input/maker"}, "seatload maker"}},
        {"wire", {{"lib/data/wire"}, ""}},
        {"tolerances", {{"lib/data"}, "EN 15800"}},
        {"wording", {{"templates/wording"}, ""}},
    };
    return all;
}

/// The file, with the table of its name behind it when one lies beside it.
std::string with_table(const fs::path& path) {
    const fs::path table = fs::path(path).replace_extension(".csv");
    if (path.extension() != ".toml" || !fs::exists(table)) return bytes_of(path);
    return bytes_of(path) + kBetweenFiles + bytes_of(table);
}

void take_files(std::vector<Seed>& all, const fs::path& folder, const Source& source) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != source.ending) continue;
        if (bytes_of(entry.path()).find(source.mark) == std::string::npos) continue;
        all.push_back({fs::relative(entry.path(), kRoot).string(), with_table(entry.path())});
    }
}

/// Bytes that choose small requirements, the same on every machine.
void take_drawn(std::vector<Seed>& all) {
    std::mt19937 engine(7);
    for (int i = 0; i < 160; ++i) {
        std::string bytes(48, '\0');
        for (char& c : bytes) c = static_cast<char>(engine() % 256);
        all.push_back({"drawn " + std::to_string(i), bytes});
    }
}

/// Each line of a file is a seed; "#" begins a remark.
void take_lines(std::vector<Seed>& all, const fs::path& path) {
    if (!fs::exists(path)) return;
    const std::string text = bytes_of(path);
    for (const std::string_view line : split(text, '\n'))
        if (!line.empty() && line.front() != '#')
            all.push_back({path.filename().string() + ": " + std::string(line), std::string(line)});
}

void take_regressions(std::vector<Seed>& all, const fs::path& folder) {
    if (!fs::exists(folder)) return;
    for (const auto& entry : fs::directory_iterator(folder))
        all.push_back({fs::relative(entry.path(), kRoot).string(), bytes_of(entry.path())});
}

}  // namespace

std::vector<Seed> seeds(std::string_view target) {
    std::vector<Seed> all;
    if (const auto found = sources().find(target); found != sources().end())
        for (const char* folder : found->second.folders) take_files(all, kRoot / folder, found->second);
    if (target == "size") take_drawn(all);
    take_lines(all, kRoot / "tests/fuzz/seeds" / (std::string(target) + ".txt"));
    take_regressions(all, kRoot / "tests/fuzz/regressions" / target);
    std::sort(all.begin(), all.end(), [](const Seed& a, const Seed& b) { return a.name < b.name; });
    return all;
}

}  // namespace seatload::fuzz
