// SPDX-License-Identifier: MIT
#include "published/subject.hpp"

#include <toml++/toml.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <stdexcept>

namespace seatload::published {
namespace {

[[noreturn]] void fail(const toml::node& node, const std::string& message) {
    throw std::runtime_error("line " + std::to_string(node.source().begin.line) + ": " + message);
}

/// A table whose every key must be asked for: a mistyped key must not drop a check.
class Keys {
  public:
    Keys(const toml::node& node, std::set<std::string> known) : table_(table_of(node)) {
        for (const auto& [key, value] : table_)
            if (!known.contains(std::string(key.str()))) fail(value, "unknown key \"" + std::string(key.str()) + "\"");
    }
    const toml::node* find(std::string_view key) const { return table_.get(key); }
    std::string text(std::string_view key) const {
        const toml::node* node = find(key);
        if (node == nullptr) fail(table_, "no \"" + std::string(key) + "\"");
        return as_text(*node);
    }
    std::string text_or_empty(std::string_view key) const { return find(key) == nullptr ? std::string{} : text(key); }
    bool truth(std::string_view key) const {
        const toml::node* node = find(key);
        if (node == nullptr) fail(table_, "no \"" + std::string(key) + "\"");
        const auto value = node->value_exact<bool>();
        if (!value) fail(*node, "true or false is wanted");
        return *value;
    }
    static std::string as_text(const toml::node& node) {
        const auto value = node.value_exact<std::string>();
        if (!value || value->empty()) fail(node, "a text is wanted");
        return *value;
    }
    static const toml::table& table_of(const toml::node& node) {
        if (!node.is_table()) fail(node, "a table is wanted");
        return *node.as_table();
    }

  private:
    const toml::table& table_;
};

using Given = std::map<std::string, std::variant<double, std::string>>;

Given read_given(const toml::node* node) {
    Given given;
    if (node == nullptr) return given;
    for (const auto& [key, value] : Keys::table_of(*node)) {
        if (value.is_number())
            given[std::string(key.str())] = *value.value<double>();
        else
            given[std::string(key.str())] = Keys::as_text(value);
    }
    return given;
}

void state(Inputs& inputs, const Given& given) {
    for (const auto& [name, value] : given) std::visit([&, key = name](const auto& v) { inputs.state(key, v); }, value);
}

template <class F>
void for_each_table(const toml::node* node, F use) {
    if (node == nullptr) return;
    if (!node->is_array()) fail(*node, "a list is wanted");
    for (const toml::node& entry : *node->as_array()) use(entry);
}

Row read_row(const toml::node& node) {
    const Keys keys(node, {"output", "quantity", "expected", "given", "tolerance", "rounding", "rounded_up_to",
                           "disagrees", "added", "note"});
    Row row;
    row.output = keys.text_or_empty("output");
    row.quantity = keys.text("quantity");
    row.expected = keys.text("expected");
    row.given = read_given(keys.find("given"));
    row.tolerance = keys.text_or_empty("tolerance");
    row.rounded_up_to = keys.text_or_empty("rounded_up_to");
    row.note = keys.text_or_empty("note");
    row.added = keys.find("added") != nullptr && keys.truth("added");
    if (const std::string rounding = keys.text_or_empty("rounding"); !rounding.empty()) {
        if (rounding != "truncated") fail(node, "rounding is \"truncated\" or not written");
        row.rounding = Rounding::truncated;
    }
    if (const toml::node* disagrees = keys.find("disagrees")) {
        const Keys inside(*disagrees, {"residual", "reason"});
        row.disagrees = Disagreement{inside.text("residual"), inside.text("reason")};
    }
    return row;
}

Exception read_exception(const toml::node& node) {
    const Keys keys(node, {"output", "reason", "where"});
    Exception exception{keys.text("output"), keys.text_or_empty("reason"), keys.text_or_empty("where")};
    if (exception.reason.empty() == exception.where.empty()) fail(node, "either a reason or a place is wanted");
    return exception;
}

Case read_case(const toml::node& node, const std::map<std::string, Given>& springs) {
    const Keys keys(node,
                    {"id", "source", "evidence", "independent", "verdict", "spring", "inputs", "rows", "not_here"});
    Case read{keys.text("id"),
              keys.text("source"),
              keys.text("evidence"),
              keys.truth("independent"),
              keys.text_or_empty("verdict"),
              {},
              {},
              {}};
    if (const std::set<std::string> known{"seen", "memory", "derived"}; !known.contains(read.evidence))
        fail(node, "evidence is seen, memory or derived");
    if (const std::string spring = keys.text_or_empty("spring"); !spring.empty()) {
        if (!springs.contains(spring)) fail(node, "no spring is called " + spring);
        state(read.inputs, springs.at(spring));
    }
    try {
        state(read.inputs, read_given(keys.find("inputs")));
    } catch (const std::exception& problem) {
        fail(node, read.id + ": " + problem.what());
    }
    for_each_table(keys.find("rows"), [&](const toml::node& row) { read.rows.push_back(read_row(row)); });
    for_each_table(keys.find("not_here"),
                   [&](const toml::node& entry) { read.exceptions.push_back(read_exception(entry)); });
    return read;
}

}  // namespace

std::string values_folder() { return std::string(SEATLOAD_SOURCE_DIR) + "/tests/published/values"; }

std::vector<std::string> subject_files() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(values_folder()))
        if (entry.path().extension() == ".toml") names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

Subject read_subject(const std::string& file) {
    const toml::table root = toml::parse_file(values_folder() + "/" + file);
    const Keys keys(root, {"format_version", "subject", "tolerances", "springs", "case"});
    if (const toml::node* version = keys.find("format_version"); version == nullptr || version->value<int>() != 1)
        throw std::runtime_error(file + ": format_version = 1 is wanted");
    Subject subject{file, keys.text("subject"), {}, {}};
    if (const toml::node* tolerances = keys.find("tolerances"))
        for (const auto& [name, value] : Keys::table_of(*tolerances)) {
            const Keys one(value, {"relative", "reason"});
            const auto relative =
                one.find("relative") == nullptr ? std::nullopt : one.find("relative")->value<double>();
            if (!relative) fail(value, "relative is a number");
            subject.tolerances[std::string(name.str())] = {*relative, one.text("reason")};
        }
    std::map<std::string, Given> springs;
    if (const toml::node* table = keys.find("springs"))
        for (const auto& [name, value] : Keys::table_of(*table)) springs[std::string(name.str())] = read_given(&value);
    for_each_table(keys.find("case"),
                   [&](const toml::node& node) { subject.cases.push_back(read_case(node, springs)); });
    return subject;
}

}  // namespace seatload::published
