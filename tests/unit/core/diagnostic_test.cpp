// SPDX-License-Identifier: MIT
#include <seatload/core/diagnostic.hpp>

#include "support/check.hpp"

using namespace seatload;

namespace {

Diagnostic at(unsigned line, unsigned column, std::string message) {
    Diagnostic d;
    d.place = {"latch.toml", line, column};
    d.message = std::move(message);
    return d;
}

}  // namespace

TEST_CASE("a diagnostic shows place, message, source line, caret and hint") {
    Diagnostic d = at(3, 8, "the number has no unit");
    d.source_line = "bore = 9";
    d.hint = "write for example \"9 mm\"";
    CHECK(render({d}) ==
          "latch.toml:3:8: error: the number has no unit\n"
          "    bore = 9\n"
          "           ^\n"
          "    hint: write for example \"9 mm\"\n");
}

TEST_CASE("a contradiction shows both places") {
    Diagnostic d = at(7, 1, "seated height below full travel");
    d.source_line = "seated_height = \"8 mm\"";
    d.related = {"latch.toml", 8, 1};
    d.related_note = "full travel stands here";
    d.related_line = "full_travel_height = \"9 mm\"";
    CHECK(render({d}) ==
          "latch.toml:7:1: error: seated height below full travel\n"
          "    seated_height = \"8 mm\"\n"
          "    ^\n"
          "latch.toml:8:1: note: full travel stands here\n"
          "    full_travel_height = \"9 mm\"\n"
          "    ^\n");
}

TEST_CASE("a warning says so, and a place without a position is the file alone") {
    Diagnostic d;
    d.severity = Severity::warning;
    d.place.file = "latch.toml";
    d.message = "nothing asked for";
    CHECK(render({d}) == "latch.toml: warning: nothing asked for\n");
    d.place.line = 4;
    CHECK(render({d}) == "latch.toml:4: warning: nothing asked for\n");
    d.place = {};
    CHECK(render({d}) == "warning: nothing asked for\n");
}

TEST_CASE("the caret counts code points and stands right under a tab") {
    Diagnostic d = at(1, 6, "here");
    d.source_line = "\tτ = ±9";
    CHECK(render({d}) == "latch.toml:1:6: error: here\n     τ = ±9\n         ^\n");
}

TEST_CASE("control characters of a source line are not sent to the terminal") {
    Diagnostic d = at(1, 1, "here");
    d.source_line = "a\x1b[31mb\x7f";
    CHECK(render({d}) == "latch.toml:1:1: error: here\n    a [31mb \n    ^\n");
}

TEST_CASE("a long source line is cut so that the caret stays in sight") {
    Diagnostic d = at(1, 150, "here");
    d.source_line = std::string(149, 'a') + "X" + std::string(100, 'b');
    const std::string text = render({d});
    CHECK(text == "latch.toml:1:150: error: here\n    ..." + std::string(63, 'a') + "X" + std::string(30, 'b') +
                      "...\n    " + std::string(66, ' ') + "^\n");
}

TEST_CASE("a source line is cut to the width given, at its end, at both ends or at its beginning") {
    Diagnostic d = at(1, 1, "here");
    d.source_line = std::string(50, 'a') + "X" + std::string(49, 'b');
    CHECK(render({d}, 20, 60) == "latch.toml:1:1: error: here\n    " + std::string(50, 'a') + "Xbb...\n    ^\n");
    d.place.column = 51;
    CHECK(render({d}, 20, 60) == "latch.toml:1:51: error: here\n    ..." + std::string(34, 'a') + "X" +
                                     std::string(15, 'b') + "...\n    " + std::string(37, ' ') + "^\n");
    d.place.column = 101;  // behind the last letter, where the line breaks off
    CHECK(render({d}, 20, 60) == "latch.toml:1:101: error: here\n    ..." + std::string(2, 'a') + "X" +
                                     std::string(49, 'b') + "\n    " + std::string(55, ' ') + "^\n");
}

