// SPDX-License-Identifier: MIT
#include <sys/resource.h>

#include <atomic>
#include <stdexcept>

#include <seatload/core/crew.hpp>

#include "support/check.hpp"

using namespace seatload;

TEST_CASE("each worker of a crew works once, and what one throws is thrown on when all have ended") {
    std::atomic<unsigned> sum = 0, ended = 0;
    run_crew(8, [&](unsigned worker) { sum += worker; });
    CHECK(sum == 28);  // 0 + 1 + ... + 7
    const auto fail_in_three = [&](unsigned worker) {
        ++ended;
        if (worker % 3 == 1) throw std::runtime_error("too little of something");
    };
    CHECK_THROWS_AS(run_crew(8, fail_in_three), std::runtime_error);
    CHECK(ended == 8);
}

TEST_CASE("a limit on memory allows fewer threads, and always one") {
    rlimit before{};
    REQUIRE(::getrlimit(RLIMIT_AS, &before) == 0);
    if (before.rlim_cur != RLIM_INFINITY) return;
    CHECK(affordable_threads(64) == 64);
#if !defined(__SANITIZE_ADDRESS__)
    const rlimit tight{std::size_t{256} * 1024 * 1024, before.rlim_max};
    REQUIRE(::setrlimit(RLIMIT_AS, &tight) == 0);
    const unsigned few = affordable_threads(64), one = affordable_threads(1);
    REQUIRE(::setrlimit(RLIMIT_AS, &before) == 0);
    CHECK(few == 3);  // of 72 MiB each
    CHECK(one == 1);
#endif
}
