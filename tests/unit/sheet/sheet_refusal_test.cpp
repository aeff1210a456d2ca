// SPDX-License-Identifier: MIT
// Specs that no sheet is made of.
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

using Catch::Matchers::EndsWith;
using Catch::Matchers::StartsWith;

TEST_CASE("a sheet that leaves the maker nothing to adjust is refused", "[sheet]") {
    record::Spec spec = specimen(latch());
    using Adjustables = std::vector<record::Adjustable>;
    for (const Adjustables& left : {Adjustables{}, Adjustables{record::Adjustable::free_length},
                                    Adjustables{record::Adjustable::coils_and_wire}}) {
        spec.adjustable = left;
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()});
        REQUIRE_FALSE(page.has_value());
        CHECK_THAT(render({page.error().front()}),
                   StartsWith("error: over-defined: both loads are required, and the maker may not adjust "));
        CHECK_THAT(
            render({page.error().front()}),
            EndsWith(" [over-defined]\n    hint: let the maker adjust the free length, and the coils with either "
                     "the wire diameter or the coil diameter\n"));
    }
    spec.adjustable.clear();
    CHECK(render(sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper()}).error()) ==
          "error: over-defined: both loads are required, and the maker may not adjust anything [over-defined]\n"
          "    hint: let the maker adjust the free length, and the coils with either the wire diameter or the coil "
          "diameter\n");
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
        return render({page.error().front()});
    };
    CHECK(complaint([](record::Spec& s) { s.spring.total_coils = 2.0; }) ==
          "error: the spring has no active coils [impossible-spring]\n"
          "    hint: total_coils counts the closed coils of both ends too: two or so are not active\n");
    CHECK(complaint([](record::Spec& s) { s.spring.free_length = 7.6 * mm; }) ==
          "error: the free spring is not longer than its coils [impossible-spring]\n"
          "    hint: look at free_length, total_coils and wire_diameter: pressed solid it would be longer than free\n");
    CHECK(complaint([](record::Spec& s) { s.spring.mean_diameter = 0.8 * mm; }) ==
          "error: the coil diameter is not larger than the wire [impossible-spring]\n"
          "    hint: look at wire_diameter and the diameter of the coils: are they exchanged?\n");
    const std::string lengths =
        "error: the lengths do not fall from free to seated to full travel [impossible-spring]\n"
        "    hint: look at free_length, seated_height and full_travel_height: are two of them exchanged?\n";
    CHECK(complaint([](record::Spec& s) { s.seated.length = 20.0 * mm; }) == lengths);
    CHECK(complaint([](record::Spec& s) { s.full_travel.length = 15.5 * mm; }) == lengths);
}

}  // namespace
}  // namespace seatload::test
