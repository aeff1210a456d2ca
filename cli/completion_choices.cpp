// SPDX-License-Identifier: MIT
#include <cli/completion_choices.hpp>

#include <algorithm>
#include <filesystem>

#include <seatload/core/assert.hpp>
#include <seatload/core/embedded.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/sizing/what_if_number.hpp>

namespace seatload::cli {
namespace {

wire::Catalogue builtin_wires() {
    auto catalogue = io::builtin_catalogue();
    SEATLOAD_ASSERT(catalogue.has_value());
    return std::move(catalogue).value();
}

/// The kinds of file that `start` writes: one a file built in.
std::vector<std::string> kinds_of_start() {
    std::vector<std::string> kinds;
    for (const std::string_view name : embedded_names("templates/start/"))
        kinds.push_back(std::filesystem::path(name).stem().string());
    return kinds;
}

/// The numbers that can be varied, as they begin the text: "space.bore=".
std::vector<std::string> what_if_starts() {
    std::vector<std::string> starts;
    for (const sizing::WhatIfNumber& number : sizing::what_if_numbers()) starts.push_back(number.key + '=');
    return starts;
}

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> set) {
    return std::find(set.begin(), set.end(), word) != set.end();
}

bool is_of_specs(std::string_view command) { return command == "specs" || command.starts_with("specs "); }

}  // namespace

Choices choices_of(std::string_view command, const OptionEntry& option) {
    const std::string& name = option.names.back();
    if (name == "--language") return {Choices::Kind::words, io::builtin_languages()};
    if (name == "--units") return {Choices::Kind::words, {"metric", "inch"}};
    if (name == "--paper") return {Choices::Kind::words, {"a4", "letter"}};
    if (name == "--series") return {Choices::Kind::words, builtin_wires().series_ids()};
    if (name == "--what-if") return {Choices::Kind::words, what_if_starts()};
    if (option.value == "STATE")
        return {Choices::Kind::words, {"draft", "trial", "approved", "superseded", "withdrawn"}};
    if (option.value == "GRADE") return {Choices::Kind::words, builtin_wires().ids()};
    if (option.value == "FOLDER") return {Choices::Kind::folder, {}};
    if (name == "--keep") return {Choices::Kind::file, {}};  // evidence may be anything
    if (option.value == "FILE") return {Choices::Kind::file, {".toml"}};
    if (option.value == "SPEC" && is_of_specs(command)) return {Choices::Kind::kept_spec, {".toml"}};
    return {};
}

Choices choices_of(std::string_view command, const ArgumentEntry& argument) {
    if (argument.name == "GRADE") return {Choices::Kind::words, builtin_wires().ids()};
    if (command == "start") return {Choices::Kind::words, kinds_of_start()};
    if (argument.name == "SPEC" && is_of_specs(command)) return {Choices::Kind::kept_spec, {".toml"}};
    if (argument.name == "ENQUIRY" || command == "sheet") return {Choices::Kind::file, {".toml", ".pdf"}};
    if (is_one_of(argument.name, {"FILE", "SPEC", "READINGS", "SAMPLES", "REQUIREMENT", "PLUNGER", "REPLY"}))
        return {Choices::Kind::file, {".toml"}};
    return {};
}

}  // namespace seatload::cli
