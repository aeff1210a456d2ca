// SPDX-License-Identifier: MIT
// The finished program with many threads and with little memory: the bytes of one thread with plenty, or words.
#include "workshop.hpp"

using namespace seatload;
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

/// What is told, without the time that size took.
std::string without_seconds(std::string told) {
    const std::size_t from = told.find(" fit (");
    return from == std::string::npos ? told : told.erase(from, told.find(')', from) - from);
}

}  // namespace

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
