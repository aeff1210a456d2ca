// SPDX-License-Identifier: MIT
#include <seatload/io/reader.hpp>

#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

TEST_CASE("Keys that were never asked for are reported with the nearest known key") {
    Document document("[space]\nboer = \"9 mm\"\nrod = \"4 mm\"\n", "x.toml");
    {
        Reader root(document);
        auto space = root.table("space");
        space->find<Length>("bore");
        space->find<Length>("rod");
    }
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 1);
    CHECK(first(found) == "2:1 unknown key space.boer");
    CHECK(found[0].hint == "did you mean \"bore\"?");
}

TEST_CASE("A key cut short is taken for the one known key that begins with it") {
    Document document("Wire_dia = 1\nfree = 1\nwir = 1\n", "x.toml");
    {
        Reader root(document);
        for (const char* key : {"wire", "wire_diameter", "free_length", "free_length_new", "ends"}) root.find<int>(key);
    }
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 3);
    CHECK(found[0].hint == "did you mean \"wire_diameter\"?");
    CHECK(found[1].hint == "known here: ends, free_length, free_length_new, wire, wire_diameter");  // two begin so
    CHECK(found[2].hint == "did you mean \"wire\"?");
}

TEST_CASE("A missing key is reported at its table with an example") {
    Document document("a = 1\n\n[space]\nrod = \"4 mm\"\n", "x.toml");
    {
        Reader root(document);
        root.find<int>("a");
        auto space = root.table("space");
        space->need<Length>("bore", "\"9.00 mm\"");
        space->allow("rod");
    }
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 1);
    CHECK(first(found) == "3:1 space.bore is missing");
    CHECK(found[0].hint == "add for example: bore = \"9.00 mm\"");
}

TEST_CASE("A problem inside a quantity puts the caret at its place") {
    Document document("a = \"ττ\"\n  bore = \"9.00 N\"  # τ\nrod = 'at most 4 kg'\n", "x.toml");
    Reader root(document);
    root.allow("a");
    root.find<Length>("bore");
    root.find<units::Band<Length>>("rod");
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 2);
    CHECK(found[0].place.column == 16);
    CHECK(found[0].source_line.substr(15, 1) == "N");
    CHECK(found[1].place.column == 18);
    CHECK(found[1].source_line.substr(17, 2) == "kg");
}

TEST_CASE("A problem inside a text with escapes stays at its opening quote") {
    Document document("bore = \"9\\u0020N\"\n", "x.toml");
    Reader root(document);
    root.find<Length>("bore");
    CHECK(first(document.diagnostics()).substr(0, 4) == "1:8 ");
}

TEST_CASE("Every problem of a file is reported in one run and by position") {
    Document document("c = 1\nb = \"x\"\na = true\n", "x.toml");
    {
        Reader root(document);
        root.find<Length>("a");
        root.find<Force>("b");
    }
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 3);
    CHECK(found[0].place.line == 1);
    CHECK(found[1].place.line == 2);
    CHECK(found[2].place.line == 3);
}

TEST_CASE("Numbers outside the span of a key are refused") {
    Document document("zero = \"0 mm\"\nlow = \"-1 mm\"\nfour = 4\n", "x.toml");
    Reader root(document);
    CHECK_FALSE(root.find<Length>("zero", kPositive).has_value());
    CHECK(root.find<Length>("zero", kNotNegative).has_value());
    CHECK_FALSE(root.find<Length>("low", kNotNegative).has_value());
    CHECK_FALSE(root.find<int>("four", kGrade).has_value());
    CHECK(document.diagnostics().size() == 3);
}

TEST_CASE("Lists, rows and arrays of tables are read member by member") {
    Document document(
        "sizes = [\"1 mm\", 2, \"3 mm\"]\nrows = [[\"1 mm\", 5], [\"2 mm\"], [\"3 mm\", 6, 7]]\n"
        "[[load]]\nat = \"1 mm\"\n[[load]]\nat = 1\nx = 2\n",
        "x.toml");
    {
        Reader root(document);
        CHECK(root.list<Length>("sizes").size() == 2);
        std::vector<RowReader> rows = root.rows("rows");
        REQUIRE(rows.size() == 3);
        CHECK(rows[0].need<Length>(0, "size") == 1.0 * mm);
        CHECK(rows[0].need<int>(1, "count") == 5);
        rows[1].need<int>(1, "count");
        rows[2].expect_at_most(2);
        std::vector<Reader> loads = root.tables("load");
        REQUIRE(loads.size() == 2);
        for (Reader& load : loads) load.find<Length>("at");
    }
    const Diagnostics found = document.diagnostics();
    REQUIRE(found.size() == 5);
    CHECK(found[0].place.column == 18);
    CHECK(found[1].message == "rows: the row ends before its count");
    CHECK(found[2].message == "rows: a row has at most 2 members");
    CHECK_THAT(found[3].message, ContainsSubstring("at of the second load: "));
    CHECK(found[4].message == "unknown key x of the second load");
}

TEST_CASE("Tables and lists of the wrong kind are named as what they are") {
    Document document("a = 1\nb = [1]\nc = \"x\"\nd = [[1], 2]\n", "x.toml");
    Reader root(document);
    CHECK_FALSE(root.table("a").has_value());
    CHECK(root.tables("b").empty());
    CHECK(root.list<int>("c").empty());
    CHECK(root.rows("d").size() == 1);
    CHECK(document.diagnostics().size() == 4);
}
