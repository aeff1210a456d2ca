// SPDX-License-Identifier: MIT
// The files that `seatload start` writes: each is read without a word as it stands, and with each optional part taken
// in.
#include <algorithm>
#include <filesystem>
#include <functional>
#include <regex>
#include <set>

#include <nlohmann/json.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/io/spring_file.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/sizing/search.hpp>
#include <support/check.hpp>

#include "script.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kStartFolder = fs::path(SEATLOAD_SOURCE_DIR) / "templates" / "start";

std::string start_file(const std::string& kind) {
    const auto text = read_text_file(kStartFolder / (kind + ".toml"));
    REQUIRE(text.has_value());
    return *text;
}

/// The tables that stand beside the files, of which they name three.
Result<std::string> beside(const std::string& path) {
    const std::string name = fs::path(path).filename().string();
    if (name == "readings.toml") return start_file("readings");
    if (name == "samples.csv")
        return std::string("piece,seated_load [N],outside_diameter [mm]\n1,5.80,8.27\n2,5.74,\n");
    std::string table = "travel [mm],scale [g],direction\n";
    for (int i = 2; i < 12; ++i) table += std::to_string(i) + ',' + std::to_string(121 * i - 230) + ",loading\n";
    return table;
}

/// What the reader of a kind says of a text.
Diagnostics said_of(const std::string& kind, const std::string& text) {
    static const wire::Catalogue wires = *io::builtin_catalogue();
    static const inspection::SamplingTables plans = *io::builtin_sampling();
    if (kind == "requirement") return io::read_requirement(text, kind, wires).error();
    if (kind == "plunger") return io::read_plunger(text, kind).error();
    if (kind == "readings") return io::read_readings(text, kind, wires, beside).error();
    if (kind == "spring") return io::read_spring(text, kind, wires).error();
    if (kind == "reply") return io::read_reply(text, kind).error();
    if (kind == "samples") return io::read_samples(text, kind, plans, wires, beside).error();
    if (kind == "maker") return io::read_maker(text, kind).error();
    REQUIRE(kind == "wire");
    return io::read_wire_file(text, kind, wires).error();
}

/// An optional part: a key behind a #, or a table with its keys, and what its remark says of others.
struct Part {
    std::size_t first = 0;
    std::size_t last = 0;
    std::vector<std::string> with;     ///< keys that must be taken in too
    std::vector<std::string> instead;  ///< keys that give way to it
};

bool is_optional(const std::string& line) { return line.size() > 1 && line[0] == '#' && line[1] != ' '; }

/// The key of a line, active or not; empty for a table, a remark or a row.
std::string key_of(const std::string& line) {
    std::smatch found;
    return std::regex_search(line, found, std::regex("^#?([a-z_0-9]+) *=")) ? found[1].str() : std::string{};
}

/// The keys named behind a word in a remark: "in place of rows, columns: ..." has two.
std::vector<std::string> named_behind(const std::string& line, const std::string& word) {
    const std::size_t at = line.find(word + ' ');
    std::vector<std::string> keys;
    if (line.find("# in place of") == std::string::npos && line.find("# with") == std::string::npos) return keys;
    if (at == std::string::npos) return keys;
    const std::string rest = line.substr(at + word.size() + 1);
    const std::string list = rest.substr(0, std::min(rest.find_first_of(":["), rest.size()));
    for (const std::string_view part : split(list, ',')) {
        const std::string key{trim(part)};
        if (!std::regex_match(key, std::regex("[a-z_0-9]+"))) break;  // "in place of force, with ...": the next word
        keys.push_back(key);
    }
    return keys;
}

std::vector<Part> parts_of(const Lines& lines) {
    std::vector<Part> parts;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!is_optional(lines[i])) continue;
        Part part{i, i, named_behind(lines[i], "with"), named_behind(lines[i], "in place of")};
        const bool is_table = lines[i][1] == '[';
        while (is_table && part.last + 1 < lines.size() && lines[part.last + 1].starts_with('#') &&
               !lines[part.last + 1].starts_with("#["))
            ++part.last;
        i = part.last;
        parts.push_back(part);
    }
    return parts;
}

void take_in(Lines& lines, const Part& part) {
    for (std::size_t i = part.first; i <= part.last; ++i)
        if (is_optional(lines[i])) lines[i].erase(0, 1);
}