TEST_CASE("a name that no one would read to its end is shortened, a path and words are not") {
    const std::string endless(10000, 'x');
    const std::string shown = std::string(60, 'x') + "..." + std::string(20, 'x');
    CHECK(render({error("odd"_id, "unknown key \"" + endless + "\" in here", "no \"" + endless + "\"")}) ==
          "error: unknown key \"" + shown + "\" in here [odd]\n    hint: no \"" + shown + "\"\n");
    CHECK(render({error("odd"_id, "the key " + endless + " is unknown")}) ==
          "error: the key " + shown + " is unknown [odd]\n");
    const std::string path = "/" + std::string(200, 'y') + "/" + std::string(200, 'z');
    CHECK(render({error("odd"_id, "no folder \"" + path + "\"")}) == "error: no folder \"" + path + "\" [odd]\n");
    std::string list = "one of";
    for (int i = 0; i < 100; ++i) list += " name" + std::to_string(i);
    CHECK(render({error("odd"_id, list)}) == "error: " + list + " [odd]\n");
}

TEST_CASE("a caret past the end of its line stands behind the last letter") {
    Diagnostic d = at(1, 99, "here");
    d.source_line = "abc";
    CHECK(render({d}) == "latch.toml:1:99: error: here\n    abc\n       ^\n");
}

TEST_CASE("diagnostics beyond the limit are counted, not shown") {
    Diagnostics many(23, at(1, 1, "same"));
    const std::string one = "latch.toml:1:1: error: same\n";
    std::string twenty;
    for (int i = 0; i < 20; ++i) twenty += one;
    CHECK(render(many) == twenty + "(3 more not shown)\n");
    CHECK(render(many, 1) == one + "(22 more not shown)\n");
    CHECK(render({}) == "");
}

TEST_CASE("diagnostics are sorted by file, line and column, and equal places keep their order") {
    Diagnostic other = at(1, 1, "other file");
    other.place.file = "a.toml";
    const Diagnostics unordered{at(2, 5, "c"), at(2, 1, "b"), at(10, 1, "d"), at(2, 5, "c again"), other};
    std::string order;
    for (const Diagnostic& d : sorted(unordered)) order += d.message + "|";
    CHECK(order == "other file|b|c|c again|d|");
}

TEST_CASE("warnings alone are no error") {
    Diagnostic warning = at(1, 1, "mind");
    warning.severity = Severity::warning;
    CHECK_FALSE(has_error({}));
    CHECK_FALSE(has_error({warning}));
    CHECK(has_error({warning, at(1, 1, "wrong")}));
}

TEST_CASE("messages and hints are broken at blanks, source lines are cut instead") {
    Diagnostic d = at(3, 8, "the number of this line has no unit and cannot be understood");
    d.source_line = "bore = 9  # the drilling in the plunger as it was measured";
    d.hint = "write it with its unit, for example \"9 mm .. 9.05 mm\", or `seatload check found.toml` complains again";
    d.related = {"latch.toml", 8, 1};
    d.related_note = "the same drilling is given once more in this line";
    CHECK(render({d}, 20, 50) ==
          "latch.toml:3:8: error: the number of this line has\n"
          "    no unit and cannot be understood\n"
          "    bore = 9  # the drilling in the plunger as ...\n"
          "           ^\n"
          "    hint: write it with its unit, for example\n"
          "          \"9 mm .. 9.05 mm\", or\n"
          "          `seatload check found.toml` complains\n"
          "          again\n"
          "latch.toml:8:1: note: the same drilling is given\n"
          "    once more in this line\n");
    CHECK(render({d}, 20, 0) == render({d}));
}

TEST_CASE("a complaint made without a place has none, and one in a file has it") {
    CHECK(render({error("no-fit"_id, "nothing fits", "look again")}) ==
          "error: nothing fits [no-fit]\n    hint: look again\n");
    CHECK(render({complaint(Severity::warning, "odd"_id, "odd")}) == "warning: odd [odd]\n");
    CHECK(render({error_in("a.toml", "odd-blanks"_id, "odd  blanks")}) == "a.toml: error: odd  blanks [odd-blanks]\n");
}

TEST_CASE("the name of a complaint is words of small letters and figures, joined by single hyphens") {
    for (const char* name : {"bare-number", "x", "a-1-b"}) CHECK(is_diagnostic_id(name));
    for (const char* name : {"", "-", "-a", "a-", "a--b", "A", "a b", "a_b", "\xC3\xA9"})
        CHECK_FALSE(is_diagnostic_id(name));
}
