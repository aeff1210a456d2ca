// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#if defined(NDEBUG) && !defined(__SANITIZE_ADDRESS__)

#include <algorithm>
#include <chrono>

#include <seatload/sheet/spring_sheet.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

/// Median of five, so that a pause of the machine does not count [ms].
template <class Work>
double median_time(const Work& work) {
    std::vector<double> times;
    for (int i = 0; i < 5; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    std::sort(times.begin(), times.end());
    return times[2];
}

TEST_CASE("a sheet is made in under 100 ms", "[sheet]") {
    for (const Specimen& specimen : specimens()) {
        INFO(specimen.name);
        CHECK(median_time([&] {
                  REQUIRE(sheet::spring_sheet_pdf(
                              {specimen.spec, grade_of(specimen.spec), tolerances(), paper(), 1, 1, "any text"})
                              .has_value());
              }) < 100.0);
    }
}

}  // namespace
}  // namespace seatload::test

#endif