/// Turns an active key, with the rows of its value, into remarks.
void give_way(Lines& lines, const std::string& key) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i].starts_with('#') || key_of(lines[i]) != key) continue;
        const bool has_rows = lines[i].ends_with('[');
        for (; has_rows && lines[i] != "]"; ++i) lines[i].insert(0, "# ");
        lines[i].insert(0, "# ");
    }
}

/// The file with one part taken in, what it needs, and without what gives way to it.
std::string with_part(Lines lines, const std::vector<Part>& parts, const Part& part) {
    const Lines written = lines;
    for (const std::string& key : part.instead) give_way(lines, key);
    take_in(lines, part);
    for (const std::string& key : part.with)
        for (const Part& other : parts)
            if (key_of(written[other.first]) == key && is_optional(lines[other.first])) take_in(lines, other);
    return text_of(lines);
}

std::vector<std::string> kinds() {
    std::vector<std::string> all;
    for (const auto& entry : fs::directory_iterator(kStartFolder)) all.push_back(entry.path().stem().string());
    std::sort(all.begin(), all.end());
    return all;
}

TEST_CASE("each file to start from is read without a word as it is written") {
    CHECK(kinds().size() == 8);
    for (const std::string& kind : kinds()) {
        const Diagnostics said = said_of(kind, start_file(kind));
        INFO(kind << '\n' << render(said));
        CHECK(said.empty());
    }
}

TEST_CASE("each optional part of a file to start from can be taken in by itself") {
    std::size_t count = 0;
    for (const std::string& kind : kinds()) {
        const Lines lines = lines_of(start_file(kind));
        const auto parts = parts_of(lines);
        for (const Part& part : parts) {
            const std::string text = with_part(lines, parts, part);
            const Diagnostics said = said_of(kind, text);
            INFO(kind << ", line " << part.first + 1 << ": " << lines[part.first] << '\n' << render(said));
            CHECK(said.empty());
            CHECK(text != text_of(lines));
            ++count;
        }
    }
    CHECK(count > 100);
}

TEST_CASE("all optional parts of a file to start from that replace nothing can be taken in together") {
    for (const std::string& kind : kinds()) {
        Lines lines = lines_of(start_file(kind));
        for (const Part& part : parts_of(lines))
            if (lines[part.first].find("in place of") == std::string::npos) take_in(lines, part);
        const Diagnostics said = said_of(kind, text_of(lines));
        INFO(kind << '\n' << render(said));
        CHECK(said.empty());
    }
}

/// The keys a JSON Schema knows, at whatever depth.
void add_keys(const nlohmann::json& schema, std::set<std::string>& keys) {
    if (schema.is_object() && schema.contains("properties") && schema["properties"].is_object())
        for (const auto& [key, about] : schema["properties"].items()) keys.insert(key);
    for (const auto& part : schema)
        if (part.is_structured()) add_keys(part, keys);
}

std::set<std::string> schema_keys(const std::string& kind) {
    const auto text = read_text_file(fs::path(SEATLOAD_SOURCE_DIR) / "lib/data/schema" / (kind + ".json"));
    REQUIRE(text.has_value());
    std::set<std::string> keys;
    add_keys(nlohmann::json::parse(*text), keys);
    return keys;
}

TEST_CASE("each key that a kind of file knows stands in the file to start from") {
    // A requirement may hold a plunger, which has a file of its own; a wire file may lay over any built-in table.
    const std::set<std::string> elsewhere = schema_keys("plunger");
    for (const std::string& kind : kinds()) {
        if (kind == "wire") continue;
        const std::string text = start_file(kind);
        for (const std::string& key : schema_keys(kind)) {
            if (kind == "requirement" && elsewhere.contains(key)) continue;
            INFO(kind << ": " << key);
            CHECK(std::regex_search(text, std::regex("(\\n#?|[\\[.])" + key + "( *=|[\\].])")));
        }
    }
}

TEST_CASE("the requirement to start from has springs that fit it") {
    const auto catalogue = io::builtin_catalogue();
    const auto requirement = io::read_requirement(start_file("requirement"), "requirement.toml", *catalogue);
    REQUIRE(requirement.has_value());
    CHECK(sizing::search(sizing::search_space(*requirement, *catalogue), *io::builtin_tolerances(), {}).fit > 0);
}

TEST_CASE("lines of a file to start from are short enough for an editor of 120 columns") {
    for (const std::string& kind : kinds())
        for (const std::string& line : lines_of(start_file(kind))) {
            INFO(kind << ": " << line);
            CHECK(length_in_code_points(line) <= 120);
        }
}

}  // namespace
}  // namespace seatload::test
