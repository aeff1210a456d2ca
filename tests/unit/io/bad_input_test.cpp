// SPDX-License-Identifier: MIT
// Every wrong requirement in tests/bad_input, and every wrong reply and file of readings in its folders, with the exact
// text a user is shown. To accept a changed text, run the test once with SEATLOAD_ACCEPT=1 in the environment (it then
// writes what it got and fails) and read the difference.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/file.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/io/sampling_file.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/io/wording_file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
namespace fs = std::filesystem;

namespace {

std::string bytes_of(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

const fs::path kFolder = fs::path(SEATLOAD_SOURCE_DIR) / "tests" / "bad_input";

std::vector<fs::path> files_in(const fs::path& folder, const char* ending) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ending) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

template <class Read>
std::string shown_for(const Result<Read>& read) {
    CHECK_FALSE(read.has_value());
    CHECK(has_error(read.error()));
    return render(read.error());
}

/// Holds what `shown` makes of each wrong file of a folder against the text beside it.
template <class Shown>
void check_answers(const fs::path& folder, std::size_t fewest, const Shown& shown_of) {
    const std::vector<fs::path> files = files_in(folder, ".toml");
    REQUIRE(files.size() >= fewest);
    for (const fs::path& path : files) {
        INFO(path.filename().string());
        const fs::path expected = fs::path(path).replace_extension(".expected");
        const std::string shown = shown_of(bytes_of(path), path.filename().string());
        const bool as_expected = shown == bytes_of(expected);
        if (!as_expected && std::getenv("SEATLOAD_ACCEPT") != nullptr)
            std::ofstream(expected, std::ios::binary) << shown;
        INFO(shown);
        CHECK(as_expected);
    }
}

}  // namespace

TEST_CASE("Every wrong requirement is answered with exactly the text that was reviewed") {
    check_answers(kFolder, 64, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_requirement(text, name, io::catalogue()));
    });
}

TEST_CASE("Every wrong file of a library of specs is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "kept", 9, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_kept_spec(text, name, io::catalogue()));
    });
}

TEST_CASE("Every wrong file of a maker's limits is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "maker", 5, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_maker(text, name));
    });
}

TEST_CASE("Every wrong reply is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "reply", 17, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_reply(text, name));
    });
}

TEST_CASE("Every reply that answers another enquiry is answered with exactly the text that was reviewed") {
    record::Enquired asked;
    asked.number = "OT-14-0312";
    asked.revision = "B";
    asked.alternatives = {"A", "B"};
    asked.quantities = {20, 50};
    asked.mark = "cafe";
    check_answers(kFolder / "quotes", 1, [&](const std::string& text, const std::string& name) {
        return shown_for(io::read_reply(text, name, &asked));
    });
}

TEST_CASE(
    "Every wrong file of readings, and every wrong table beside one, is answered with the text that was reviewed") {
    check_answers(kFolder / "readings", 37, [](const std::string& text, const std::string& name) {
        const auto open = [](const std::string& path) { return read_text_file(kFolder / "readings" / path); };
        return shown_for(io::read_readings(text, name, io::catalogue(), open));
    });
}

TEST_CASE("Every wrong plunger is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "plunger", 30, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_plunger(text, name));
    });
}

TEST_CASE("Every wrong file of wires is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "wire", 7, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_wire_file(text, name, io::catalogue()));
    });
}

TEST_CASE("Every wrong wording is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "wording", 2, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_wording(text, name));
    });
}

TEST_CASE("Every wrong table of sampling plans is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "sampling", 1, [](const std::string& text, const std::string& name) {
        return shown_for(io::read_sampling(text, name));
    });
}

TEST_CASE("Every expected text belongs to a wrong file") {
    for (const fs::path& folder :
         {kFolder, kFolder / "maker", kFolder / "plunger", kFolder / "quotes", kFolder / "lot", kFolder / "readings",
          kFolder / "reply", kFolder / "samples", kFolder / "sampling", kFolder / "wire", kFolder / "wording"})
        for (const fs::path& path : files_in(folder, ".expected"))
            CHECK(fs::exists(fs::path(path).replace_extension(".toml")));
}

TEST_CASE("A single changed letter of a sound requirement never crashes and never passes with a diagnostic") {
    const std::string sound = io::kLeast + "[wire]\ngrades = [\"ASTM-A228\"]\ndiameters = [\"0.8 mm\"]\n";
    REQUIRE(io::read_requirement(sound, "x.toml", io::catalogue()).has_value());
    for (std::size_t at = 0; at < sound.size(); ++at)
        for (const char letter : {'\0', '"', '[', ']', '=', '.', '\n', '#', '\xC3', '9', '-', '\\', '\''}) {
            std::string changed = sound;
            changed[at] = letter;
            const auto read = io::read_requirement(changed, "x.toml", io::catalogue());
            CHECK(read.has_value() != has_error(read.error()));
        }
}

TEST_CASE(
    "Every wrong file of samples, and every wrong table beside one, is answered with the text that was reviewed") {
    const auto tables = io::builtin_sampling();
    REQUIRE(tables.has_value());
    const fs::path folder = kFolder / "samples";
    const auto open = [&](const std::string& name) { return read_text_file(folder / name); };
    check_answers(folder, 20, [&](const std::string& text, const std::string& name) {
        return shown_for(io::read_samples(text, name, *tables, io::catalogue(), open));
    });
}

TEST_CASE("Every wrong record of a lot is answered with exactly the text that was reviewed") {
    check_answers(kFolder / "lot", 3,
                  [](const std::string& text, const std::string& name) { return shown_for(io::read_lot(text, name)); });
}
