// SPDX-License-Identifier: MIT
// What --version says of the built-in data, held against the files and sha256sum of coreutils.
#include <algorithm>

#include <nlohmann/json.hpp>
#include <seatload/core/embedded.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "process.hpp"
#include "script.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kDataRoot = SEATLOAD_SOURCE_DIR;

std::string sha256sum(const fs::path& file) {
    const Ended ended = run_program({"/usr/bin/sha256sum", file.string()}, fs::temp_directory_path(), {});
    REQUIRE(ended.code == 0);
    return ended.out.substr(0, 64);
}

fs::path place_of_data(const std::string& name) {
    return fs::exists(kDataRoot / "lib" / name) ? kDataRoot / "lib" / name : kDataRoot / name;
}

nlohmann::json version_as_json() {
    return nlohmann::json::parse(run_program({SEATLOAD_PROGRAM, "--version", "--json"}, "/", {}).out);
}

/// The standards that the grades of lib/data/wire name, read off the lines `standard = "..."`.
std::vector<std::string> standards_in_data() {
    std::vector<std::string> standards;
    for (const auto& entry : fs::directory_iterator(kDataRoot / "lib" / "data" / "wire"))
        for (const std::string& line : lines_of(bytes_of(entry.path())))
            if (line.starts_with("standard = \"")) standards.push_back(line.substr(12, line.size() - 13));
    std::sort(standards.begin(), standards.end());
    standards.erase(std::unique(standards.begin(), standards.end()), standards.end());
    return standards;
}

}  // namespace

TEST_CASE("the version's digest is that of the files of data, as sha256sum tells it") {
    ScratchFolder folder;
    std::vector<std::string> names;
    for (const std::string_view name : embedded_names("")) names.emplace_back(name);
    std::sort(names.begin(), names.end());
    CHECK(names.size() >= 17);
    std::string list;
    for (const std::string& name : names) list += sha256sum(place_of_data(name)) + "  " + name + '\n';
    write_bytes(folder / "list", list);
    const std::string digest = sha256sum(folder / "list");
    CHECK(version_as_json()["data"]["sha256"] == digest);
    CHECK_THAT(run_program({SEATLOAD_PROGRAM, "--version"}, "/", {}).out, ContainsSubstring(digest));
}

TEST_CASE("the version names each standard of the wire data") {
    const auto json = version_as_json();
    CHECK(json["data"]["wire"] == standards_in_data());
    const std::string text = run_program({SEATLOAD_PROGRAM, "--version"}, "/", {"COLUMNS=1000"}).out;
    for (const std::string& standard : standards_in_data()) CHECK_THAT(text, ContainsSubstring(standard));
}

}  // namespace seatload::test
