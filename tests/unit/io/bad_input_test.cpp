// SPDX-License-Identifier: MIT
// Every wrong requirement in tests/bad_input with the exact text a user is shown. To accept a changed text, run the
// test once with SEATLOAD_ACCEPT=1 in the environment (it then writes what it got and fails) and read the difference.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/requirement_file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
namespace fs = std::filesystem;

namespace {

std::string bytes_of(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<fs::path> wrong_files() {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "tests" / "bad_input"))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

std::string shown_for(const fs::path& path) {
    const auto read = io::read_requirement(bytes_of(path), path.filename().string(), io::catalogue());
    CHECK_FALSE(read.has_value());
    CHECK(has_error(read.error()));
    return render(read.error());
}

}  // namespace

TEST_CASE("Every wrong requirement is answered with exactly the text that was reviewed") {
    const std::vector<fs::path> files = wrong_files();
    REQUIRE(files.size() >= 56);
    for (const fs::path& path : files) {
        INFO(path.filename().string());
        const fs::path expected = fs::path(path).replace_extension(".expected");
        const std::string shown = shown_for(path);
        const bool as_expected = shown == bytes_of(expected);
        if (!as_expected && std::getenv("SEATLOAD_ACCEPT") != nullptr)
            std::ofstream(expected, std::ios::binary) << shown;
        INFO(shown);
        CHECK(as_expected);
    }
}

TEST_CASE("Every expected text belongs to a wrong requirement") {
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "tests" / "bad_input"))
        if (entry.path().extension() == ".expected")
            CHECK(fs::exists(fs::path(entry.path()).replace_extension(".toml")));
}

TEST_CASE("A single changed letter of a sound requirement never crashes and never passes with a diagnostic") {
    const std::string sound = io::kLeast + "[wire]\ngrades = [\"ASTM-A228\"]\ndiameters = [\"0.8 mm\"]\n";
    REQUIRE(io::read_requirement(sound, "x.toml", io::catalogue()).has_value());
    for (std::size_t at = 0; at < sound.size(); ++at)
        for (const char letter : {'\0', '"', '[', ']', '=', '.', '\n', '#', '\xC3', '9', '-', '\\', '\''}) {
            std::string changed = sound;
            changed[at] = letter;
            const auto read = io::read_requirement(changed, "x.toml", io::catalogue());
            CHECK(read.has_value() != has_error(read.error()));
        }
}
