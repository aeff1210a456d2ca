// SPDX-License-Identifier: MIT
#include "complaints_page.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include <seatload/io/complaint_meaning.hpp>

#include "complaint_examples.hpp"

namespace seatload::test {
namespace {

constexpr const char* kHead =
    "# What the program complains of\n"
    "\n"
    "Behind each complaint stands its name in brackets. `seatload help NAME` says what is told here of that name: what "
    "it\n"
    "means and what to do. Wording may change from one version to the next, a name does not.\n"
    "\n"
    "Each example is a wrong file or a command of the program's own tests, with the exact answer. Files lie in the "
    "folder\n"
    "of the sources. (Written by the target `complaints_manual` from `lib/data/complaints.toml` and the tests.)\n";

enum class Kind { file, command, test };

Kind kind_of(const ComplaintExample& example) {
    if (example.cause.starts_with("$ ")) return Kind::command;
    return example.cause == example.path ? Kind::file : Kind::test;
}

/// Files and commands show best what a complaint is about, and best where it comes alone, with little to read.
bool shows_better(const ComplaintExample& one, const ComplaintExample& other) {
    const auto rank = [](const ComplaintExample& e) {
        return std::tuple(kind_of(e) == Kind::test, e.company > 1, kind_of(e), e.answer.size(), e.path, e.cause);
    };
    return rank(one) < rank(other);
}

std::string example_text(const ComplaintExample& example) {
    const Kind kind = kind_of(example);
    std::string text = "```text\n" + (kind == Kind::command ? example.cause + '\n' : "");
    text += text_of(example.answer) + "```\n";
    if (kind == Kind::file) return '`' + example.path + "`:\n\n" + text;
    if (kind == Kind::test) return "A test (" + example.cause + ", `" + example.path + "`) is told:\n\n" + text;
    return text;
}

}  // namespace

std::string complaints_page(const std::filesystem::path& sources) {
    std::map<std::string, ComplaintExample> best;
    for (const ComplaintExample& example : complaint_examples(sources)) {
        const auto [place, is_new] = best.try_emplace(example.id, example);
        if (!is_new && shows_better(example, place->second)) place->second = example;
    }
    std::string page = kHead;
    for (const io::ComplaintMeaning& complaint : io::complaint_meanings()) {
        page += "\n## " + complaint.id + "\n\n" + complaint.meaning + '\n';
        if (const auto example = best.find(complaint.id); example != best.end())
            page += '\n' + example_text(example->second);
    }
    return page;
}

}  // namespace seatload::test
