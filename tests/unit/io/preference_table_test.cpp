// SPDX-License-Identifier: MIT
#include <seatload/io/requirement_file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using demand::Criterion;

namespace {

demand::Preference preference_of(const std::string& lines) {
    const auto read =
        io::read_requirement(io::kLeast + "full_travel = \"at most 13.5 N\"\n" + lines, "x.toml", io::catalogue());
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    return read->preference;
}

}  // namespace

TEST_CASE("A requirement without wishes ranks by tolerance room, stress margin, cost and release force") {
    const demand::Preference p = preference_of("");
    CHECK(p.order ==
          demand::Order{Criterion::tolerance_room, Criterion::stress_margin, Criterion::cost, Criterion::release});
    CHECK((p.grades.empty() && p.diameters.empty() && p.ends.empty()));
}

TEST_CASE("Criteria named in [prefer] come first, the others follow in their usual order") {
    CHECK(preference_of("[prefer]\norder = [\"stress margin\", \"tolerance room\", \"cost\"]\n").order ==
          demand::Order{Criterion::stress_margin, Criterion::tolerance_room, Criterion::cost, Criterion::release});
    CHECK(preference_of("[prefer]\norder = [\"release force\"]\n").order ==
          demand::Order{Criterion::release, Criterion::tolerance_room, Criterion::stress_margin, Criterion::cost});
}

TEST_CASE("Preferred grades, wire and ends are read, the grades as the catalogue spells them") {
    const demand::Preference p = preference_of(
        "[coil]\nends = [\"closed\", \"closed and ground\"]\n"
        "[prefer]\ngrades = [\"astm-a401\"]\ndiameters = [\"0.70 mm\", \"1/32 in\"]\nends = [\"closed\"]\n");
    CHECK(p.grades == std::vector<std::string>{"ASTM-A401"});
    REQUIRE(p.diameters.size() == 2);
    CHECK(in_mm(p.diameters[0]) == 0.7);
    CHECK_THAT(in_mm(p.diameters[1]), WithinAbs(0.79375, 1e-12));  // 25.4/32
    CHECK(p.ends == std::vector{spring::Ends::closed});
}
