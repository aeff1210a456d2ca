// SPDX-License-Identifier: MIT
// A name of ten thousand letters is cut where it is shown, so that what is said of the thing stays in sight.
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>
#include <seatload/core/text.hpp>
#include <support/tool.hpp>

using namespace seatload;

namespace {

const std::string kEndless(10'000, 'n');
constexpr std::size_t kMostLines = 120;

/// Some lines, none of them wider than the name would be when it is cut.
void check_is_readable(const test::ToolRun& run) {
    INFO(run.out.substr(0, 2000) << run.err.substr(0, 2000));
    CHECK((run.code == 0 || run.code == 1));
    CHECK(run.out.find(std::string(200, 'n')) == std::string::npos);
    CHECK(split(run.out, '\n').size() < kMostLines);
}

test::ToolRun seatload_on(const test::ScratchFolder& folder, const std::string& words) {
    return test::run_tool(folder, "cd " + folder.path().string() + " && COLUMNS=80 " SEATLOAD_PROGRAM " " + words);
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), with);
}

}  // namespace

TEST_CASE("a name that fills more than two lines loses its middle, a shorter one nothing") {
    CHECK(cli::cut_name("ahead latch", 80) == "ahead latch");
    const std::string whole(160, 'x');
    CHECK(cli::cut_name(whole, 80) == whole);
    CHECK(cli::cut_name(whole + 'x', 80) == std::string(140, 'x') + "..." + std::string(20, 'x'));
    std::string umlauts;
    for (int i = 0; i < 200; ++i) umlauts += "ü";
    CHECK(length_in_code_points(cli::cut_name(umlauts, 40)) == 83);
    CHECK_FALSE(first_invalid_utf8(cli::cut_name(umlauts, 40)));
}

TEST_CASE("a cell of a table shows the beginning of an endless name") {
    cli::TextTable table({cli::TextTable::Align::left, cli::TextTable::Align::right});
    table.add({kEndless, "1"});
    CHECK(table.text(2) == "  " + std::string(67, 'n') + "...  1\n");
}

TEST_CASE("springs, sessions, lots and makers of endless names are told in a page") {
    const test::ScratchFolder folder;
    const std::filesystem::path source = SEATLOAD_SOURCE_DIR;
    const std::string spring = test::bytes_of(source / "templates/start/spring.toml");
    test::write_bytes(folder / "spring.toml", replaced(spring, "name of the spring", kEndless));
    check_is_readable(seatload_on(folder, "check spring.toml"));

    std::string readings = test::bytes_of(source / "templates/ahead_latch_readings.toml");
    readings = replaced(readings, "Ahead latch spring: found and good", kEndless);
    readings = replaced(readings, "ahead latch, weak", kEndless);
    test::write_bytes(folder / "readings.toml", readings);
    check_is_readable(seatload_on(folder, "bench --no-papers readings.toml"));

    for (const char* file : {"ahead_lot_good.toml", "ahead_lot_good.csv"})
        std::filesystem::copy_file(source / "templates" / file, folder / file);
    std::filesystem::copy_file(source / "templates/ahead_latch_readings.toml", folder / "ahead_latch_readings.toml");
    const std::string lot = test::bytes_of(folder / "ahead_lot_good.toml");
    test::write_bytes(folder / "lot.toml",
                      replaced(replaced(lot, "first delivery", kEndless), "\"Maker C\"", '"' + kEndless + '"'));
    check_is_readable(seatload_on(
        folder,
        "inspect --no-papers " + (source / "specs/ottermere-m14/ahead-latch-plunger.toml").string() + " lot.toml"));

    std::string reply = test::bytes_of(source / "templates/replies/maker_a.toml");
    test::write_bytes(folder / "reply.toml", replaced(reply, "Maker A", kEndless));
    check_is_readable(seatload_on(folder, "reply reply.toml"));
}
