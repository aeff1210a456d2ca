// SPDX-License-Identifier: MIT
// Each law of this folder has its equation, its source and what it is held against in laws.toml.
#include <toml++/toml.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include "support/check.hpp"

namespace {

namespace fs = std::filesystem;
const fs::path kFolder = fs::path(SEATLOAD_SOURCE_DIR) / "tests/consistency";

/// "stress_laws/work_eq_...", of every test case.
std::set<std::string> laws_tested() {
    std::set<std::string> names;
    const std::regex test_case("TEST_CASE\\(\"([^\"]+)\"");
    for (const auto& entry : fs::directory_iterator(kFolder)) {
        const std::string file = entry.path().filename().string();
        const std::size_t end = file.find("_laws_test.cpp");
        if (end == std::string::npos) continue;
        std::ifstream stream(entry.path());
        const std::string text{std::istreambuf_iterator<char>(stream), {}};
        for (std::sregex_iterator at(text.begin(), text.end(), test_case), none; at != none; ++at)
            names.insert(file.substr(0, end) + "_laws/" + (*at)[1].str());
    }
    return names;
}

std::set<std::string> laws_named() {
    std::set<std::string> names;
    const toml::table root = toml::parse_file((kFolder / "laws.toml").string());
    for (const auto& [file, laws] : root) {
        if (!laws.is_table()) continue;
        for (const auto& [law, row] : *laws.as_table()) {
            INFO(std::string(law.str()));
            REQUIRE(row.is_array());
            REQUIRE(row.as_array()->size() == 3);
            for (const toml::node& word : *row.as_array()) REQUIRE(!word.value<std::string>().value_or("").empty());
            names.insert(std::string(file.str()) + '/' + std::string(law.str()));
        }
    }
    return names;
}

}  // namespace

TEST_CASE("Each law is named with its equation and its source") {
    const std::set<std::string> named = laws_named();
    CHECK(named == laws_tested());
    CHECK(named.size() >= 25);
}
