// SPDX-License-Identifier: MIT
// What the enquiry says.
#include <seatload/sheet/enquiry.hpp>
#include <support/check.hpp>

#include <algorithm>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

TEST_CASE("the enquiry compares what differs, names what is alike, and asks for each lot", "[sheet]") {
    record::Spec a = specimen(latch());
    record::Spec b = specimen({"EN10270-1-SH", 0.85, 7.5, 9.5, 19.0, spring::Ends::closed_ground, 15.0, 9.5});
    b.alternative = "B";
    std::string words = enquiry_words({a, b});
    std::replace(words.begin(), words.end(), '\n', ' ');  // wherever the lines end
    for (const char* part : {"Enquiry: Compression spring",
                             "alternatives A to B",
                             "What differs",
                             "wire diameter d",
                             "Alike in all",
                             "hand of coiling right",
                             "20 pieces:",
                             "50 pieces:",
                             "100 pieces:",
                             "price each",
                             "tooling",
                             "lead time",
                             "currency",
                             "valid until",
                             "wire you hold",
                             "its Rm",
                             "changes you ask for",
                             "signature",
                             "change without asking",
                             "accepted",
                             "when it arrives",
                             "mill certificate",
                             "tangle",
                             "Caution",
                             "Alternative A",
                             "Alternative B"})
        CHECK_THAT(words, ContainsSubstring(part));
    const std::string single = enquiry_words({a});
    CHECK(single.find("Alike in all") == std::string::npos);
    CHECK_THAT(single, ContainsSubstring("hand of coiling"));
}

TEST_CASE("a reply form stays with its heading", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.quantities = {10, 20, 50, 100, 200, 500};
    std::vector<sheet::EnquiryAlternative> alternatives(7, {spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper());
    REQUIRE(pages.has_value());
    int forms = 0;
    for (const sheet::Drawing& page : *pages) {
        const std::string words = words_of(page);
        for (const int lot : spec.quantities)
            if (const auto at = words.find('\n' + std::to_string(lot) + " pieces:\n"); at != std::string::npos) {
                ++forms;
                CHECK(words.find("price each", at) != std::string::npos);
            }
    }
    CHECK(forms == static_cast<int>(spec.quantities.size()));
}

}  // namespace
}  // namespace seatload::test
