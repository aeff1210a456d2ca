// SPDX-License-Identifier: MIT
// Specs that no sheet is made of.
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("a sheet that leaves the maker nothing to adjust is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    using Adjustables = std::vector<record::Adjustable>;
    for (const Adjustables& left : {Adjustables{}, Adjustables{record::Adjustable::free_length},
                                    Adjustables{record::Adjustable::coils_and_wire}}) {
        spec.adjustable = left;
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
        REQUIRE_FALSE(page.has_value());
        CHECK_THAT(page.error().front().message, ContainsSubstring("over-defined"));
        CHECK_FALSE(page.error().front().hint.empty());
    }
}

TEST_CASE("a spec whose spring does not give its loads is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.spring.free_length = spec.spring.free_length - 2.0 * mm;
    const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
    REQUIRE_FALSE(page.has_value());
    REQUIRE(page.error().size() == 2);
    CHECK_THAT(page.error()[0].message, ContainsSubstring("at 15 mm, its seated load asks for"));
    CHECK_THAT(page.error()[1].message, ContainsSubstring("at 9.5 mm, its load at full travel asks for"));
}

TEST_CASE("a wire outside its grade's range is an error", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.spring.wire_diameter = 30.0 * mm;
    spec.spring.mean_diameter = 200.0 * mm;
    CHECK_FALSE(sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()}).has_value());
}

TEST_CASE("a spring that cannot be drawn is an error with the reason", "[sheet]") {
    const auto complaint = [](auto spoil) {
        record::Spec spec = specimen(latch());
        spoil(spec);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
        REQUIRE_FALSE(page.has_value());
        return page.error().front().message;
    };
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.total_coils = 2.0; }), ContainsSubstring("no active coils"));
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.free_length = 7.6 * mm; }), ContainsSubstring("not longer"));
    CHECK_THAT(complaint([](record::Spec& s) { s.spring.mean_diameter = 0.8 * mm; }),
               ContainsSubstring("coil diameter"));
    CHECK_THAT(complaint([](record::Spec& s) { s.seated.length = 20.0 * mm; }), ContainsSubstring("lengths"));
    CHECK_THAT(complaint([](record::Spec& s) { s.full_travel.length = 15.5 * mm; }), ContainsSubstring("lengths"));
}

}  // namespace
}  // namespace seatload::test
