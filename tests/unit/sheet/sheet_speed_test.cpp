// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#if defined(NDEBUG) && !defined(__SANITIZE_ADDRESS__)

#include <algorithm>
#include <chrono>
#include <limits>

#include <seatload/sheet/spring_sheet.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

/// Least of seven, as other work on the machine can only lengthen it [ms].
template <class Work>
double least_time(const Work& work) {
    double least = std::numeric_limits<double>::infinity();
    for (int i = 0; i < 7; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
        least = std::min(least, took.count());
    }
    return least;
}

TEST_CASE("a sheet is made in under 100 ms", "[sheet][slow]") {
    for (const Specimen& specimen : specimens()) {
        INFO(specimen.name);
        CHECK(least_time([&] {
                  REQUIRE(sheet::spring_sheet_pdf(
                              {specimen.spec, grade_of(specimen.spec), tolerances(), paper(), 1, 1, "any text"})
                              .has_value());
              }) < 100.0);
    }
}

}  // namespace
}  // namespace seatload::test

#endif
