// SPDX-License-Identifier: MIT
#include <seatload/record/makers_copy.hpp>

#include <seatload/io/spec_file.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;

namespace {

record::Spec spec_with_secrets() {
    record::Spec spec;
    spec.identity.engine = "Ottermere M14";
    spec.identity.number = "OT-14-0312";
    spec.why = "cheapest that holds";
    spec.wire_grade = "EN10270-1-SH";
    spec.spring = {1.0 * mm, 8.0 * mm, 8.5, 30.0 * mm, spring::Ends::closed_ground, spring::Hand::right};
    spec.seated = {24.0 * mm, 18.4 * newton, 3.0 * newton, 3.0 * newton, 2};
    spec.full_travel = {18.0 * mm, 36.8 * newton, 4.0 * newton, 4.0 * newton, 2};
    spec.seated_demand = {15.25 * newton, std::nullopt};
    spec.full_travel_demand = {std::nullopt, 41.75 * newton};
    spec.space.bore = demand::Fit{10.0 * mm, 10.0 * mm, 10.0 * mm};
    spec.space.seated_height = 24.0 * mm;
    spec.space.full_travel_height = 18.0 * mm;
    spec.notes = {"Ends deburred."};
    return spec;
}

}  // namespace

TEST_CASE("a maker's copy tells neither engine, nor reason, nor the loads the mechanism bears") {
    const std::string ours = io::write_spec(spec_with_secrets());
    const std::string theirs = io::write_spec(record::makers_copy(spec_with_secrets()));
    for (const char* secret : {"M14", "cheapest", "needed", "15.25", "41.75"}) {
        CAPTURE(secret);
        CHECK(ours.find(secret) != std::string::npos);
        CHECK(theirs.find(secret) == std::string::npos);
    }
    for (const char* kept : {"OT-14-0312", "Ends deburred.", "18.4 N", "[limits]"})
        CHECK_THAT(theirs, ContainsSubstring(kept));
}

TEST_CASE("a maker's copy is read without complaint, and written again to the last byte") {
    const std::string text = io::write_spec(record::makers_copy(spec_with_secrets()));
    const auto read = io::read_spec(text, "copy.toml", test::wires());
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    CHECK(read.error().empty());
    CHECK_FALSE(read->seated_demand.at_least.has_value());
    CHECK_FALSE(read->full_travel_demand.at_most.has_value());
    CHECK(io::write_spec(*read) == text);
    CHECK(io::write_spec(record::makers_copy(*read)) == text);
}
