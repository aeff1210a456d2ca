// SPDX-License-Identifier: MIT
#include <seatload/core/crew.hpp>

#include <sys/resource.h>

#include <algorithm>

namespace seatload {
namespace {

/// Address space of a thread [bytes]: 8 MiB of stack and what glibc sets aside for its allocations, 64 MiB on 64-bit
/// machines (mallopt(3), M_ARENA_MAX; HEAP_MAX_SIZE in glibc's malloc/arena.c, from memory).
constexpr rlim_t kOfThread = 72ul * 1024 * 1024;

}  // namespace

unsigned affordable_threads(unsigned wanted) {
    rlimit limit{};
    if (::getrlimit(RLIMIT_AS, &limit) != 0 || limit.rlim_cur == RLIM_INFINITY) return wanted;
    return static_cast<unsigned>(std::clamp<rlim_t>(limit.rlim_cur / kOfThread, 1, std::max(1u, wanted)));
}

}  // namespace seatload
