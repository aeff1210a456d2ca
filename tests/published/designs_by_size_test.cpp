// SPDX-License-Identifier: MIT
// Springs that books design, posed as requirements and looked for by our search: the printed answer is among those that
// fit, or breaks just the limits that tests/published/designs names, by the share it names, for the reason it gives.
#include <toml++/toml.h>

#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>

#include "published/designs.hpp"
#include "support/check.hpp"

using namespace seatload;
using namespace seatload::published;

namespace {

template <class Use>
void for_each_answer(Use use) {
    for (const Design& design : read_designs())
        for (const Answer& answer : design.answers) {
            CAPTURE(design.file, design.id, answer.pose, answer.spring);
            use(design, answer);
        }
}

/// How far beyond a limit the printed answer itself lies, as a share of the limit.
double excess(const sizing::Space& printed, const check::Rule& rule) {
    const check::Coil coil(printed.demand, printed.wires.at(0).numbers, test::tolerances(),
                           printed.wires.at(0).mean_diameters.at(0), printed.ends.at(0), printed.total_coils.at(0));
    const check::Measure measure = rule.measure(coil, printed.free_lengths.at(0));
    return (measure.value - measure.limit) / measure.limit;
}

/// The limits that no spring of the space keeps.
std::set<std::string> hopeless(const sizing::Space& space) {
    std::set<std::string> ids;
    for (const check::Rule& rule : check::rules())
        if (!sizing::any_fit(space, test::tolerances(), {}, sizing::rule_called(rule.id)))
            ids.insert(std::string(rule.id));
    return ids;
}

std::set<std::string> rules_told(const Answer& answer) {
    std::set<std::string> ids;
    for (const auto& [rule, share] : answer.breaks) ids.insert(rule);
    return ids;
}

sizing::RuleSet all_but(const std::set<std::string>& ids) {
    sizing::RuleSet rules = sizing::kAllRules;
    for (const std::string& id : ids) rules &= ~sizing::rule_called(id);
    return rules;
}

toml::table accounts() { return toml::parse_file(designs_folder() + "/accounts.toml"); }

std::multiset<std::string> ids_in(const toml::table& table) {
    std::multiset<std::string> ids;
    for (const toml::node& id : *table["ids"].as_array()) ids.insert(id.value<std::string>().value());
    return ids;
}

}  // namespace

TEST_CASE("every published design that no limit of ours refuses is among the springs that fit") {
    int found = 0;
    for_each_answer([&](const Design& design, const Answer& answer) {
        if (!answer.breaks.empty()) return;
        const sizing::Space space = sizing::search_space(pose(design, answer), test::wires());
        CAPTURE(hopeless(space));
        CHECK(sizing::search(space, test::tolerances()).fit > 0);
        ++found;
    });
    CHECK(found >= 25);
}

TEST_CASE("a published design that does not fit breaks the limits that are told and no others") {
    for_each_answer([&](const Design& design, const Answer& answer) {
        if (answer.breaks.empty()) return;
        const sizing::Space space = sizing::search_space(pose(design, answer), test::wires());
        CHECK(sizing::search(space, test::tolerances()).fit == 0);
        CHECK(hopeless(space) == rules_told(answer));
        CHECK(sizing::any_fit(space, test::tolerances(), {}, all_but(rules_told(answer))).has_value());
        CHECK(answer.difference.size() > 20);
    });
}

TEST_CASE("a published design that does not fit breaks its limits by as much as is told") {
    for_each_answer([&](const Design& design, const Answer& answer) {
        const sizing::Space printed = sizing::search_space(pose_exactly(design, answer), test::wires());
        REQUIRE(printed.size() == 1);
        for (const check::Rule& rule : check::rules()) {
            const auto told = answer.breaks.find(std::string(rule.id));
            if (told == answer.breaks.end()) continue;
            CAPTURE(rule.id);
            const bool above = told->second.front() == '+';
            const Printed share = read_printed(&units::dimension_of<Share>(), told->second.substr(above ? 1 : 0));
            CHECK_THAT(excess(printed, rule), WithinAbs(share.value, share.half_unit));
        }
    });
}

TEST_CASE("every published design is posed, checked elsewhere by name, or left out with a reason") {
    const toml::table root = accounts();
    std::map<std::string, int> times;
    std::set<std::string> posed;
    for (const Design& design : read_designs()) posed.insert(design.id);
    for (const std::string& id : posed) ++times[id];
    for (const toml::node& group : *root["left_out"].as_array()) {
        CHECK(group.as_table()->at("reason").value<std::string>().value().size() > 20);
        for (const std::string& id : ids_in(*group.as_table())) ++times[id];
    }
    for (const toml::node& group : *root["checked_in"].as_array()) {
        std::ifstream stream(designs_folder() + "/../" + group.as_table()->at("file").value<std::string>().value());
        std::ostringstream text;
        text << stream.rdbuf();
        for (const std::string& id : ids_in(*group.as_table())) {
            ++times[id];
            CHECK_THAT(text.str(), ContainsSubstring(id));
        }
    }
    const auto ids = ids_in(root);
    CHECK(ids.size() == 32);  // of the kinds design, table, envelope and optimum in the collection
    for (const std::string& id : ids) {
        CAPTURE(id);
        CHECK(times[id] == 1);
    }
    CHECK(times.size() == ids.size());
}

TEST_CASE("every published design is one of the collection of examples") {
    const toml::table examples = toml::parse_file(designs_folder() + "/../accounts.toml");
    for (const std::string& id : ids_in(accounts())) {
        CAPTURE(id);
        CHECK(examples["examples"][id]);
    }
}
