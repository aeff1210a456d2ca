// SPDX-License-Identifier: MIT
#include "json_check.hpp"

#include <algorithm>
#include <map>

#include <support/json_schema.hpp>
#include <support/scratch_folder.hpp>

namespace seatload::test {
namespace {

/// "size", or "specs-find"; "version" when it is --version that is asked for.
std::string name_of(const Lines& words) {
    const auto is_command = [](const std::string& word) { return !word.starts_with('-'); };
    const auto command = std::find_if(words.begin() + 1, words.end(), is_command);
    if (command == words.end()) return "version";
    const auto action = std::find_if(command + 1, words.end(), is_command);
    return *command == "specs" && action != words.end() ? "specs-" + *action : *command;
}

}  // namespace

Lines schema_faults(const Lines& words, const std::string& printed, const std::filesystem::path& schemas) {
    if (std::find(words.begin(), words.end(), "--json") == words.end()) return {};
    if (!printed.starts_with('{') && !printed.starts_with('[')) return {};
    const std::filesystem::path path = schemas / (name_of(words) + ".output.json");
    if (!std::filesystem::exists(path)) return {"no schema " + path.filename().string()};
    const nlohmann::json value = nlohmann::json::parse(printed, nullptr, false);
    if (value.is_discarded()) return {"no JSON"};
    return JsonSchema(nlohmann::json::parse(bytes_of(path))).faults(value);
}

}  // namespace seatload::test
