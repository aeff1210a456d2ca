// SPDX-License-Identifier: MIT
// What comes first of the springs offered, held against what the simulation says of each: two reckonings that share no
// formula of room.
#include <cmath>
#include <string>

#include <boost/math/distributions/normal.hpp>

#include <seatload/core/file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/sizing/merit.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;

namespace {

constexpr long kSpringsOfOffer = 50'000;

/// Share of springs by which two of the same room may differ, as room decides in whole tenths: what the normal curve
/// has between a tenth and the next, a tolerance being three standard deviations. Room is that of grade 2 here; to
/// grade 1 springs differ by less.
double worth_of_a_tenth(double room) {
    const double tenths = sizing::room_in_tenths(room);
    const boost::math::normal curve;
    return cdf(curve, 0.3 * (tenths + 1.0)) - cdf(curve, 0.3 * tenths);
}

/// Five standard errors of a share simulated.
double noise_of_offer(double share) { return 5.0 * std::sqrt(share * (1.0 - share) / kSpringsOfOffer); }

demand::Requirement demo(const std::string& name) {
    const std::string path = std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name + ".toml";
    return io::read_requirement(read_text_file(path).value(), path, test::wires()).value();
}

/// Share of springs made to grade 1 that meet the whole demand.
double share(const demand::Requirement& r, const sizing::Space& space, const sizing::Candidate& c) {
    const sizing::WireOption& wire = space.wires[c.wire];
    const spring::Spring spring{
        wire.size.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm, c.ends, r.hand};
    sizing::OutlookOptions options;
    options.springs = kSpringsOfOffer;
    const auto found = sizing::outlook({spring, space.grades[wire.grade], r, test::tolerances()}, options);
    REQUIRE(found);
    return found->by_grade[0].share();
}

}  // namespace

TEST_CASE("of the springs offered for a demo the first is kept by about as many lots as any, made to grade 1") {
    for (const char* name : {"ahead_latch", "astern_latch", "governor_detent", "oil_relief_valve"}) {
        demand::Requirement r = demo(name);
        r.grid.mean_diameter_step = 0.1 * mm;  // coarser than asked for, so that it does not take long
        r.grid.free_length_step = 0.1 * mm;
        const sizing::Space space = sizing::search_space(r, test::wires());
        const auto offered = sizing::spread(space, sizing::search(space, test::tolerances()), 5);
        REQUIRE(offered.size() >= 3);
        const double first = share(r, space, offered.front().candidate);
        const double as_good = worth_of_a_tenth(offered.front().candidate.merit.tolerance_room) + noise_of_offer(first);
        for (const sizing::Alternative& other : offered) {
            CAPTURE(name, other.why);
            CHECK(first >= share(r, space, other.candidate) - as_good);
        }
    }
}
