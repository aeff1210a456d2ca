// SPDX-License-Identifier: MIT
// The schemas and the readers asked the same questions: which keys a table has, which must be there, and what each
// takes. What the readers know is read off their complaints.
#include <algorithm>
#include <regex>
#include <set>

#include <seatload/core/text.hpp>
#include <support/check.hpp>
#include <support/json_schema.hpp>

#include "file_reader.hpp"
#include "kinds.hpp"
#include "schema_walk.hpp"

using namespace seatload;
using namespace seatload::test;

namespace {

const std::string kNoKey = "zzqyx";

/// The reader of a table: states of a spec have their own.
std::string reader_of(const TableAt& table) {
    return table.path.starts_with("state") && table.kind == "spec" ? "states" : table.kind;
}

void each_kind(const std::function<void(const TableAt&)>& look) {
    for (const FileKind& kind : file_kinds())
        if (kind.name != "wording") each_table(kind.name, kind.schema, look);
}

std::string shown(const TableAt& table) {
    return table.kind + " [" + table.path + (table.branch > 0 ? " #" + std::to_string(table.branch) : "") + "]";
}

std::set<std::string> keys_of_schema(const TableAt& table) {
    std::set<std::string> keys;
    for (const auto& [key, property] : (*table.schema)["properties"].items()) keys.insert(key);
    return keys;
}

/// The keys the reader lists when it meets one it does not know; nothing when it lets any pass.
std::optional<std::set<std::string>> keys_of_reader(const TableAt& table) {
    constexpr std::string_view kList = "known here: ";
    for (const Diagnostic& d : complaints_of(reader_of(table), draft_with(table, kNoKey, kNoKey + " = 1").text)) {
        if (d.message.find("unknown key") == std::string::npos || d.message.find(kNoKey) == std::string::npos) continue;
        std::set<std::string> keys;
        if (!d.hint.starts_with(kList)) return keys;
        for (const std::string_view key : split(std::string_view(d.hint).substr(kList.size()), ','))
            keys.emplace(trim(key));
        return keys;
    }
    return std::nullopt;
}

/// The keys of the table that the reader misses in an empty one.
std::set<std::string> missed_by_reader(const TableAt& table) {
    const std::string leaf = "([A-Za-z0-9_]+)";
    const std::string start = table.path.empty() ? "" : table.path + "\\.";
    std::string below;  // the path from the member of a list, which messages name otherwise
    const std::string list = table.listed.empty() ? "" : table.listed.back();
    const std::string member = list.substr(list.rfind('.') + 1);  // of the whole text when there is no point
    if (!table.listed.empty() && table.listed.back() != table.path)
        below = table.path.substr(table.listed.back().size() + 1) + "\\.";
    const std::regex key(table.listed.empty()
                             ? "^" + start + leaf + " is missing$"
                             : "^" + below + leaf + " of the first " + member + "(?: .*)? is missing$");
    const std::regex inside("^the table \\[" + start + leaf + "\\] is missing$");
    std::set<std::string> missed;
    // A complaint that names a key which is not there.
    const std::regex named(table.listed.empty() ? "^" + start + leaf + ": .*$"
                                                : "^" + below + leaf + " of the first " + member + "(?: [^:]*)?: .*$");
    const std::regex held("^the (?:file|reply) holds no " + leaf + "$");
    for (const Diagnostic& d :
         complaints_of(reader_of(table), draft_with(table, table.path.empty() ? "format" : "", "").text)) {
        std::smatch found;
        if (std::regex_match(d.message, found, key) || std::regex_match(d.message, found, inside) ||
            std::regex_match(d.message, found, named) ||
            (table.path.empty() && std::regex_match(d.message, found, held)))
            missed.insert(found[1]);
    }
    return missed;
}

/// Keys of which one is wanted, in groups.
std::vector<std::set<std::string>> choices(const TableAt& table) {
    std::vector<std::set<std::string>> groups;
    for (const Json& group : table.schema->value("allOf", Json::array())) {
        groups.emplace_back();
        for (const Json& each : group.value("oneOf", group.value("anyOf", Json::array())))
            for (const Json& key : each.value("required", Json::array())) groups.back().insert(key.get<std::string>());
    }
    return groups;
}

/// Values of all sorts, as they stand in a file.
const std::vector<std::string> kValues{
    "3",
    "2.5",
    "-1",
    "true",
    "\"\"",
    "\" \"",
    "\"plenty of nonsense\"",
    "\"5\"",
    "\"5.5\"",
    "\"5 N\"",
    "\"5 N .. 6 N\"",
    "\"at least 5 N\"",
    "\"at most 5 N\"",
    "\"5 N ±10 %\"",
    "\"5 N +1 N -0.5 N\"",
    "\"5 mm\"",
    "\"1/4 in\"",
    "\"1 1/2 in\"",
    "\" .5mm \"",
    "\"5e-1 thou\"",
    "\"5 mm .. 6 mm\"",
    "\"5mm..6mm\"",
    "\"at most 5 mm\"",
    "\"at least 5 mm\"",
    "\"≥5 mm\"",
    "\"<= 5 mm\"",
    "\"5 mm ±0.1 mm\"",
    "\"5 mm +/- 1 %\"",
    "\"5 mm +0.1 mm\"",
    "\"±0.1 mm\"",
    "\"-5 mm\"",
    "\"5,5 mm\"",
    "\"5 inch\"",
    "\"mm\"",
    "\"5 mm and more\"",
    "\"5 N/mm\"",
    "\"5 N/mm ±10 %\"",
    "\"2000 MPa\"",
    "\"2000 MPa .. 2100 MPa\"",
    "\"80 GPa\"",
    "\"2 bar\"",
    "\"2 bar .. 3 bar\"",
    "\"0 psi .. 9 psi\"",
    "\"10 %\"",
    "\"±0.1 %\"",
    "\"60 % .. 100 %\"",
    "\"0.1 .. 0.5\"",
    "\"5 .. 6\"",
    "\"5 ±0.5\"",
    "\"15 deg\"",
    "\"15 deg .. 16 deg\"",
    "\"5 g\"",
    "\"±1 g\"",
    "\"5 lb\"",
    "\"5 s\"",
    "\"5 s .. 6 s\"",
    "\"5 Hz\"",
    "\"20 °C\"",
    "\"20 °C ±2 °C\"",
    "\"293 K\"",
    "\"-20 °C\"",
    "\"50 mm2\"",
    "\"2 N m\"",
    "\"400 mPa s\"",
    "\"7850 kg/m3\"",
    "\"2026-11-25\"",
    "\"2026-13-01\"",
    "\"25.11.2026\"",
    "\"A\"",
    "\"EUR\"",
    "\"4 weeks\"",
    "\"15 working days\"",
    "\"2.40\"",
    "\"2.40 EUR\"",
    "\"closed\"",
    "\"closed and ground\"",
    "\"standard\"",
    "\"memory\"",
    "\"torsional yield\"",
    "\"accept\"",
    "\"draft\"",
    "\"trial\"",
    "\"handbook\"",
    "[]",
    "[\"5 mm\"]",
    "[\"A\", \"B\"]",
    "[3, 4]",
    "[[\"5 mm\", \"5 N\"]]",
    "[[\"5 mm\", \"5 N\"], [\"6 mm\", \"6 N\"]]",
    "[[\"5 mm\"]]",
    "[[\"5 mm\", \"5 N\", \"5 N\", \"5 N\", \"x\", \"y\", \"z\"]]",
    "[[true, true]]",
    "[[\"1\", \"5 N\"]]",
    "{ x = 1 }",
};

bool is_refused(const TableAt& table, const std::string& key, const std::string& value, std::string& why) {
    const Draft draft = draft_with(table, key, key + " = " + value);
    for (const Diagnostic& d : complaints_of(reader_of(table), draft.text)) {
        if (d.severity != Severity::error || d.place.line != draft.line) continue;
        why = d.message;
        return true;
    }
    return false;
}

/// Complaints that weigh a value rather than its form, and those of what lies elsewhere.
bool is_of_sense(const std::string& message) {
    static const std::regex kSense(
        "must be |unknown wire grade|unknown maker|unknown series|upside down|nothing has the name|no wire grade is|"
        "no plan has|for sampling|which of|no such day|is not one file|lie in the folder|lies in the folder|\\.csv|"
        "must rise|must not|is known|no coil of this wire|not below|stands here twice|lacks|x\\.toml|cannot be|"
        "is above|no such file|numbers are wanted that rise|needs letters or digits|the letter of the alternative|no "
        "allowed "
        "wire|stands without|the first state is always|the same both ways|bears_on_pan does not|this row has|"
        "not among the sizes|the identity states no revision|the last revision listed|was not enquired|no SHA-256|no "
        "name of a "
        "file|two rows at least|two limits");
    return std::regex_search(message, kSense);
}

/// Keys whose value is weighed by other keys: the columns of rows, the limits a source may be of, and the unit of what
/// was measured; and the head, without which files pass, too.
bool hangs_on_others(const TableAt& table, const std::string& key) {
    if (key == "format" || key == "readings" || key == "block") return true;
    if (table.kind == "maker") return table.path == "evidence" || table.path == "sources";
    return table.kind == "lot" && table.path == "characteristic" &&
           std::set<std::string>{"at_least", "at_most", "uncertainty", "mean", "deviation"}.contains(key);
}

}  // namespace

