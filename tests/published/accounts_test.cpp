// SPDX-License-Identifier: MIT
// Nothing of the two collections is dropped silently: every id is a row, or checked elsewhere by name, or left out with
// a reason, and exactly one of these. See accounts.toml.
#include <toml++/toml.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "published/subject.hpp"
#include "support/check.hpp"

using namespace seatload::published;

namespace {

using Names = std::vector<std::string>;

std::string folder() { return std::string(SEATLOAD_SOURCE_DIR) + "/tests/published/"; }

std::string text_of(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    REQUIRE(stream);
    std::ostringstream bytes;
    bytes << stream.rdbuf();
    return bytes.str();
}

Names names_in(const toml::node_view<const toml::node>& list) {
    Names names;
    REQUIRE(list.is_array());
    for (const toml::node& entry : *list.as_array()) names.push_back(entry.value<std::string>().value());
    return names;
}

struct Accounts {
    Names check_values;
    std::map<std::string, Names> examples;  ///< the outputs of each
    std::map<std::string, std::string> left_out;
    std::map<std::string, std::string> checked_in;
};

template <class F>
void for_each_group(const toml::table& root, const char* name, F use) {
    for (const toml::node& group : *root[name].as_array()) use(toml::node_view<const toml::node>(group));
}

void add_all(std::map<std::string, std::string>& to, const Names& ids, const std::string& what) {
    for (const std::string& id : ids) {
        INFO(id << " stands twice");
        CHECK(to.emplace(id, what).second);
    }
}

Accounts read_accounts() {
    const toml::table root = toml::parse_file(folder() + "accounts.toml");
    const toml::table& constant = root;
    Accounts accounts;
    accounts.check_values = names_in(constant["check_values"]);
    for (const auto& [id, outputs] : *constant["examples"].as_table())
        accounts.examples[std::string(id.str())] = names_in(toml::node_view<const toml::node>(outputs));
    for_each_group(constant, "left_out", [&](const auto& group) {
        add_all(accounts.left_out, names_in(group["ids"]), group["reason"].template value<std::string>().value());
    });
    for_each_group(constant, "checked_in", [&](const auto& group) {
        add_all(accounts.checked_in, names_in(group["ids"]), group["file"].template value<std::string>().value());
    });
    return accounts;
}

std::vector<Case> all_cases() {
    std::vector<Case> all;
    for (const std::string& file : subject_files())
        for (Case& one : read_subject(file).cases) all.push_back(std::move(one));
    return all;
}

/// The outputs of a case: rows that are not its own additions, and those named as left out or checked elsewhere.
std::multiset<std::string> outputs_of(const Case& one) {
    std::multiset<std::string> outputs;
    for (const Row& row : one.rows)
        if (!row.added) outputs.insert(row.output);
    for (const Exception& exception : one.exceptions) outputs.insert(exception.output);
    return outputs;
}

bool only_added(const Case& one) {
    return std::all_of(one.rows.begin(), one.rows.end(), [](const Row& row) { return row.added; });
}

}  // namespace

TEST_CASE("the collections have the size they had when they were taken over") {
    const Accounts accounts = read_accounts();
    CHECK(accounts.check_values.size() == 211);
    CHECK(std::set<std::string>(accounts.check_values.begin(), accounts.check_values.end()).size() == 211);
    CHECK(accounts.examples.size() == 59);
}

TEST_CASE("every id of the collections is accounted for exactly once") {
    const Accounts accounts = read_accounts();
    std::map<std::string, int> times;
    for (const Case& one : all_cases()) ++times[one.id];
    for (const auto& [id, reason] : accounts.left_out) ++times[id];
    for (const auto& [id, file] : accounts.checked_in) ++times[id];
    Names ids = accounts.check_values;
    for (const auto& [id, outputs] : accounts.examples) ids.push_back(id);
    for (const std::string& id : ids) {
        INFO(id);
        CHECK(times[id] == 1);
    }
}

TEST_CASE("every published case is one of the collections or says that it was added") {
    const Accounts accounts = read_accounts();
    const std::set<std::string> values(accounts.check_values.begin(), accounts.check_values.end());
    for (const Case& one : all_cases()) {
        INFO(one.id);
        CHECK((values.contains(one.id) || accounts.examples.contains(one.id) || only_added(one)));
    }
}

TEST_CASE("every number of an example is checked, or named with the reason why not") {
    const Accounts accounts = read_accounts();
    for (const Case& one : all_cases()) {
        if (!accounts.examples.contains(one.id)) continue;
        const Names& outputs = accounts.examples.at(one.id);
        INFO(one.id);
        CHECK(outputs_of(one) == std::multiset<std::string>(outputs.begin(), outputs.end()));
    }
}

TEST_CASE("a test that is named for an example names it back") {
    for (const auto& [id, file] : read_accounts().checked_in) {
        INFO(id << " in " << file);
        CHECK_THAT(text_of(folder() + file), ContainsSubstring(id));
    }
    for (const Case& one : all_cases())
        for (const Exception& exception : one.exceptions)
            if (!exception.where.empty()) {
                INFO(one.id << " " << exception.output);
                CHECK_THAT(text_of(folder() + exception.where),
                           ContainsSubstring(one.id) && ContainsSubstring(exception.output));
            }
}

TEST_CASE("every known disagreement and every wider tolerance says why") {
    for (const std::string& file : subject_files()) {
        const Subject subject = read_subject(file);
        for (const auto& [name, tolerance] : subject.tolerances) {
            INFO(file << " " << name);
            CHECK(tolerance.reason.size() > 20);
        }
        for (const Case& one : subject.cases)
            for (const Row& row : one.rows) {
                INFO(file << " " << one.id);
                CHECK((!row.disagrees || row.disagrees->reason.size() > 20));
            }
    }
}
