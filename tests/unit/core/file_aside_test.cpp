// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <csignal>
#include <map>
#include <string>
#include <thread>
#include <vector>

#include <seatload/core/file_aside.hpp>

#include "support/check.hpp"
#include "support/scratch_folder.hpp"

using namespace seatload;
using seatload::test::bytes_of;
using seatload::test::ScratchFolder;
using seatload::test::write_bytes;

namespace {

namespace fs = std::filesystem;
using Manner = FileAside::Manner;

Descriptor opened(const fs::path& folder) {
    return Descriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

std::map<std::string, std::string> contents(const fs::path& folder) {
    std::map<std::string, std::string> all;
    for (const auto& entry : fs::directory_iterator(folder))
        all[entry.path().filename().string()] = bytes_of(entry.path());
    return all;
}

/// A process that begins a file, writes half of it and is killed.
void write_and_be_killed(const fs::path& folder, Manner manner) {
    const pid_t child = ::fork();
    if (child == 0) {
        const Descriptor directory = opened(folder);
        FileAside file(directory.get(), manner);
        (void)file.write("half of i", 0);
        ::raise(SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
}

}  // namespace

TEST_CASE("a file gets its name as a whole, new or in place of another, nameless or named before") {
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        const ScratchFolder scratch;
        const Descriptor folder = opened(scratch.path());
        for (const std::string bytes : {"one", "two"}) {
            FileAside file(folder.get(), manner);
            REQUIRE(file.is_open());
            REQUIRE(file.write(bytes, 0));
            CHECK(contents(scratch.path()).count("x") == (bytes == "one" ? 0u : 1u));
            REQUIRE(file.give_name("x"));
            CHECK(contents(scratch.path()) == std::map<std::string, std::string>{{"x", bytes}});
        }
    }
}

TEST_CASE("a file that gets no name leaves nothing") {
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        const ScratchFolder scratch;
        const Descriptor folder = opened(scratch.path());
        { CHECK(FileAside(folder.get(), manner).write("never wanted", 0)); }
        CHECK(scratch.entries() == 0);
        fs::create_directories(scratch / "taken/below");
        FileAside file(folder.get(), manner);
        CHECK(file.write("x", 0));
        CHECK_FALSE(file.give_name("taken"));
    }
}

TEST_CASE("of a nameless file whose writer is killed nothing is left") {
    const ScratchFolder scratch;
    write_and_be_killed(scratch.path(), Manner::nameless);
    CHECK(scratch.entries() == 0);
}

TEST_CASE("what killed writers left is removed by the next, whichever its manner") {
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        const ScratchFolder scratch;
        for (int kill = 0; kill < 3; ++kill) write_and_be_killed(scratch.path(), Manner::named);
        REQUIRE(contents(scratch.path()) == std::map<std::string, std::string>{{".aside.1", "half of i"}});
        write_bytes(scratch / ".aside.17", "left where two were at work");
        const Descriptor folder = opened(scratch.path());
        FileAside file(folder.get(), manner);
        REQUIRE(file.write("whole", 0));
        REQUIRE(file.give_name("x"));
        CHECK(contents(scratch.path()) == std::map<std::string, std::string>{{"x", "whole"}});
    }
}

TEST_CASE("a writer at work keeps its file while others come and go") {
    const ScratchFolder scratch;
    const Descriptor folder = opened(scratch.path());
    FileAside slow(folder.get(), Manner::named);
    REQUIRE(slow.write("slow", 0));
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        FileAside quick(folder.get(), manner);
        REQUIRE(quick.write("quick", 0));
        REQUIRE(quick.give_name("x"));
    }
    REQUIRE(slow.give_name("x"));
    CHECK(contents(scratch.path()) == std::map<std::string, std::string>{{"x", "slow"}});
}

TEST_CASE("only files of names that are given here are swept") {
    const ScratchFolder scratch;
    write_bytes(scratch / "victim", "not yours");
    const std::map<std::string, std::string> others{
        {".aside", "x"}, {".aside.", "x"}, {".aside.1x", "x"}, {".aside.12345", "x"}, {".asides.1", "x"}};
    for (const auto& [name, bytes] : others) write_bytes(scratch / name, bytes);
    fs::create_symlink(scratch / "victim", scratch / ".aside.1");
    REQUIRE(::mkfifo((scratch / ".aside.2").c_str(), 0600) == 0);
    fs::create_directory(scratch / ".aside.3");
    const Descriptor folder = opened(scratch.path());
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        FileAside file(folder.get(), manner);
        REQUIRE(file.write("mine", 0));
        REQUIRE(file.give_name("x"));
    }
    for (const auto& [name, bytes] : others) CHECK(bytes_of(scratch / name) == bytes);
    CHECK(bytes_of(scratch / "victim") == "not yours");
    CHECK(bytes_of(scratch / "x") == "mine");
    CHECK(scratch.entries() == 5 + static_cast<std::ptrdiff_t>(others.size()));
}

TEST_CASE("many writers of one file at once leave it whole and nothing beside it") {
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        const ScratchFolder scratch;
        std::vector<std::thread> writers;
        std::atomic<int> failed = 0;
        for (char letter = 'a'; letter < 'f'; ++letter)
            writers.emplace_back([&, letter] {
                const Descriptor folder = opened(scratch.path());
                for (int turn = 0; turn < 40; ++turn) {
                    FileAside file(folder.get(), manner);
                    failed += file.is_open() && file.write(std::string(5000, letter), 0) && file.give_name("x") ? 0 : 1;
                }
            });
        for (std::thread& writer : writers) writer.join();
        CHECK(failed == 0);
        const std::string last = bytes_of(scratch / "x");
        CHECK((last.size() == 5000 && last == std::string(5000, last.front())));
        CHECK(scratch.entries() == 1);
    }
}

TEST_CASE("a file aside has no more permissions than the one it is for") {
    for (const Manner manner : {Manner::nameless, Manner::named}) {
        const ScratchFolder scratch;
        const Descriptor folder = opened(scratch.path());
        FileAside file(folder.get(), manner);
        REQUIRE(file.write("secret", 0600));
        REQUIRE(file.give_name("x"));
        CHECK(fs::status(scratch / "x").permissions() == (fs::perms::owner_read | fs::perms::owner_write));
    }
}
