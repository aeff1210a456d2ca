// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#if defined(NDEBUG) && !defined(__SANITIZE_ADDRESS__)

#include <algorithm>
#include <ctime>
#include <limits>

#include <seatload/sheet/spring_sheet.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

/// Processor time, which other work on the machine hardly changes; the least of seven, as it can only lengthen it [ms].
template <class Work>
double least_time(const Work& work) {
    double least = std::numeric_limits<double>::infinity();
    for (int i = 0; i < 7; ++i) {
        const std::clock_t start = std::clock();
        work();
        least = std::min(least, 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
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
