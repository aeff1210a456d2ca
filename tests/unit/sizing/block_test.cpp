// SPDX-License-Identifier: MIT
#include <random>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "every_combination.hpp"
#include "varied_requirements.hpp"

// The search over blocks against the plain loop, on grids of all shapes and with bounds that springs of the grid meet
// to the last bit.

using namespace seatload;

namespace {

class BlockDraw {
  public:
    double between(double low, double high) { return std::uniform_real_distribution(low, high)(engine_); }
    long whole(long low, long high) { return std::uniform_int_distribution(low, high)(engine_); }

  private:
    std::mt19937_64 engine_{13906};
};

/// Multiples of a step about a value, up to `most` of them; now and then a single one.
sizing::Axis about(double value, double step, long most, BlockDraw& draw) {
    const long count = draw.whole(0, 3) == 0 ? 1 : draw.whole(1, most);
    const double first = std::max(step, value - step * static_cast<double>(draw.whole(0, count - 1)));
    return sizing::axis_between(first, first + step * static_cast<double>(count), step);
}

/// The springs that fit a requirement best, one a wire and ends.
std::vector<sizing::Candidate> fitting(const sizing::Space& space) {
    std::vector<sizing::Candidate> all;
    for (const auto& best : sizing::search(space, test::tolerances()).best)
        if (best) all.push_back(*best);
    return all;
}

/// A piece of a space about a spring that fits, or else anywhere, with steps of its own: narrow, square, or one line.
sizing::Space piece(sizing::Space space, const std::vector<sizing::Candidate>& springs, BlockDraw& draw) {
    const auto pick = [&](std::size_t count) {
        return static_cast<std::size_t>(draw.whole(0, static_cast<long>(count) - 1));
    };
    const auto any = [&](const sizing::Axis& axis) { return axis.at(draw.whole(0, axis.count - 1)); };
    sizing::Candidate at;
    if (!springs.empty()) {
        at = springs[pick(springs.size())];
    } else {
        at.wire = pick(space.wires.size());
        at.mean_diameter_mm = any(space.wires[at.wire].mean_diameters);
        at.total_coils = any(space.total_coils);
        at.free_length_mm = any(space.free_lengths);
    }
    space.wires = {space.wires[at.wire]};
    space.wires.front().mean_diameters = about(at.mean_diameter_mm, draw.between(0.002, 0.2), 30, draw);
    space.total_coils = about(at.total_coils, draw.between(0.03, 0.6), 30, draw);
    space.free_lengths = about(at.free_length_mm, draw.between(0.02, 0.6), 30, draw);
    return space;
}

/// Sets bounds to what a spring of the grid has, so that it lies on them.
void bound_by_one_of_its_own(sizing::Space& space, BlockDraw& draw) {
    const auto any = [&](const sizing::Axis& axis) { return axis.at(draw.whole(0, axis.count - 1)); };
    const auto& wire = space.wires.front();
    const check::Coil coil(space.demand, wire.numbers, test::tolerances(), any(wire.mean_diameters), space.ends.front(),
                           any(space.total_coils));
    const double L0 = any(space.free_lengths);
    if (coil.active_coils <= 0.0) return;
    check::DemandNumbers& d = space.demand;
    const double seated = coil.cold_load_n(L0, d.seated_height_mm),
                 full = coil.cold_load_n(L0, d.full_travel_height_mm);
    const auto bound = [&](std::optional<double>& limit, double value) {
        if (limit && value >= 0.0 && draw.whole(0, 1) == 0) limit = value;
    };
    bound(d.seated_at_least_n, coil.hot_load_n(L0, d.seated_height_mm));
    bound(d.seated_at_most_n, seated);
    bound(d.full_at_least_n, coil.hot_load_n(L0, d.full_travel_height_mm));
    bound(d.full_at_most_n, full);
    if (draw.whole(0, 3) == 0) d.limits.smallest_index = coil.index;
    if (draw.whole(0, 3) == 0) d.limits.fewest_active_coils = coil.active_coils;
    if (draw.whole(0, 3) == 0) d.shortest_mm = L0;
}

}  // namespace

TEST_CASE("blocks of any shape hold what the plain loop finds, and bounds are inclusive in them") {
    BlockDraw draw;
    unsigned filled = 0, nearly = 0;
    for (const auto& [name, requirement] : test::varied_requirements()) {
        const sizing::Space whole = sizing::search_space(requirement, test::wires());
        if (whole.wires.empty()) continue;
        const auto springs = fitting(whole);
        for (int round = 0; round < 8; ++round) {
            sizing::Space space = piece(whole, springs, draw);
            bound_by_one_of_its_own(space, draw);
            CAPTURE(name, round, space.wires.front().mean_diameters.count, space.total_coils.count);
            const test::PlainCount plain = test::count_every_combination(space, test::tolerances());
            const sizing::Census census = sizing::search(space, test::tolerances());
            CHECK(census.fit == plain.fit);
            CHECK(sizing::any_fit(space, test::tolerances()).has_value() == (plain.fit > 0));
            filled += plain.fit > 0 ? 1 : 0;
            for (std::size_t i = 0; i < check::rules().size(); ++i) {
                CAPTURE(check::rules()[i].id);
                CHECK(census.rejections[i].all == plain.rejections[i].all);
                CHECK(census.rejections[i].alone == plain.rejections[i].alone);
                nearly += plain.rejections[i].alone > 0 ? 1 : 0;
            }
        }
    }
    CHECK(filled > 10);
    CHECK(nearly > 50);
}
