// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <seatload/sheet/scale.hpp>

namespace seatload::test {
namespace {

TEST_CASE("the scale is the largest of the ISO 5455 series that is not too large", "[sheet]") {
    // ISO 5455: 50:1, 20:1, 10:1, 5:1, 2:1, 1:1, 1:2, 1:5, 1:10 ...
    CHECK(sheet::largest_scale(5.09).text() == "5:1");
    CHECK(sheet::largest_scale(4.99).text() == "2:1");
    CHECK(sheet::largest_scale(1.0).text() == "1:1");
    CHECK(sheet::largest_scale(0.99).text() == "1:2");
    CHECK(sheet::largest_scale(0.3).text() == "1:5");
    CHECK(sheet::largest_scale(60.0).text() == "50:1");
    CHECK(sheet::largest_scale(1000.0).text() == "100:1");
    CHECK(sheet::largest_scale(1e-6).text() == "1:1000");
}

}  // namespace
}  // namespace seatload::test
