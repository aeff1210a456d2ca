// SPDX-License-Identifier: MIT
// How the sheet wants the spring treated and pressed.
#include <cmath>

#include <seatload/sheet/fatigue_limits.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("plated hard wire is to be baked, plated stainless is not", "[sheet]") {
    record::Spec hard = specimen({"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0});
    hard.finish = "zinc plated";
    CHECK_THAT(sheet_words(hard), ContainsSubstring("Bake at once after plating"));
    record::Spec stainless = specimen(latch());
    stainless.finish = "zinc plated";
    CHECK(sheet_words(stainless).find("hydrogen") == std::string::npos);
}

TEST_CASE("a spring that may yield when pressed solid is never pressed below L2", "[sheet]") {
    const Shape fat{"EN10270-1-SH", 8.0, 45.0, 4.5, 80.0, spring::Ends::closed_ground, 72.0, 60.0};
    const std::string words = joined(sheet_words(specimen(fat)));
    CHECK_THAT(words, ContainsSubstring("Press 3 times to length L2."));
    CHECK_THAT(words, ContainsSubstring("Never press it shorter than L2"));
    CHECK(words.find("τ at Lc within its limit") == std::string::npos);
    CHECK(joined(sheet_words(specimen(latch()))).find("Never press") == std::string::npos);
}

TEST_CASE("wire that is aged must be aged, other wire is relieved as the maker does it", "[sheet]") {
    CHECK_THAT(sheet_words(specimen(latch())), ContainsSubstring("■\nageing after coiling"));
    Shape shape{"EN10270-1-SH", 1.25, 10.0, 8.0, 28.0, spring::Ends::closed, 22.0, 16.0};
    CHECK_THAT(sheet_words(specimen(shape)), ContainsSubstring("◊\nstress relief, guide\n("));
    shape.grade = "ASTM-A313-631-C";
    CHECK_THAT(sheet_words(specimen(shape)), ContainsSubstring("ageing\nnone: used as drawn"));
}

TEST_CASE("a sheet in inches gives the heat of treatment in Fahrenheit too", "[sheet]") {
    const auto words = [](const char* grade) {
        const record::Spec spec = specimen({grade, 1.0, 8.0, 10.5, 30.0, spring::Ends::closed, 24.0, 18.0});
        const sheet::Paper inch = paper("en", sheet::PaperSize::letter, false, sheet::Units::inch);
        const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), inch});
        REQUIRE(page.has_value());
        return joined(words_of(*page));
    };
    // By 1.8 C + 32: 392, 572 and 899.6, which is rounded as the Celsius are whole.
    CHECK_THAT(words("EN10270-1-SH"), ContainsSubstring("(392 to 572 °F [200 to 300 °C], 30 min)"));
    CHECK_THAT(words("ASTM-A313-631-CH900"), ContainsSubstring("900 °F [482 °C], 60 min"));
}

TEST_CASE("a sheet under cycles gives the stress range and binds it", "[sheet]") {
    record::Spec spec = specimen(latch());
    CHECK(sheet_words(spec).find("stress range") == std::string::npos);
    spec.duty.cycles = 2e6;
    const std::string words = joined(sheet_words(spec));
    CHECK_THAT(words, ContainsSubstring("stress range τkh"));
    CHECK_THAT(words, ContainsSubstring("τk [MPa]"));
    // Up to the largest load at L2 that is accepted: tau_k2 grows as the load.
    const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
    REQUIRE(facts.has_value());
    const check::AtLength& two = *facts->values.full_travel;
    const double most = in_mpa(two.corrected_stress) * in_newton(spec.full_travel.nominal + spec.full_travel.plus) /
                        in_newton(two.load);
    const sheet::FatigueLimits limits = sheet::fatigue_limits(*facts);
    CHECK_THAT(in_mpa(limits.upper), WithinRel(most, 1e-9));
    const auto number = [](Stress stress) { return std::to_string(static_cast<int>(std::floor(in_mpa(stress)))); };
    CHECK_THAT(words, ContainsSubstring("τk2 at or below " + number(limits.upper) + " MPa, τkh at or below " +
                                        number(limits.range) + " MPa"));
    CHECK_THAT(words, ContainsSubstring("shot peening (none)"));
}

TEST_CASE("a piece at both limits of fatigue has the factor asked for, and no more", "[sheet]") {
    // Goodman by hand (Shigley ch. 6 and 10): 1/n = tau_a/Sse + tau_m/Ssu, Sse = Ssa/(1 - Ssm/Ssu), Ssu = 0.67 Rm,
    // Zimmerli as wound Ssa 35 kpsi and Ssm 55 kpsi (Shigley Eq. 10-28).
    constexpr double kKpsi = 6.894757;
    for (const double plus : {0.2, 1.0, 4.0, 30.0}) {
        record::Spec spec =
            specimen({"EN10270-2-FDSiCr", 1.7, 12.9, 15.0, 69.5, spring::Ends::closed_ground, 42.0, 38.0});
        spec.duty.cycles = 2e6;
        spec.full_travel.plus = plus * newton;
        const auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
        REQUIRE(facts.has_value());
        CAPTURE(plus);
        const double strength = 0.67 * in_mpa(facts->values.strength.minimum);
        const double reversed = 35.0 * kKpsi / (1.0 - 55.0 * kKpsi / strength);
        const sheet::FatigueLimits limits = sheet::fatigue_limits(*facts);
        const double amplitude = 0.5 * in_mpa(limits.range), mean = in_mpa(limits.upper) - amplitude;
        CHECK_THAT(1.0 / (amplitude / reversed + mean / strength), WithinRel(spec.limits.fatigue_factor, 1e-6));
        CHECK(limits.range >= facts->values.full_travel->corrected_stress - facts->values.seated->corrected_stress);
        CHECK(limits.upper >= facts->values.full_travel->corrected_stress);
    }
}

TEST_CASE("wire that is aged after coiling says with what strength it is bought, where that is known", "[sheet]") {
    // X-750 spring temper: 190 to 230 ksi as drawn (a property table, seen); 190 ksi are 1310 MPa.
    Shape shape{"X750-spring", 0.75, 7.4, 8.5, 19.8, spring::Ends::closed, 15.0, 9.0};
    CHECK_THAT(joined(sheet_words(specimen(shape))), ContainsSubstring("its Rm at least (1310 MPa)"));
    shape.grade = "X750-No1";
    CHECK(joined(sheet_words(specimen(shape))).find("its Rm at least") == std::string::npos);
}

}  // namespace
}  // namespace seatload::test
