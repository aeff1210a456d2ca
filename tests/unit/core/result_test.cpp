// SPDX-License-Identifier: MIT
#include <memory>

#include <seatload/core/result.hpp>

#include "support/check.hpp"

using namespace seatload;

TEST_CASE("a result holds a value and the warnings that came with it") {
    const Result<int> result(7, {complaint(Severity::warning, "unknown-key"_id, "mind")});
    REQUIRE(result);
    CHECK(*result == 7);
    CHECK(result.error().size() == 1);
}

TEST_CASE("a result holds the reasons why there is no value") {
    const Result<int> result(Diagnostics{Diagnostic{}, Diagnostic{}});
    CHECK_FALSE(result.has_value());
    CHECK(result.error().size() == 2);
    CHECK_THROWS_AS(result.value(), InternalError);
}

TEST_CASE("a value that cannot be copied is moved out of its result") {
    Result<std::unique_ptr<int>> result(std::make_unique<int>(3));
    const std::unique_ptr<int> taken = std::move(result).value();
    CHECK(*taken == 3);
}

TEST_CASE("a broken invariant names its condition and place") {
    try {
        SEATLOAD_ASSERT(1 + 1 == 3);
        FAIL("nothing was thrown");
    } catch (const InternalError& error) {
        CHECK_THAT(error.what(), ContainsSubstring("1 + 1 == 3") && ContainsSubstring("result_test.cpp:"));
    }
}
