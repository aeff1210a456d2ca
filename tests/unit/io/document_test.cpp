// SPDX-License-Identifier: MIT
#include <seatload/io/document.hpp>

#include <unistd.h>

#include <seatload/core/file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

namespace {

Diagnostics complaints(const std::string& text) { return Document(text, "x.toml").diagnostics(); }

std::string text_at(const Document& document, std::string_view path) {
    const Node* node = document.find(path);
    return node != nullptr ? std::get<std::string>(node->value) : "(absent)";
}

}  // namespace

TEST_CASE("A value carries the line and column where it stands, in code points") {
    const Document document("[space]  # ττ\n\"key\" = \"τ\"\n  bore = \"9 mm\"\n", "x.toml");
    REQUIRE(document.is_readable());
    CHECK(document.at("space.key").line == 2);
    CHECK(document.at("space.key").column == 9);
    CHECK(document.at("space.bore").line == 3);
    CHECK(document.at("space.bore").column == 10);
    CHECK(document.at("space.absent").line == 1);
}

TEST_CASE("The byte order mark of an editor is passed over") {
    const Document document(
        "\xEF\xBB\xBF"
        "a = \"b\"",
        "x.toml");
    CHECK(text_at(document, "a") == "b");
    CHECK(document.at("a").column == 5);
}

TEST_CASE("Line ends of DOS do not show in the source line") {
    const Diagnostics found = complaints("a = 1\r\nb = 9 mm\r\n");
    REQUIRE(found.size() == 1);
    CHECK(found[0].source_line == "b = 9 mm");
    CHECK(found[0].hint == "write b = \"9 mm\"");
}

TEST_CASE("The place of a byte that is not UTF-8 is told") {
    CHECK(first(complaints("a = \"\xC3\xA9\"\nb = \"\xE9\"\n")) == "2:6 this byte is not UTF-8 text");
}

TEST_CASE("A hundred thousand brackets are an error, not a crash") {
    CHECK(first(complaints("a = " + std::string(100000, '['))) == "1:37 more than 32 brackets inside one another");
    CHECK(first(complaints(std::string(100000, '['))) == "1:33 more than 32 brackets inside one another");
    std::string tables = "a = ";
    for (int i = 0; i < 100000; ++i) tables += "{a=";
    CHECK(first(complaints(tables)) == "1:101 more than 32 brackets inside one another");
}

TEST_CASE("A key of a hundred thousand parts is an error, not a crash") {
    std::string key;
    for (int i = 0; i < 100000; ++i) key += "a.";
    CHECK(first(complaints(key + "a = 1")) == "1:66 a key of more than 32 parts");
    CHECK(first(complaints("[" + key + "a]")) == "1:67 a key of more than 32 parts");
    std::string quoted;
    for (int i = 0; i < 100000; ++i) quoted += "\"a.\" . ";
    CHECK_THAT(first(complaints(quoted + "a = 1")), ContainsSubstring("a key of more than 32 parts"));
}

TEST_CASE("A long list of numbers is no long key and no deep nesting") {
    std::string list = "a = [";
    for (int i = 0; i < 1000; ++i) list += "1.5, [2.5], ";
    CHECK(complaints(list + "]").empty());
}

TEST_CASE("Brackets and foreign letters inside quotes and remarks are left alone") {
    CHECK(complaints("a = \"" + std::string(100, '[') + "\"\n# " + std::string(100, '[') + " ü\nb = '''\n" +
                     std::string(100, '{') + "ü\n'''\nc = \"\"\"\n[[[ \\\"\"\" ü \"\"\"\"\n")
              .empty());
}

TEST_CASE("A text above one mebibyte is refused before it is parsed") {
    const Diagnostics found = complaints("#" + std::string(kLargestInput, ' '));
    REQUIRE(found.size() == 1);
    CHECK_THAT(found[0].message, ContainsSubstring("larger than 1 MiB"));
    CHECK(complaints("#" + std::string(kLargestInput - 1, ' ')).empty());
}

TEST_CASE("Fifty megabytes, a folder and a missing file are refused by the file reader") {
    const auto folder =
        std::filesystem::temp_directory_path() / ("seatload_document_test_" + std::to_string(::getpid()));
    std::filesystem::create_directories(folder);
    const auto large = folder / "large.toml";
    const Diagnostics written = replace_file(large, "a = 1\n");
    INFO(render(written));
    REQUIRE(written.empty());
    std::filesystem::resize_file(large, 50 * 1024 * 1024);
    CHECK_THAT(read_text_file(large).error().front().message, ContainsSubstring("larger than 1 MiB"));
    CHECK_THAT(read_text_file(folder).error().front().message, ContainsSubstring("a folder"));
    CHECK_THAT(read_text_file(folder / "absent.toml").error().front().message, ContainsSubstring("no such file"));
    std::filesystem::remove_all(folder);
}

TEST_CASE("A value without quotes is mended for the rest of the reading") {
    const Document document("a = 9,5 mm # old\nb = right\nc = [1 mm, 2 mm]\nd = \"x\"\n", "x.toml");
    REQUIRE(document.is_readable());
    CHECK(document.diagnostics().size() == 3);
    CHECK(text_at(document, "a") == "9.5 mm");
    CHECK(text_at(document, "b") == "right");
    CHECK(text_at(document, "d") == "x");
}

TEST_CASE("Sound TOML values are not taken for quantities without quotes") {
    const std::string text =
        "a = 1\nb = -1.5e-3\nc = 1_000\nd = 0xFF\ne = true\nf = inf\ng = nan\nh = 1979-05-27\ni = 07:32:00\n"
        "j = 1979-05-27T07:32:00Z\nk = [1, 2.5]\nl = { x = 1 }\nm = [\n  1,\n  2,\n]\nn = []\no = +5\n";
    CHECK(complaints(text).empty());
}

TEST_CASE("A key given twice shows both places") {
    const Diagnostics found = complaints("[a]\nx = 1\n[b]\nx = 1\ny = 2\nx = 3\n");
    REQUIRE(found.size() == 1);
    CHECK(found[0].place.line == 6);
    CHECK(found[0].related.line == 4);
}

TEST_CASE("A text full of foreign letters gives a bounded number of complaints") {
    std::string text;
    for (int i = 0; i < 100000; ++i) text += "ü = 1\n";
    CHECK(complaints(text).size() == 100);
}

TEST_CASE("Broken texts of every kind give an error and no table") {
    const std::string text =
        GENERATE("x = \"\\q\"", "x = \"abc", "x = [1,", "x = 'abc", "x = \"\"\"abc", "x = 1 = 2", "x = \"a\" \"b\"",
                 "x = {a=1", "x =", "x = \"\\ud800\"", "= 1", "[", "[]", "[[a]", "x.y = 1\nx = 2", "\x01", "x = 01");
    CAPTURE(text);
    const Document document(text, "x.toml");
    CHECK_FALSE(document.is_readable());
    CHECK(document.has_error());
}
