// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <ostream>

namespace seatload::cli {

/// A bar on the error stream for work that takes more than half a second; it wipes itself away when done.
class ProgressBar {
  public:
    explicit ProgressBar(std::ostream& err) : err_(err), start_(Clock::now()), last_(start_) {}
    ProgressBar(const ProgressBar&) = delete;
    ProgressBar& operator=(const ProgressBar&) = delete;
    ~ProgressBar();

    /// Shows that a share of the work is done.
    void show(double share);

  private:
    using Clock = std::chrono::steady_clock;
    std::ostream& err_;
    Clock::time_point start_;
    Clock::time_point last_;
    bool shown_ = false;
};

}  // namespace seatload::cli
