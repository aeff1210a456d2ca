// SPDX-License-Identifier: MIT
#include "published/designs.hpp"

#include <toml++/toml.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>
#include <stdexcept>

#include <seatload/io/requirement_file.hpp>
#include <seatload/units/parse.hpp>
#include <support/builtin.hpp>

namespace seatload::published {
namespace {

[[noreturn]] void fail(const toml::node& node, const std::string& message) {
    throw std::runtime_error("line " + std::to_string(node.source().begin.line) + ": " + message);
}

/// A table of which every key is known: a mistyped one must not drop a check.
const toml::table& table_of(const toml::node& node, const std::set<std::string>& known) {
    if (!node.is_table()) fail(node, "a table is wanted");
    for (const auto& [key, value] : *node.as_table())
        if (!known.contains(std::string(key.str()))) fail(value, "unknown key \"" + std::string(key.str()) + "\"");
    return *node.as_table();
}

std::string text_of(const toml::table& table, std::string_view key) {
    const auto text = table[key].value<std::string>();
    if (!text || text->empty()) fail(table, "no text \"" + std::string(key) + "\"");
    return *text;
}

std::vector<std::string> texts_of(const toml::table& table, std::string_view key, std::size_t count) {
    std::vector<std::string> texts;
    if (const toml::array* list = table[key].as_array())
        for (const toml::node& entry : *list) texts.push_back(entry.value<std::string>().value());
    if (texts.size() != count) fail(table, std::string(key) + " has not " + std::to_string(count) + " members");
    return texts;
}

Answer read_answer(const toml::node& node) {
    const toml::table& table = table_of(node, {"pose", "spring", "heights", "wire_rounded", "breaks", "difference"});
    Answer answer{text_of(table, "pose"), texts_of(table, "spring", 4), texts_of(table, "heights", 2), false, {}, {}};
    answer.wire_rounded = table["wire_rounded"].value_or(false);
    if (const toml::table* breaks = table["breaks"].as_table())
        for (const auto& [rule, share] : *breaks)
            answer.breaks[std::string(rule.str())] = share.value<std::string>().value();
    if (!answer.breaks.empty()) answer.difference = text_of(table, "difference");
    return answer;
}

std::string own_wire_text(const toml::table& wire) {
    std::ostringstream text;
    text << wire;
    return "[[own_wire]]\nid = \"as published\"\ndensity = \"7850 kg/m3\"\ndiameters = \"0.1 mm .. 20 mm\"\n"
           "service_limit = \"100 °C\"\n" +
           text.str() + "\n";
}

Design read_design(const std::string& file, const toml::node& node, const toml::table& wires) {
    const toml::table& table = table_of(node, {"id", "source", "evidence", "wire", "requirement", "answers"});
    const toml::table* wire = wires[text_of(table, "wire")].as_table();
    if (wire == nullptr) fail(node, "no wire of that name");
    if (const std::set<std::string> known{"seen", "memory", "program"}; !known.contains(text_of(table, "evidence")))
        fail(node, "evidence is seen, memory or program");
    Design design{file,
                  text_of(table, "id"),
                  text_of(table, "source"),
                  text_of(table, "evidence"),
                  own_wire_text(*wire),
                  text_of(table, "requirement"),
                  {}};
    for (const toml::node& answer : *table["answers"].as_array()) design.answers.push_back(read_answer(answer));
    return design;
}

std::string requirement_text(const Design& design, const Answer& answer) {
    return "format = \"seatload requirement 1\"\n[space]\nseated_height = \"" + answer.heights[0] +
           "\"\nfull_travel_height = \"" + answer.heights[1] + "\"\n" + design.requirement + design.wire_text;
}

demand::Requirement read(const Design& design, const Answer& answer) {
    const auto found =
        io::read_requirement(requirement_text(design, answer), design.id, test::wires(), demand::Makers{});
    if (found) return *found;
    std::string problems = design.id + ": ";
    for (const Diagnostic& problem : found.error()) problems += problem.message + "; ";
    throw std::runtime_error(problems);
}

/// What a printed number may stand for, in so many steps each way; a whole number means itself.
struct Box {
    double smallest, largest, step;

    Box(const Printed& printed, bool is_rounded, double steps = 10.0) {
        const double half = is_rounded ? printed.half_unit : 0.0;
        smallest = printed.value - half;
        largest = printed.value + half;
        step = is_rounded ? half / steps : printed.value;
    }
};

bool has_decimals(const std::string& text) { return text.find('.') != std::string::npos; }

Printed length_of(const std::string& text) { return read_printed(&units::dimension_of<Length>(), text); }

demand::LengthRange range_of(const Box& box) { return {box.smallest * mm, box.largest * mm}; }

demand::Requirement with_grid(demand::Requirement requirement, const Answer& answer, bool in_a_box) {
    const auto box = [&](std::size_t which) {
        const std::string& text = answer.spring[which];
        return Box(which == 2 ? read_printed(nullptr, text) : length_of(text), in_a_box && has_decimals(text));
    };
    demand::Grid& grid = requirement.grid;
    grid.mean_diameter = range_of(box(1));
    grid.mean_diameter_step = box(1).step * mm;
    grid.total_coils = {box(2).smallest, box(2).largest};
    grid.total_coils_step = box(2).step;
    grid.free_length = range_of(box(3));
    grid.free_length_step = box(3).step * mm;
    const Box wire(length_of(answer.spring[0]), in_a_box && answer.wire_rounded, 50.0);
    for (double d = wire.smallest; d <= wire.largest + 1e-9; d += wire.step)
        requirement.wire.diameters.push_back(d * mm);
    return requirement;
}

}  // namespace

std::string designs_folder() { return std::string(SEATLOAD_SOURCE_DIR) + "/tests/published/designs"; }

std::vector<Design> read_designs() {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(designs_folder()))
        if (entry.path().extension() == ".toml" && entry.path().filename() != "accounts.toml")
            files.push_back(entry.path().filename().string());
    std::sort(files.begin(), files.end());
    std::vector<Design> designs;
    for (const std::string& file : files) {
        const toml::table root = toml::parse_file(designs_folder() + "/" + file);
        const toml::table& table = table_of(root, {"format_version", "wires", "design"});
        for (const toml::node& node : *table["design"].as_array())
            designs.push_back(read_design(file, node, *table["wires"].as_table()));
    }
    return designs;
}

demand::Requirement pose(const Design& design, const Answer& answer) {
    return with_grid(read(design, answer), answer, true);
}

demand::Requirement pose_exactly(const Design& design, const Answer& answer) {
    return with_grid(read(design, answer), answer, false);
}

}  // namespace seatload::published
