// SPDX-License-Identifier: MIT
// What an enquiry says of other enquiries that the same wire serves.
#include <seatload/sheet/enquiry.hpp>
#include <support/check.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

record::Spec of_ahead() {
    return specimen({"EN10270-1-SH", 0.7, 7.45, 7.5, 20.5, spring::Ends::closed_ground, 15.0, 9.0});
}

record::Spec of_astern() {
    record::Spec spec = of_ahead();
    spec.identity.position = "astern latch plunger";
    spec.identity.number = "OT-14-0313";
    spec.alternative = "C";
    return spec;
}

std::string words_with(const sheet::SameWire& same, const sheet::Paper& paper) {
    const record::Spec spec = of_ahead();
    const sheet::EnquiryAlternative alternatives[] = {{spec, grade_of(spec)}};
    sheet::EnquiryLetter letter;
    letter.same_wire = {same};
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper, letter);
    REQUIRE(pages.has_value());
    return joined(words_of(pages->front()));
}

}  // namespace

TEST_CASE("an enquiry names the alternative of another that is of the same wire, and the wire of both", "[sheet]") {
    const sheet::SameWire same{"A", {of_astern()}, false, {{{20, 30}, 27.94 * gram}, {{50, 60}, 61.2 * gram}}};
    const std::string words = words_with(same, paper());
    CHECK_THAT(words,
               ContainsSubstring("Alternative A here and alternative C of our enquiry OT-14-0313 are of the same "
                                 "wire: EN 10270-1"));
    CHECK_THAT(words, ContainsSubstring("d 0.70 mm. One coil serves them all."));
    CHECK_THAT(words, ContainsSubstring("20 + 30 pieces, 27.9 g; 50 + 60 pieces, 61.2 g."));
    CHECK(words.find("one and the same spring") == std::string::npos);
}

TEST_CASE("an enquiry without a number is named by its title, in the paper's language", "[sheet]") {
    record::Spec other = of_astern();
    other.identity.number.clear();
    other.title = "Astern spring";
    const sheet::SameWire same{"A", {other}, true, {}};
    CHECK_THAT(words_with(same, paper()), ContainsSubstring("alternative C of our enquiry Astern spring are"));
    CHECK_THAT(words_with(same, paper()), ContainsSubstring("They are one and the same spring"));
    const std::string german = words_with(same, paper("de", sheet::PaperSize::a4, false, sheet::Units::metric));
    CHECK_THAT(german,
               ContainsSubstring("Variante A hier und Variante C unserer Anfrage Astern spring sind aus demselben"));
}

TEST_CASE("an enquiry says nothing of a wire none of its alternatives is of", "[sheet]") {
    const sheet::SameWire same{"Z", {of_astern()}, false, {}};
    CHECK(words_with(same, paper()).find("same wire") == std::string::npos);
}

}  // namespace seatload::test
