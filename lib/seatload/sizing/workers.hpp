// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <thread>

#include <seatload/core/crew.hpp>

namespace seatload::sizing {

/// How many threads to start for so many jobs; `wanted` 0 means as many as the machine has.
inline unsigned worker_count(unsigned wanted, std::size_t jobs) {
    const unsigned threads = wanted != 0 ? wanted : std::max(1u, std::thread::hardware_concurrency());
    return static_cast<unsigned>(std::min<std::size_t>(threads, std::max<std::size_t>(1, jobs)));
}

/// Calls `work(job, worker)` once for each job, the low jobs first, from so many threads. When one throws, no further
/// job is begun, and it is thrown on from here.
template <class Work>
void share_out(std::size_t jobs, unsigned workers, const Work& work) {
    std::atomic<std::size_t> next = 0;
    run_crew(workers, [&](std::size_t worker) {
        try {
            for (std::size_t job = next++; job < jobs; job = next++) work(job, worker);
        } catch (...) {
            next = jobs;
            throw;
        }
    });
}

}  // namespace seatload::sizing
