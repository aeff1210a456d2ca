// SPDX-License-Identifier: MIT
#include <seatload/core/file_name.hpp>

#include <support/check.hpp>

using namespace seatload;

TEST_CASE("a stem is made of any words, and is never empty") {
    CHECK(file_stem("OT-14-0312/A") == "ot-14-0312-a");
    CHECK(file_stem("  Ahead  latch (new) ") == "ahead-latch-new");
    CHECK(file_stem("../../etc/passwd") == "etc-passwd");
    CHECK(file_stem("Пружина") == "spring");
    CHECK(file_stem("") == "spring");
}

TEST_CASE("a plain file name leads nowhere else and is taken by every file system") {
    for (const char* good : {"a", "ot-14-0312-a.toml", "Spec_A 2.toml"}) CHECK(is_plain_file_name(good));
    for (const char* bad :
         {"", ".", "..", ".hidden", "a.", " a", "a ", "../a", "a/b", "a\\b", "C:a", "a\nb", "ö", "a*"})
        CHECK_FALSE(is_plain_file_name(bad));
    CHECK(is_plain_file_name(std::string(100, 'a')));
    CHECK_FALSE(is_plain_file_name(std::string(101, 'a')));
}
