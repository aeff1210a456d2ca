// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <thread>
#include <vector>

namespace seatload::sizing {

/// How many threads to start for so many jobs; `wanted` 0 means as many as the machine has.
inline unsigned worker_count(unsigned wanted, std::size_t jobs) {
    const unsigned threads = wanted != 0 ? wanted : std::max(1u, std::thread::hardware_concurrency());
    return static_cast<unsigned>(std::min<std::size_t>(threads, std::max<std::size_t>(1, jobs)));
}

/// Calls `work(job, worker)` once for each job, the low jobs first, from so many threads.
template <class Work>
void share_out(std::size_t jobs, unsigned workers, const Work& work) {
    std::atomic<std::size_t> next = 0;
    const auto run = [&](std::size_t worker) {
        for (std::size_t job = next++; job < jobs; job = next++) work(job, worker);
    };
    std::vector<std::thread> threads;
    for (std::size_t t = 1; t < workers; ++t) threads.emplace_back(run, t);
    run(0);
    for (std::thread& thread : threads) thread.join();
}

}  // namespace seatload::sizing