TEST_CASE("A schema knows exactly the keys its reader knows") {
    // Tables whose keys are the user's own, or hang on other tables.
    const std::set<std::string> open{"readings [heights]", "maker [evidence]", "maker [sources]"};
    std::size_t tables = 0;
    each_kind([&](const TableAt& table) {
        if (open.contains(shown(table))) return;
        INFO(shown(table));
        const auto known = keys_of_reader(table);
        REQUIRE(known);
        std::string found, wanted;
        for (const std::string& key : keys_of_schema(table)) found += key + ' ';
        for (const std::string& key : *known) wanted += key + ' ';
        CHECK(found == wanted);
        ++tables;
    });
    CHECK(tables > 90);
}

TEST_CASE("A schema wants exactly the keys its reader wants") {
    each_kind([&](const TableAt& table) {
        INFO(shown(table));
        std::set<std::string> wanted;
        for (const Json& key : table.schema->value("required", Json::array())) wanted.insert(key.get<std::string>());
        const std::set<std::string> missed = missed_by_reader(table);
        const auto groups = choices(table);
        const std::string text = draft_with(table, "", "").text;
        for (const std::string& key : missed) {
            // Wanted where other tables do not state it: the schema of the whole file says so.
            if (key == "stroke" || key == "wire") continue;
            INFO(key);
            CHECK((wanted.contains(key) ||
                   std::any_of(groups.begin(), groups.end(), [&](const auto& group) { return group.contains(key); })));
        }
        for (const std::string& key : wanted) {
            if (text.find('\n' + key + " = ") != std::string::npos) continue;
            INFO(key << " is wanted by the schema alone");
            CHECK(missed.contains(key));
        }
    });
}

TEST_CASE("A schema takes of each key what its reader takes") {
    std::size_t asked = 0;
    for (const FileKind& kind : file_kinds()) {
        if (kind.name == "wording") continue;
        each_table(kind.name, kind.schema, [&](const TableAt& table) {
            for (const auto& [key, property] : (*table.schema)["properties"].items()) {
                if (holds_tables(property) || hangs_on_others(table, key)) continue;
                const Json alone{{"definitions", kind.schema.value("definitions", Json::object())},
                                 {"allOf", {property}}};
                const JsonSchema schema(nlohmann::json::parse(alone.dump()));
                for (const std::string& value : kValues) {
                    std::string why;
                    const bool refused = is_refused(table, key, value, why);
                    const bool taken = schema.accepts(toml_as_json("x = " + value)["x"]);
                    ++asked;
                    if (refused != taken || (refused && taken && is_of_sense(why))) continue;
                    INFO(shown(table) << ' ' << key << " = " << value << "\nreader: " << (refused ? why : "takes it"));
                    CHECK(refused != taken);
                }
            }
        });
    }
    CHECK(asked > 20'000);
}
