// SPDX-License-Identifier: MIT
#include "sheet_words.hpp"

#include <algorithm>

#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "specimens.hpp"

namespace seatload::test {

std::string words_of(const sheet::Drawing& page) {
    std::string out;
    for (const sheet::Item& item : page.items())
        if (const auto* text = std::get_if<sheet::Text>(&item)) out += sheet::plain(text->words) + "\n";
    return out;
}

std::string sheet_words(const record::Spec& spec, const wire::Grade& grade) {
    const auto page = sheet::spring_sheet({spec, grade, tolerances(), paper(), 2, 7});
    REQUIRE(page.has_value());
    return words_of(*page);
}
std::string sheet_words(const record::Spec& spec) { return sheet_words(spec, grade_of(spec)); }

std::string joined(std::string words) {
    std::replace(words.begin(), words.end(), '\n', ' ');
    for (auto at = words.find("\u00a0"); at != std::string::npos; at = words.find("\u00a0"))
        words.replace(at, std::string("\u00a0").size(), " ");
    return words;
}

std::string enquiry_words(const std::vector<record::Spec>& specs) {
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (const record::Spec& spec : specs) alternatives.push_back({spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), paper());
    REQUIRE(pages.has_value());
    std::string out;
    for (const sheet::Drawing& page : *pages) out += words_of(page);
    return out;
}

}  // namespace seatload::test
