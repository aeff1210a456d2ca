// SPDX-License-Identifier: MIT
#include <seatload/core/line_wrap.hpp>
#include <support/check.hpp>

using seatload::wrapped;

TEST_CASE("a text is broken between words, the lines after the first set in") {
    CHECK(wrapped("Next: ", "one two three four five six seven eight nine ten", 40, 2) ==
          "Next: one two three four five six seven\n  eight nine ten\n");
    CHECK(wrapped("", "two  blanks", 40, 0) == "two blanks\n");
}

TEST_CASE("a number stays with its unit and its own digits") {
    CHECK(wrapped("", "a load that the spring carries of 12.5 N and no more", 40, 2) ==
          "a load that the spring carries of 12.5 N\n  and no more\n");
    CHECK(wrapped("", "so many springs were looked at here: 10 000 in all", 40, 2) ==
          "so many springs were looked at here:\n  10 000 in all\n");
}

TEST_CASE("what a command holds in single quotes stays one word, with its blanks as they are") {
    CHECK(wrapped("", "`seatload specs --library 'my  old  shop' order m14/latch` writes", 40, 2) ==
          "`seatload specs --library\n  'my  old  shop' order m14/latch`\n  writes\n");
    CHECK(wrapped("", "`seatload sheet 'Anna'\\''s  spring.toml'` draws it, as  it is", 60, 2) ==
          "`seatload sheet 'Anna'\\''s  spring.toml'` draws it, as it is\n");
}

TEST_CASE("an apostrophe begins nothing, within a command or outside") {
    CHECK(wrapped("", "the maker's  sheet and 'this  word'", 60, 2) == "the maker's sheet and 'this word'\n");
    CHECK(wrapped("", "`seatload start maker's  file` as  it is", 60, 2) == "`seatload start maker's file` as it is\n");
}
