// SPDX-License-Identifier: MIT
#include <cli/progress_bar.hpp>

#include <cmath>
#include <string>

namespace seatload::cli {
namespace {

constexpr auto kPatience = std::chrono::milliseconds(500);
constexpr auto kBetween = std::chrono::milliseconds(50);
constexpr int kLength = 30;

}  // namespace

void ProgressBar::show(double share) {
    const auto now = Clock::now();
    if (now - start_ < kPatience || now - last_ < kBetween) return;
    last_ = now;
    shown_ = true;
    const int full = static_cast<int>(std::lround(share * kLength));
    err_ << "\rsearching [" << std::string(static_cast<std::size_t>(full), '#')
         << std::string(static_cast<std::size_t>(kLength - full), '.') << "] " << std::lround(100.0 * share) << " %"
         << std::flush;
}

ProgressBar::~ProgressBar() {
    if (shown_) err_ << '\r' << std::string(kLength + 22, ' ') << '\r' << std::flush;
}

}  // namespace seatload::cli
