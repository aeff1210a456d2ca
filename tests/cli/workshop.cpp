// SPDX-License-Identifier: MIT
#include "workshop.hpp"

#include <algorithm>

#include "script.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kSources = SEATLOAD_SOURCE_DIR;

/// The requirement that the test of quotations sizes by: one wire, few springs.
std::string small_requirement() {
    for (const Section& section : parse_script(bytes_of(kSources / "tests/cli/quotes.test")).sections)
        if (section.head == "file latch.toml") return text_of(section.body);
    throw std::runtime_error("quotes.test holds no requirement any more");
}

/// The folder that all others are copies of.
const ScratchFolder& furnished() {
    static const ScratchFolder folder;
    static const bool is_done = [] {
        write_bytes(folder / "latch.toml", small_requirement());
        fs::copy(kSources / "templates", folder / "templates", fs::copy_options::recursive);
        fs::copy(kSources / "tests/cli/replies", folder / "replies");
        fs::copy(kSources / "specs", folder / "specs", fs::copy_options::recursive);
        const ToolRun sized = run_tool(
            folder, "cd " + folder.path().string() + " && " SEATLOAD_PROGRAM " size latch.toml -n 1 --output made");
        if (sized.code != 0) throw std::runtime_error("the workshop cannot be furnished: " + sized.err);
        return true;
    }();
    (void)is_done;
    return folder;
}

}  // namespace

Contents contents_of(const fs::path& folder) {
    Contents all;
    if (!fs::exists(folder)) return all;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file()) all[fs::relative(entry.path(), folder).generic_string()] = bytes_of(entry.path());
    return all;
}

bool is_aside(const std::string& name) { return fs::path(name).filename().string().starts_with(".aside"); }

Workshop::Workshop() { fs::copy(furnished().path(), folder_.path(), fs::copy_options::recursive); }

ToolRun Workshop::sh(const std::string& command) const {
    return run_tool(folder_,
                    "{ cd " + folder_.path().string() + " && SEATLOAD=" SEATLOAD_PROGRAM " && " + command + "; }");
}

std::vector<std::string> writers() {
    const std::string spec = "made/ottermere-m14-ahead-latch-plunger-a";
    return {
        "size latch.toml -n 1 --output OUT",
        "bench templates/ahead_latch_readings.toml --output OUT",
        "budget templates/ahead_latch_plunger.toml --output OUT",
        "quotes made/ottermere-m14-ahead-latch-plunger-enquiry.pdf replies/maker_a.toml --output OUT",
        "inspect specs/ottermere-m14/ahead-latch-plunger.toml templates/ahead_lot_good.toml --output OUT",
        "sheet " + spec + ".toml --output OUT",
        "sheet --extract " + spec + ".pdf --output OUT",
        "report " + spec + ".toml --output OUT",
        "specs order ottermere-m14/ahead-latch-plunger --output OUT",
        "specs --library OUT add " + spec + ".toml --by \"A. Nkemelu\" --date 2026-12-01",
        "start requirement --output OUT/requirement.toml",
    };
}

std::string into(std::string words, const std::string& out) {
    words.replace(words.find("OUT"), 3, out);
    return words;
}

}  // namespace seatload::test
