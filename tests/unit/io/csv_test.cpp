// SPDX-License-Identifier: MIT
// The rules and examples of RFC 4180, section 2 (from memory), and what spreadsheets make of them.
#include <seatload/io/csv.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using io::CsvText;

namespace {

std::vector<std::vector<std::string>> cells_of(const CsvText& csv) {
    std::vector<std::vector<std::string>> rows;
    for (const io::CsvRow& row : csv.rows()) {
        rows.emplace_back();
        for (const io::CsvCell& cell : row) rows.back().push_back(cell.text);
    }
    return rows;
}

const std::vector<std::vector<std::string>> kTwoRows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};

std::string complaint(std::string_view text) {
    const CsvText csv(text, "t.csv");
    CHECK_FALSE(csv.is_readable());
    CHECK(csv.rows().empty());
    return io::first(csv.diagnostics());
}

}  // namespace

TEST_CASE("Each record stands on a line of its own, the last with or without a line end") {
    CHECK(cells_of(CsvText("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "t.csv")) == kTwoRows);
    CHECK(cells_of(CsvText("aaa,bbb,ccc\r\nzzz,yyy,xxx", "t.csv")) == kTwoRows);
    CHECK(cells_of(CsvText("aaa,bbb,ccc\nzzz,yyy,xxx\n", "t.csv")) == kTwoRows);
}

TEST_CASE("A cell may be quoted, and then hold commas, line ends and doubled quotes") {
    CHECK(cells_of(CsvText("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "t.csv")) == kTwoRows);
    const std::vector<std::vector<std::string>> with_line_end{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    CHECK(cells_of(CsvText("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "t.csv")) == with_line_end);
    const std::vector<std::vector<std::string>> with_quote{{"aaa", "b\"bb", "c,c"}};
    CHECK(cells_of(CsvText("\"aaa\",\"b\"\"bb\",\"c,c\"", "t.csv")) == with_quote);
    CHECK(cells_of(CsvText("\"\",a", "t.csv")) == std::vector<std::vector<std::string>>{{"", "a"}});
}

TEST_CASE("A byte order mark, blanks round a cell and empty rows do not count") {
    CHECK(cells_of(CsvText("\xEF\xBB\xBF"
                           "aaa , bbb,\tccc\n\n,,\n \"zzz\" ,yyy,xxx\n\n",
                           "t.csv")) == kTwoRows);
    CHECK(CsvText("", "t.csv").rows().empty());
    CHECK(CsvText("\n", "t.csv").rows().empty());
}

TEST_CASE("An empty cell among others is kept") {
    CHECK(cells_of(CsvText("a,,c\n", "t.csv")) == std::vector<std::vector<std::string>>{{"a", "", "c"}});
    CHECK(cells_of(CsvText("a,\n", "t.csv")) == std::vector<std::vector<std::string>>{{"a", ""}});
}

TEST_CASE("A cell is placed by line and code point, inside its quotes and behind blanks") {
    const CsvText csv("h\xC3\xB6he [mm], \"q\"\n\"two\nlines\", last\n", "t.csv");
    REQUIRE(csv.rows().size() == 2);
    const auto place = [&](std::size_t row, std::size_t cell) {
        const io::Position at = csv.rows()[row][cell].at;
        return std::to_string(at.line) + ':' + std::to_string(at.column);
    };
    CHECK(place(0, 0) == "1:1");
    CHECK(place(0, 1) == "1:13");
    CHECK(place(1, 0) == "2:2");
    CHECK(place(1, 1) == "3:9");
}

TEST_CASE("What cannot be cut into cells is refused with its place") {
    CHECK(complaint("a,b\nc,\"d\ne\n") == "2:3 this quote is not closed");
    CHECK(complaint("a,b\"c\n") == "1:4 a quote inside a cell that does not begin with one");
    CHECK(complaint("\"a\"b,c\n") == "1:4 there is more behind the quote that closes the cell");
    CHECK(complaint("a,b\rc,d\r") == "1:4 this line ends in a carriage return alone");
    CHECK(complaint("a\nb\xFF\n") == "2:2 this byte is not UTF-8");
    CHECK(complaint(std::string_view("a\nb,\0", 5)) == "2:3 a character that cannot be seen stands here");
}
