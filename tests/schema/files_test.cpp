// SPDX-License-Identifier: MIT
// The schemas of lib/data/schema: as they are made here, and held against every TOML file of the repository. To write
// them anew, run the test once with SEATLOAD_ACCEPT=1 in the environment and read the difference.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>

#include <seatload/core/text.hpp>
#include <support/check.hpp>
#include <support/json_schema.hpp>

#include "file_reader.hpp"
#include "kinds.hpp"

using namespace seatload;
using namespace seatload::test;
namespace fs = std::filesystem;

namespace {

const fs::path kRoot(SEATLOAD_SOURCE_DIR);

std::string bytes_of(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

fs::path schema_path(const std::string& kind) { return kRoot / "lib/data/schema" / (kind + ".json"); }

const JsonSchema& schema_of(const std::string& kind) {
    static std::map<std::string, JsonSchema> schemas;
    auto found = schemas.find(kind);
    if (found == schemas.end())
        found = schemas.emplace(kind, JsonSchema(nlohmann::json::parse(bytes_of(schema_path(kind))))).first;
    return found->second;
}

std::vector<fs::path> toml_files(const std::string& folder) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(kRoot / folder))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

/// The kind a file says it is, or what lies where it lies.
std::string kind_of_file(const fs::path& path, const nlohmann::json& toml) {
    static const std::regex kFormat("seatload ([a-z]+) 1");
    std::smatch found;
    const std::string format = toml.is_object() ? toml.value("format", std::string()) : "";
    if (std::regex_match(format, found, kFormat)) return found[1];
    if (path.stem() == "en_15800") return "tolerances";
    if (path.stem() == "iso_2859_1") return "sampling";
    if (toml.contains("format_version")) return "wire";
    if (path.parent_path().filename() == "makers") return "maker";
    return "requirement";
}

/// The kind that is wanted of the wrong files in a folder.
std::string kind_wanted(const fs::path& folder) {
    const std::string name = folder.filename().string();
    if (name == "bad_input") return "requirement";
    if (name == "kept") return "spec";
    return name == "quotes" ? "reply" : name;
}

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) text += line + '\n';
    return text;
}

}  // namespace

TEST_CASE("The schemas that are shipped are those made from the tables of readers and writers") {
    for (const FileKind& kind : file_kinds()) {
        INFO(kind.name);
        const std::string text = kind.schema.dump(2) + '\n';
        const bool is_same = text == bytes_of(schema_path(kind.name));
        if (!is_same && std::getenv("SEATLOAD_ACCEPT") != nullptr)
            std::ofstream(schema_path(kind.name), std::ios::binary) << text;
        CHECK(is_same);
    }
}

TEST_CASE("Every file that is shipped is right by its schema") {
    std::size_t looked_at = 0;
    for (const char* folder : {"templates", "specs", "lib/data", "tests/golden", "tests/bench", "tests/consumer"})
        for (const fs::path& path : toml_files(folder)) {
            if (path.stem() == "complaints") continue;  // read by the tests alone
            INFO(path.string());
            const nlohmann::json toml = toml_as_json(bytes_of(path));
            REQUIRE(toml.is_object());
            INFO(joined(schema_of(kind_of_file(path, toml)).faults(toml)));
            CHECK(schema_of(kind_of_file(path, toml)).accepts(toml));
            ++looked_at;
        }
    CHECK(looked_at > 50);
}

TEST_CASE("A file that is wrong by its structure is refused by its schema") {
    static const std::regex kStructural(
        "\\.toml:[0-9]+:[0-9]+: error: [^\n]*(?:unknown key|is not one of the words known here|is wanted, this is|is "
        "missing|is a bare number|decimal comma|"
        "unknown unit|has no unit|this is a file of the kind)");
    std::size_t refused = 0;
    for (const fs::path& path : toml_files("tests/bad_input")) {
        // Below: each half is right, only not in the place of the other. Values: cells go by the columns' kinds.
        if (path.stem() == "spec_below_the_line" || path.stem() == "values_of_the_wrong_kind") continue;
        INFO(path.string());
        const std::string said = bytes_of(fs::path(path).replace_extension(".expected"));
        const nlohmann::json toml = toml_as_json(bytes_of(path));
        if (!toml.is_object() || !std::regex_search(said, kStructural)) continue;
        INFO(said);
        CHECK_FALSE(schema_of(kind_wanted(path.parent_path())).accepts(toml));
        ++refused;
    }
    CHECK(refused > 60);
}

TEST_CASE("A wording that lacks a phrase, or has one too many, is refused by its schema") {
    const JsonSchema& schema = schema_of("wording");
    const nlohmann::json whole = toml_as_json(bytes_of(kRoot / "templates/wording/it.toml"));
    CHECK(schema.accepts(whole));
    nlohmann::json less = whole, more = whole;
    less["number"].erase("decimal_mark");
    more["number"]["decimal_sign"] = ",";
    CHECK_FALSE(schema.accepts(less));
    CHECK_FALSE(schema.accepts(more));
}
