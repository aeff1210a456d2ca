// SPDX-License-Identifier: MIT
// The finished program where its output is closed or full, or nobody reads it.
#include "whole_files.hpp"
#include "workshop.hpp"

using namespace seatload;
using test::check_only_whole;
using test::Contents;
using test::whole_of;
using test::Workshop;

namespace {

namespace fs = std::filesystem;

}  // namespace

TEST_CASE("where output is closed or full, files are written whole and the loss of the words is told", "[slow]") {
    const Workshop shop;
    for (const std::string& words : test::writers()) {
        const Contents whole = whole_of(shop, words);
        for (const std::string output : {">&-", ">/dev/full", ">&- <&-"}) {
            CAPTURE(words, output);
            fs::remove_all(shop / "out");
            fs::create_directory(shop / "out");
            const test::ToolRun run = shop.sh("$SEATLOAD " + test::into(words, "out") + " " + output);
            CHECK(run.code == 2);
            CHECK(run.err ==
                  "error: the output could not be written [cannot-write]\n"
                  "    hint: is the disk full, or was what reads it closed?\n");
            CHECK(test::contents_of(shop / "out").size() == whole.size());
            check_only_whole(test::contents_of(shop / "out"), whole);
        }
    }
}

TEST_CASE("where neither output nor error output is open nothing meant for them gets into a file") {
    const Workshop shop;
    for (const std::string& words : test::writers()) {
        const Contents whole = whole_of(shop, words);
        CAPTURE(words);
        fs::create_directory(shop / "out");
        CHECK(shop.sh("$SEATLOAD " + test::into(words, "out") + " <&- >&- 2>&-").code == 2);
        check_only_whole(test::contents_of(shop / "out"), whole);
        CHECK(test::contents_of(shop / "out").size() == whole.size());
        fs::remove_all(shop / "out");
    }
}

TEST_CASE("when the reader of the output leaves early the work is done all the same, and quietly") {
    const Workshop shop;
    for (const std::string& words : test::writers()) {
        const Contents whole = whole_of(shop, words);
        CAPTURE(words);
        fs::create_directory(shop / "out");
        // The pipe's reader is gone before the program begins.
        const test::ToolRun run =
            shop.sh("{ sleep 0.1; $SEATLOAD " + test::into(words, "out") + "; echo $? >code; } | :");
        CHECK(run.err == "");
        CHECK(test::bytes_of(shop / "code") == "141\n");  // 128 and SIGPIPE, as of any filter in a shell
        CHECK(test::contents_of(shop / "out").size() == whole.size());
        check_only_whole(test::contents_of(shop / "out"), whole);
        fs::remove_all(shop / "out");
    }
}
