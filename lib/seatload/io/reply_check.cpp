// SPDX-License-Identifier: MIT
#include <seatload/io/reply_check.hpp>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kOtherEnquiry = "give the enquiry it answers, or ask the maker for a reply to this one";

void expect_same(Document& document, std::string_view key, const std::string& stated, const std::string& asked) {
    if (stated.empty() || stated == asked) return;
    const std::string path = "enquiry." + std::string(key);
    document.error(document.at(path), "answers-another-enquiry"_id,
                   path + ": the reply answers \"" + stated + "\", the enquiry has " +
                       (asked.empty() ? "none" : '"' + asked + '"'),
                   std::string(kOtherEnquiry));
}

std::string listed(const std::vector<int>& numbers) {
    std::vector<std::string> words;
    for (const int number : numbers) words.push_back(std::to_string(number));
    return join(words, ", ");
}

void expect_same_list(Document& document, std::string_view key, const std::string& stated, const std::string& asked) {
    if (stated.empty() || stated == asked) return;
    const std::string path = "enquiry." + std::string(key);
    document.error(document.at(path), "answers-another-enquiry"_id,
                   path + ": the enquiry asked for " + (asked.empty() ? "none" : asked),
                   "leave the lines under [enquiry] as they were; another quantity is a block [[offer.price]] more");
}

}  // namespace

void expect_answer_to(Document& document, const record::Enquired& stated, const record::Enquired& asked) {
    if (stated.number.empty() && stated.mark.empty())
        document.warning(document.at("enquiry"), "answers-no-enquiry"_id,
                         "the reply does not say which enquiry it answers",
                         "taken as an answer to this one; write under [enquiry]: number = \"" + asked.number + '"');
    expect_same(document, "number", stated.number, asked.number);
    expect_same(document, "revision", stated.revision, asked.revision);
    expect_same_list(document, "alternatives", join(stated.alternatives, ", "), join(asked.alternatives, ", "));
    expect_same_list(document, "quantities", listed(stated.quantities), listed(asked.quantities));
    if (!stated.mark.empty() && !asked.mark.empty() && stated.mark != asked.mark)
        document.error(document.at("enquiry.mark"), "answers-another-enquiry"_id,
                       "enquiry.mark: the reply answers other specs than this enquiry's",
                       "they were changed in between: the maker must see the present ones");
}

}  // namespace seatload::io
