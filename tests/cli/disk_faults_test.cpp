// SPDX-License-Identifier: MIT
// The finished program where the disk is full or nothing may be written on it: it says so, and no file is there by
// half.
#include <algorithm>
#include <cstdlib>
#include <iostream>

#include "whole_files.hpp"
#include "workshop.hpp"

using namespace seatload;
using test::check_only_whole;
using test::Contents;
using test::whole_of;
using test::Workshop;

namespace {

namespace fs = std::filesystem;

/// What was said, without the ends of its lines, which fall where the names are long.
std::string in_one_line(const std::string& said) {
    std::string line;
    for (const char c : said)
        if (c != '\n' && c != ' ')
            line += c;
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    return line;
}

/// Whether a file system of our own can be laid on a folder here, as any user where the kernel lets him.
bool can_mount() {
    static const bool can =
        std::system("unshare --map-root-user --mount sh -c 'mount -t tmpfs none /mnt' >/dev/null 2>&1") == 0;
    if (!can) std::cerr << "passed over: no file system can be mounted here (unshare, mount)\n";
    return can;
}

/// A command line run with a disk of so many bytes on the folder "disk"; what is on it in the end is left in "kept".
test::ToolRun on_disk(const Workshop& shop, const std::string& options, const std::string& before,
                      const std::string& command) {
    fs::create_directories(shop / "disk");
    fs::remove_all(shop / "kept");
    test::write_bytes(shop / "on_disk.sh", "mount -t tmpfs -o " + options + " none disk && " + before + command +
                                               "\ncode=$?\ncp -a disk kept\nexit $code\n");
    return shop.sh("export SEATLOAD && unshare --map-root-user --mount sh ./on_disk.sh");
}

}  // namespace

TEST_CASE("on a full disk every command that writes says so, and each file is whole or not there", "[slow]") {
    if (!can_mount()) return;
    const Workshop shop;
    for (const std::string& words : test::writers()) {
        const Contents whole = whole_of(shop, words);
        std::size_t largest = 0;
        for (const auto& [name, bytes] : whole) largest = std::max(largest, bytes.size());
        // Room for nothing, and for all but the last 4 KiB of the largest file (a page, the least that tmpfs gives).
        for (const std::size_t room : {std::size_t{4096}, largest / 4096 * 4096}) {
            CAPTURE(words, room);
            const test::ToolRun run =
                on_disk(shop, "size=" + std::to_string(std::max(room, std::size_t{4096})),
                        "head -c 4096 /dev/zero > disk/ballast; ", "$SEATLOAD " + test::into(words, "disk"));
            CHECK(run.code == 2);
            CHECK(run.out == "");
            CHECK_THAT(in_one_line(run.err), ContainsSubstring("No space left on device"));
            Contents kept = test::contents_of(shop / "kept");
            kept.erase("ballast");
            check_only_whole(kept, whole);
        }
        const test::ToolRun again =
            on_disk(shop, "size=4096",
                    "head -c 4096 /dev/zero > disk/ballast; $SEATLOAD " + test::into(words, "disk") +
                        " >/dev/null 2>&1; rm disk/ballast; mount -o remount,size=8m disk; ",
                    "$SEATLOAD " + test::into(words, "disk"));
        INFO(words << '\n' << again.err);
        CHECK(again.code == 0);
        Contents kept = test::contents_of(shop / "kept");
        check_only_whole(kept, whole);
        for (const auto& [name, bytes] : whole) CHECK(kept.count(name) == 1);
    }
}

TEST_CASE("in a folder where nothing may be written every command says so, and what stood there is kept", "[slow]") {
    if (!can_mount()) return;
    const Workshop shop;
    for (const std::string& words : test::writers()) {
        CAPTURE(words);
        const test::ToolRun run = on_disk(shop, "size=1m", "echo old > disk/old && mount -o remount,ro disk && ",
                                          "$SEATLOAD " + test::into(words, "disk"));
        CHECK(run.code == 2);
        CHECK(run.out == "");
        CHECK_THAT(in_one_line(run.err), ContainsSubstring("only file system"));
        CHECK(test::contents_of(shop / "kept") == Contents{{"old", "old\n"}});
        const test::ToolRun below =
            on_disk(shop, "size=1m", "mount -o remount,ro disk && ", "$SEATLOAD " + test::into(words, "disk/below"));
        CHECK(below.code == 2);
        CHECK(below.out == "");
    }
}
