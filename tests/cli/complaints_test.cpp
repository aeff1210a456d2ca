// SPDX-License-Identifier: MIT
// That each kind of complaint has a name, a meaning, and an example whose exact text a test expects.
#include <algorithm>
#include <filesystem>
#include <map>
#include <regex>
#include <set>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/complaint_meaning.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "complaint_examples.hpp"
#include "complaints_page.hpp"

using namespace seatload;
namespace fs = std::filesystem;

namespace {

const fs::path kSources = SEATLOAD_SOURCE_DIR;

std::set<std::string> listed_ids() {
    std::set<std::string> ids;
    for (const io::ComplaintMeaning& each : io::complaint_meanings()) ids.insert(each.id);
    return ids;
}

/// The names in the sources, each with a file that uses it.
std::map<std::string, std::string> used_ids() {
    const std::regex name("\"([^\"]*)\"_id");
    std::map<std::string, std::string> ids;
    for (const char* folder : {"lib/seatload", "cli"})
        for (const auto& entry : fs::recursive_directory_iterator(kSources / folder)) {
            const std::string extension = entry.path().extension().string();
            if ((extension != ".cpp" && extension != ".hpp") || entry.path().filename() == "diagnostic.hpp") continue;
            const std::string text = test::bytes_of(entry.path());
            for (std::sregex_iterator found(text.begin(), text.end(), name), end; found != end; ++found)
                ids.emplace((*found)[1], entry.path().filename().string());
        }
    return ids;
}

}  // namespace

TEST_CASE("The names of complaints in the sources and in the list are the same") {
    const auto listed = listed_ids();
    const auto used = used_ids();
    CHECK(listed.size() >= 100);
    for (const auto& [id, file] : used) {
        INFO(id << " in " << file);
        CHECK(listed.contains(id));
    }
    for (const std::string& id : listed) {
        INFO(id);
        CHECK(used.contains(id));
    }
}

TEST_CASE("The list of complaints is in the order of the alphabet, each with one sentence to its name") {
    const auto all = io::complaint_meanings();
    CHECK(std::is_sorted(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
    for (const io::ComplaintMeaning& each : all) {
        INFO(each.id);
        CHECK(is_diagnostic_id(each.id));
        CHECK(each.meaning.ends_with('.'));
        CHECK(each.meaning.size() >= 40);
    }
}

TEST_CASE("For each kind of complaint some test expects an exact text") {
    std::set<std::string> shown;
    for (const test::ComplaintExample& example : test::complaint_examples(kSources)) shown.insert(example.id);
    for (const std::string& id : listed_ids()) {
        INFO(id);
        CHECK(shown.contains(id));
    }
}

TEST_CASE("No test expects a complaint without a name") {
    std::size_t complaints = 0;
    for (const auto& entry : fs::recursive_directory_iterator(kSources / "tests" / "bad_input"))
        if (entry.path().extension() == ".expected")
            for (const test::Lines& answer : test::complaints_in(test::lines_of(test::bytes_of(entry.path())))) {
                INFO(entry.path().filename().string() << ": " << answer.front());
                CHECK(listed_ids().contains(test::id_of(answer)));
                ++complaints;
            }
    CHECK(complaints > 250);
}

TEST_CASE("The manual's page on complaints is what would be written now") {
    const std::string page = test::bytes_of(kSources / "cli" / "manual" / "complaints.md");
    INFO("build the target complaints_manual to write it anew, and read the difference");
    CHECK(page == test::complaints_page(kSources));
}
