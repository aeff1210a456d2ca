// SPDX-License-Identifier: MIT
// What comes first of the springs offered, held against what the simulation says of each: two reckonings that share no
// formula of room.
#include <string>

#include <seatload/core/file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;

namespace {

/// Room is told in tenths and decides by its nearest limit alone, where the simulation adds up all: so much of a share
/// two springs of the same room may differ by.
constexpr double kAsGood = 0.03;

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
    options.springs = 50'000;
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
        for (const sizing::Alternative& other : offered) {
            CAPTURE(name, other.why);
            CHECK(first >= share(r, space, other.candidate) - kAsGood);
        }
    }
}
