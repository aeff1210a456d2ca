// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>
#include <string>

namespace seatload {

/// A broken invariant of our own; only main() catches it, and ends with exit code 3.
class InternalError : public std::logic_error {
  public:
    using std::logic_error::logic_error;
};

[[noreturn]] inline void fail_assertion(const char* condition, const char* file, int line) {
    throw InternalError(std::string(file) + ':' + std::to_string(line) + ": " + condition);
}

}  // namespace seatload

// A macro because only a macro can quote the condition; stays on in Release, where a crash is cheaper than a wrong
// spring.
#define SEATLOAD_ASSERT(condition) ((condition) ? void(0) : ::seatload::fail_assertion(#condition, __FILE__, __LINE__))
