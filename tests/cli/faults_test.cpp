// SPDX-License-Identifier: MIT
// The finished program where something is amiss around it: disk, folder, output, files, names, surroundings, memory.
// Whatever happens, it says so and ends with its code, and no file is there by half.
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <csignal>
#include <iostream>
#include <thread>

#include "workshop.hpp"

using namespace seatload;
using test::Contents;
using test::Workshop;

namespace {

namespace fs = std::filesystem;

bool is_with_address_sanitizer() {
#if defined(__SANITIZE_ADDRESS__)
    return true;
#else
    return false;
#endif
}

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

/// What is told, without the time that size took.
std::string without_seconds(std::string told) {
    const std::size_t from = told.find(" fit (");
    return from == std::string::npos ? told : told.erase(from, told.find(')', from) - from);
}

/// What a writer puts into its folder when nothing is amiss; it is left in the folder "whole".
Contents whole_of(const Workshop& shop, const std::string& words) {
    fs::remove_all(shop / "whole");
    fs::create_directory(shop / "whole");
    const test::ToolRun run = shop.sh("$SEATLOAD " + test::into(words, "whole"));
    INFO(run.err);
    REQUIRE(run.code == 0);
    const Contents whole = test::contents_of(shop / "whole");
    REQUIRE_FALSE(whole.empty());
    return whole;
}

/// Checks that each file is one of `whole`, byte for byte; the lock of a library may be there.
void check_only_whole(const Contents& found, const Contents& whole) {
    for (const auto& [name, bytes] : found) {
        if (fs::path(name).filename() == ".lock") continue;
        INFO(name);
        REQUIRE(whole.count(name) == 1);
        CHECK(bytes == whole.at(name));
    }
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

/// 128 and the signal, or the code.
int end_of(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

/// Begins the program in the workshop; words hold no quotes.
pid_t begin(const Workshop& shop, const std::string& words) {
    const std::string line =
        "cd " + shop.folder().path().string() + " && exec " SEATLOAD_PROGRAM " " + words + " >/dev/null 2>&1";
    const pid_t child = ::fork();
    if (child != 0) return child;
    ::execl("/bin/sh", "sh", "-c", line.c_str(), static_cast<char*>(nullptr));
    ::_exit(126);
}

/// The seconds a command takes when it is let end.
double seconds_of(const Workshop& shop, const std::string& words) {
    const auto start = std::chrono::steady_clock::now();
    REQUIRE(end_of(begin(shop, words)) == 0);
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
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

TEST_CASE("a command killed at any moment leaves each file old or new, and the next one finishes", "[slow]") {
    constexpr int kKills = 25;
    const Workshop shop;
    const std::string sheet = "sheet made/ottermere-m14-ahead-latch-plunger-a.toml --output out";
    const std::string order = "specs order ottermere-m14/ahead-latch-plunger --output out --number 2027-0";
    const std::vector<std::pair<std::string, std::string>> turns{
        {sheet, sheet + " --language de"},
        {order + "1 --date 2027-01-01", order + "2 --date 2027-02-02"},
        {"start spring --output out/file.toml --overwrite", "start wire --output out/file.toml --overwrite"},
    };
    int killed = 0;
    for (const auto& [before, after] : turns) {
        CAPTURE(after);
        REQUIRE(end_of(begin(shop, before)) == 0);
        const Contents old = test::contents_of(shop / "out");
        const double longest = seconds_of(shop, after);
        const Contents wanted = test::contents_of(shop / "out");
        CHECK(old != wanted);
        for (int kill = 0; kill < kKills; ++kill) {
            REQUIRE(end_of(begin(shop, before)) == 0);
            const pid_t child = begin(shop, after);
            // More of them towards the end, where files are written.
            const double share = 1.0 - static_cast<double>(kill * kill) / (kKills * kKills);
            std::this_thread::sleep_for(std::chrono::duration<double>(longest * share));
            ::kill(child, SIGKILL);
            killed += end_of(child) == 128 + SIGKILL ? 1 : 0;
            for (const auto& [name, bytes] : test::contents_of(shop / "out")) {
                if (test::is_aside(name)) continue;
                INFO(name);
                REQUIRE(old.count(name) == 1);
                REQUIRE((bytes == old.at(name) || bytes == wanted.at(name)));
            }
        }
        REQUIRE(end_of(begin(shop, after)) == 0);
        CHECK(test::contents_of(shop / "out") == wanted);
        fs::remove_all(shop / "out");
        fs::create_directory(shop / "out");
    }
    CHECK(killed > kKills);
}

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

TEST_CASE("sixty-four threads on few cores give the bytes of one") {
    const Workshop shop;
    for (const std::string& words : {std::string("size latch.toml -n 1 --output OUT"), std::string("specs verify"),
                                     std::string("specs find --gives \"5 N .. 6 N\" --at \"15 mm\" --bore \"9 mm\"")}) {
        CAPTURE(words);
        const auto with = [&](const std::string& threads) {
            const bool writes = words.find("OUT") != std::string::npos;
            fs::remove_all(shop / "out");
            const test::ToolRun run =
                shop.sh("$SEATLOAD " + (writes ? test::into(words, "out") : words) + " --threads " + threads);
            CHECK(run.code == 0);
            return std::pair(without_seconds(run.out), test::contents_of(shop / "out"));
        };
        CHECK(with("64") == with("1"));
    }
}

TEST_CASE("too little memory is told in words", "[slow]") {
    if (is_with_address_sanitizer()) return;  // it needs terabytes of address space
    const Workshop shop;
    const std::string size = "$SEATLOAD size latch.toml -n 1 --output out --threads ";
    const std::string right = without_seconds(shop.sh(size + "1").out);
    for (const std::string threads : {"1", "64"}) {
        test::ToolRun run;
        int kib = 262144;
        // Downwards to the first limit that is too low; until then the answer is right.
        for (; kib > 16384; kib -= kib > 65536 ? 65536 : kib > 40960 ? 8192 : 1024) {
            fs::remove_all(shop / "out");
            run = shop.sh("(ulimit -v " + std::to_string(kib) + " && " + size + threads + ")");
            if (run.code != 0) break;
            CAPTURE(kib, threads);
            CHECK(without_seconds(run.out) == right);
            CHECK(run.err == "");
        }
        CAPTURE(kib, threads);
        CHECK(kib < 262144);
        CHECK(run.code == 2);
        CHECK(run.out == "");
        CHECK(run.err ==
              "error: there is too little memory for this [out-of-memory]\n"
              "    hint: end other programs or raise the limit (`ulimit -v`); with --threads 1\n"
              "          less is needed\n");
        CHECK(test::contents_of(shop / "out").empty());
    }
}

TEST_CASE("the requirements of the demo are sized in 256 MiB with one thread and with many", "[slow]") {
    if (is_with_address_sanitizer()) return;
    const Workshop shop;
    for (const std::string name : {"ahead_latch", "astern_latch", "governor_detent", "oil_relief_valve"}) {
        CAPTURE(name);
        const std::string size = "$SEATLOAD size templates/" + std::string(name) + ".toml --no-papers";
        const test::ToolRun free = shop.sh(size);
        REQUIRE(free.code == 0);
        for (const std::string threads : {"1", "64"}) {
            const test::ToolRun tight = shop.sh("(ulimit -v 262144 && " + size + " --threads " + threads + ")");
            CHECK(tight.code == 0);
            CHECK(tight.err == "");
            CHECK(without_seconds(tight.out) == without_seconds(free.out));
        }
    }
}
