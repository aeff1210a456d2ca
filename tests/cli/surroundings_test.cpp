// SPDX-License-Identifier: MIT
// The finished program beside another that writes its files, and in odd surroundings.
#include <atomic>
#include <chrono>
#include <thread>

#include "whole_files.hpp"
#include "workshop.hpp"

using namespace seatload;
using test::Contents;
using test::whole_of;
using test::Workshop;

namespace {

namespace fs = std::filesystem;

}  // namespace

TEST_CASE("a file that another program writes while it is read is one or the other, or refused") {
    const Workshop shop;
    const std::string spec = test::bytes_of(shop / "made/ottermere-m14-ahead-latch-plunger-a.toml");
    std::string other = spec;
    other += "# " + std::string(3000, 'x') + "\n";
    const auto checked = [&] { return shop.sh("$SEATLOAD check moving.toml"); };
    test::write_bytes(shop / "moving.toml", spec);
    const std::string first = checked().out;
    std::atomic<bool> is_over = false;
    std::thread writer([&] {
        for (int turn = 0; !is_over; ++turn) {
            test::write_bytes(shop / "moving.toml", turn % 2 == 0 ? other : spec);
            std::this_thread::sleep_for(std::chrono::milliseconds(3));
        }
    });
    for (int turn = 0; turn < 8; ++turn) {
        const test::ToolRun run = checked();
        CAPTURE(run.err);
        CHECK(((run.code == 0 && run.out == first) || (run.code == 2 && run.out.empty() && !run.err.empty())));
    }
    is_over = true;
    writer.join();
}

TEST_CASE("the same files come out whatever the home folder, the locale and the folder for temporary files are",
          "[slow]") {
    const Workshop shop;
    test::write_bytes(shop / "locked/file", "");
    fs::permissions(shop / "locked", fs::perms::none);
    for (const std::string& words : test::writers()) {
        const Contents whole = whole_of(shop, words);
        for (const std::string& around :
             {std::string("env -i"), "env -i HOME=" + (shop / "locked").string() + " TMPDIR=/nowhere",
              std::string("env -i HOME= LC_ALL=de_DE.UTF-8 LANG=de_DE.UTF-8 LOCPATH=" SEATLOAD_LOCALES)}) {
            CAPTURE(words, around);
            fs::remove_all(shop / "out");
            fs::create_directory(shop / "out");
            CHECK(shop.sh(around + " $SEATLOAD " + test::into(words, "out")).code == 0);
            CHECK(test::contents_of(shop / "out") == whole);
        }
    }
    fs::permissions(shop / "locked", fs::perms::owner_all);
}
