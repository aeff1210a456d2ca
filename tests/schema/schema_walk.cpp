// SPDX-License-Identifier: MIT
#include "schema_walk.hpp"

#include <algorithm>
#include <map>

namespace seatload::test {
namespace {

bool is_table(const Json& property) { return property.value("type", Json()) == "object"; }
bool is_list_of_tables(const Json& property) {
    return property.value("type", Json()) == "array" && property.contains("items") && property["items"].is_object() &&
           is_table(property["items"]);
}
bool is_choice_of_tables(const Json& property) {
    return property.contains("anyOf") && std::all_of(property["anyOf"].begin(), property["anyOf"].end(),
                                                     [](const Json& each) { return is_table(each); });
}

void walk(const TableAt& table, const std::function<void(const TableAt&)>& look) {
    look(table);
    for (const auto& [key, property] : (*table.schema)["properties"].items()) {
        TableAt inside{table.kind, table.path.empty() ? key : table.path + '.' + key, table.listed, 0, &property};
        if (is_table(property)) walk(inside, look);
        if (is_list_of_tables(property)) {
            inside.listed.push_back(inside.path);
            inside.schema = &property["items"];
            walk(inside, look);
        }
        if (is_choice_of_tables(property))
            for (std::size_t i = 0; i < property["anyOf"].size(); ++i) {
                inside.branch = i;
                inside.schema = &property["anyOf"][i];
                walk(inside, look);
            }
    }
}

// Lines without which a reader would not come to ask for the rest, by kind, path and branch; and where one key hangs on
// another, by that key.
const std::map<std::string, std::vector<std::string>> kBefore{
    {"samples/pieces", {"table = \"x.csv\""}},
    {"samples/pieces.rows", {"columns = [\"piece\", \"seated_load\"]"}},
    {"samples/pieces.columns", {"rows = [[\"1\", \"5 N\"]]"}},
    {"readings/spring.columns", {"readings = [[\"10 mm\", \"5 g\"]]"}},
    {"readings/load_path.columns", {"block = [[\"0 mm\", \"5 g\"], [\"1 mm\", \"9 g\"]]"}},
    {"lot/characteristic", {"of = \"seated_load\""}},
    {"wire/holding", {"grade = \"EN10270-1-SH\""}},
    {"wire/grade.strength", {"A = \"2000 MPa\"", "m = 0.1"}},
    {"wire/grade.strength#1", {"Rm = \"2000 MPa\""}},
    {"wire/grade.strength#2", {"lookup = \"step\"", "rows = [[\"1 mm\", \"2000 MPa\"]]"}},
};

std::vector<std::string> before(const TableAt& table, const std::string& key) {
    const std::string place = table.kind + '/' + table.path;
    if (const auto found = kBefore.find(place + '.' + key); found != kBefore.end()) return found->second;
    const auto found = kBefore.find(place + (table.branch > 0 ? '#' + std::to_string(table.branch) : ""));
    return found == kBefore.end() ? std::vector<std::string>{} : found->second;
}

std::string head_of(const std::string& kind) {
    if (kind == "wire") return "format_version = 1\n";
    if (kind == "sampling" || kind == "tolerances") return "";
    return "format = \"seatload " + kind + " 1\"\n";
}

}  // namespace

void each_table(const std::string& kind, const Json& schema, const std::function<void(const TableAt&)>& look) {
    walk({kind, "", {}, 0, &schema}, look);
}

bool holds_tables(const Json& property) {
    return is_table(property) || is_list_of_tables(property) || is_choice_of_tables(property);
}

Draft draft_with(const TableAt& table, const std::string& key, const std::string& lines) {
    std::string text = key.starts_with("format") ? "" : head_of(table.kind);
    for (const std::string& path : table.listed) text += "[[" + path + "]]\n";
    if (!table.path.empty() && (table.listed.empty() || table.listed.back() != table.path))
        text += '[' + table.path + "]\n";
    for (const std::string& line : before(table, key))
        if (!line.starts_with(key + " =")) text += line + '\n';
    const auto line = static_cast<unsigned>(std::count(text.begin(), text.end(), '\n')) + 1;
    return {text + lines + '\n', line};
}

}  // namespace seatload::test
