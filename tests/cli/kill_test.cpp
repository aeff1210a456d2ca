// SPDX-License-Identifier: MIT
// The finished program killed while it writes: each file is old or new.
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <thread>

#include "workshop.hpp"

using namespace seatload;
using test::Contents;
using test::Workshop;

namespace {

namespace fs = std::filesystem;

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
            // An order comes to lie beside the earlier one.
            for (const auto& [name, bytes] : wanted)
                if (old.count(name) == 0) fs::remove(shop / ("out/" + name));
            const pid_t child = begin(shop, after);
            // More of them towards the end, where files are written.
            const double share = 1.0 - static_cast<double>(kill * kill) / (kKills * kKills);
            std::this_thread::sleep_for(std::chrono::duration<double>(longest * share));
            ::kill(child, SIGKILL);
            killed += end_of(child) == 128 + SIGKILL ? 1 : 0;
            for (const auto& [name, bytes] : test::contents_of(shop / "out")) {
                if (test::is_aside(name)) continue;
                INFO(name);
                const bool is_old = old.count(name) == 1 && bytes == old.at(name);
                REQUIRE((is_old || (wanted.count(name) == 1 && bytes == wanted.at(name))));
            }
        }
        REQUIRE(end_of(begin(shop, after)) == 0);
        CHECK(test::contents_of(shop / "out") == wanted);
        fs::remove_all(shop / "out");
        fs::create_directory(shop / "out");
    }
    CHECK(killed > kKills);
}
