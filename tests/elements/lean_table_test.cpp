// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <elements/lean_rows.hpp>
#include <limits>
#include <numbers>
#include <support/check.hpp>

using namespace seatload::test::elements;

namespace {

std::vector<LeanRow> sliding_rows() {
    auto rows = lean_rows();
    std::erase_if(rows, [](const LeanRow& row) { return row.head != Head::slides; });
    return rows;
}

/// tan(climb) s, the lean of whole turns as long as it is small; share of D.
double first_order(const LeanRow& row) {
    const ActiveCoils c = row.coils();
    return c.pitch_mm / (std::numbers::pi * c.D_mm) * row.deflection_mm() / c.D_mm;
}

}  // namespace

TEST_CASE("the bound on lean is never below what finite elements give") {
    const auto rows = sliding_rows();
    CHECK(rows.size() > 400);
    for (const LeanRow& row : rows) {
        INFO(text(row));
        CHECK(row.bound() >= row.lean);
    }
}

TEST_CASE("the bound on lean is near what finite elements give") {
    // Past 0.2 D the lean itself stiffens the spring, which the bound does not count: no spring in a bore goes there.
    int near = 0;
    for (const LeanRow& row : sliding_rows()) {
        if (row.lean > 0.2 || row.over() == 0.5) continue;
        INFO(text(row));
        CHECK(row.bound() <= (row.over() == 0.0 ? 1.15 : 1.27) * row.lean);
        ++near;
    }
    CHECK(near > 200);
}

TEST_CASE("with half a turn over the lean is an eighth of that of whole turns or less") {
    // It passes through zero on the way, so that no factor holds; the bound is then held against whole turns.
    int half_turns = 0;
    for (const LeanRow& row : sliding_rows()) {
        if (row.over() != 0.5) continue;
        LeanRow whole = row;
        whole.n = row.n - 0.5;
        INFO(text(row));
        CHECK(row.bound() <= whole.bound() / 8.0);
        ++half_turns;
    }
    CHECK(half_turns > 90);
}

TEST_CASE("held on its axis it is the spring with half a turn over that bows") {
    // The most and the least, as shares of tan(climb) s.
    double whole = 0.0, half = std::numeric_limits<double>::infinity();
    int rows = 0;
    for (const LeanRow& row : lean_rows()) {
        if (row.head != Head::on_axis) continue;
        INFO(text(row));
        ++rows;
        CHECK(row.lean == 0.0);
        CHECK(row.bow < 0.3 * first_order(row));
        if (row.over() == 0.0) whole = std::max(whole, row.bow / first_order(row));
        if (row.over() == 0.5) half = std::min(half, row.bow / first_order(row));
    }
    CHECK(rows == 32);
    CHECK(whole < 0.1);
    CHECK((half > 0.19 && half < 0.3));
}
