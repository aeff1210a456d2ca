// SPDX-License-Identifier: MIT
#include <seatload/io/lot_file.hpp>

#include <support/check.hpp>

using namespace seatload;
using inspection::Kind;
using inspection::Verdict;

namespace {

record::Lot lot() {
    record::Lot l;
    l.spec = {"OM14-LAT-AHD", "A", std::string(64, 'a')};
    l.name = "first \"delivery\"";
    l.date = "2026-12-14";
    l.maker = "A";
    l.pieces = 40;
    l.inspected = 13;
    l.plan = "ISO 2859-1";
    l.verdict = Verdict::not_proven;
    l.reasons = {"seated load F1: 1 piece nearer to a limit than U"};
    l.conditions = {"free length L0 is at most 19.3 mm"};
    l.remarks = {"one", "two"};
    l.characteristics = {
        {Kind::seated_load, {5.04, 6.5}, 0.043, true, 12, 1, 0, 5.7421, 0.0811, Verdict::not_proven},
        {Kind::outside_diameter, {std::nullopt, 8.75}, 0.02, true, 5, 0, 0, 8.4523, std::nullopt, Verdict::accept},
        {Kind::total_coils, {6.4, 6.6}, 0.0, false, 0, 0, 0, std::nullopt, std::nullopt, Verdict::accept},
    };
    return l;
}

}  // namespace

TEST_CASE("The record of a lot reads back as it was written, and writes to the same bytes") {
    const std::string text = io::write_lot(lot());
    const auto read = io::read_lot(text, "lot.toml");
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    CHECK(io::write_lot(*read) == text);
    CHECK(read->verdict == Verdict::not_proven);
    CHECK(read->spec.sha256 == std::string(64, 'a'));
    CHECK(read->name == "first \"delivery\"");
    CHECK(read->inspected == 13);
    CHECK(read->reasons == lot().reasons);
    CHECK(read->conditions == lot().conditions);
    CHECK(read->remarks == lot().remarks);
    REQUIRE(read->characteristics.size() == 3);
    const record::LotCharacteristic& first = read->characteristics.front();
    CHECK(first.kind == Kind::seated_load);
    CHECK(first.limits == inspection::Limits{5.04, 6.5});
    CHECK(first.mean == 5.7421);
    CHECK(first.unproven == 1);
    CHECK_FALSE(read->characteristics[1].limits.least.has_value());
    CHECK_FALSE(read->characteristics[1].deviation.has_value());
    CHECK_FALSE(read->characteristics[2].decides);
}
