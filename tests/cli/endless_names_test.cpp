// SPDX-License-Identifier: MIT
// The finished program given names without end: it answers, and its code is that of wrong input.
#include "workshop.hpp"

using namespace seatload;
using test::Workshop;

TEST_CASE("ten thousand letters in a name are answered, not suffered") {
    const Workshop shop;
    const std::string name(10000, 'n');
    const std::vector<std::string> commands{
        "size $L.toml",
        "size latch.toml --output $L",
        "bench $L.toml",
        "budget $L",
        "check $L",
        "inspect $L $L",
        "quotes $L $L",
        "reply $L",
        "sheet $L",
        "sheet --extract $L",
        "report $L",
        "specs show $L",
        "specs --library $L list",
        "specs add $L --by $L --date 2026-12-01",
        "start $L",
        "start wire --output $L",
        "wire $L",
        "wire --wire-file $L",
        "size latch.toml --what-if $L=1",
        "size latch.toml --threads $L",
        "--$L",
        "$L",
    };
    for (const std::string& command : commands) {
        CAPTURE(command);
        const test::ToolRun run = shop.sh("L=" + name + " && $SEATLOAD " + command);
        CHECK(run.code == 2);
        CHECK(run.out == "");
        CHECK_THAT(run.err, ContainsSubstring("error: "));
    }
}

TEST_CASE("ten thousand letters in a file as key, as value and as an engine's name are refused by line") {
    const Workshop shop;
    const std::string name(10000, 'n');
    const std::string requirement = test::bytes_of(shop / "latch.toml");
    const auto with = [&](const std::string& line, const std::string& in_place) {
        std::string text = requirement;
        const std::size_t at = text.find(line);
        REQUIRE(at != std::string::npos);
        text.replace(at, text.find('\n', at) - at, in_place);
        return text;
    };
    const std::vector<std::string> texts{
        with("engine", "engine = \"" + name + '"'),
        with("position", "position = \"" + name + '"'),
        with("seated_height", "seated_height = \"" + name + '"'),
        with("seated_height", "seated_height = \"" + std::string(10000, '9') + " mm\""),
        with("seated_height", name + " = \"15 mm\""),
        with("[space]", '[' + name + ']'),
        with("grades", "grades = [\"" + name + "\"]"),
    };
    for (const std::string& text : texts) {
        test::write_bytes(shop / "long.toml", text);
        const test::ToolRun run = shop.sh("$SEATLOAD size long.toml --output out");
        CAPTURE(run.err.substr(0, 400));
        CHECK(run.code == 2);
        CHECK(run.out == "");
        CHECK(run.err.starts_with("long.toml:"));
        CHECK(test::contents_of(shop / "out").empty());
    }
}
