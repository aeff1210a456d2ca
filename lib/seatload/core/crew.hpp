// SPDX-License-Identifier: MIT
#pragma once

#include <exception>
#include <mutex>
#include <new>
#include <system_error>
#include <thread>
#include <vector>

namespace seatload {

/// How many threads may be started when so many are wanted: fewer under a limit on the process's memory (`ulimit -v`),
/// of which each takes its share whether it needs it or not, and the work is left none.
unsigned affordable_threads(unsigned wanted);

/// Calls `run(worker)` in each of `workers` threads, in this one as worker 0, and waits until all have ended. Where the
/// system starts no more threads, as at a limit on memory, those there are must do: `run` takes work until none is
/// left. What was thrown first is thrown on from here, once all have ended.
template <class Run>
void run_crew(unsigned workers, const Run& run) {
    std::exception_ptr thrown;
    std::mutex guard;
    const auto guarded = [&](unsigned worker) {
        try {
            run(worker);
        } catch (...) {
            const std::lock_guard lock(guard);
            if (!thrown) thrown = std::current_exception();
        }
    };
    std::vector<std::thread> threads;
    const unsigned afforded = affordable_threads(workers);
    threads.reserve(afforded);
    try {
        for (unsigned t = 1; t < afforded; ++t) threads.emplace_back(guarded, t);
    } catch (const std::system_error&) {  // too few threads are no reason to give up
    } catch (const std::bad_alloc&) {
    }
    guarded(0);
    for (std::thread& thread : threads) thread.join();
    if (thrown) std::rethrow_exception(thrown);
}

}  // namespace seatload
