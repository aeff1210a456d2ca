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

Diagnostics doubts_on_letters(const record::Reply& reply, const std::string& file_name) {
    if (!reply.enquiry.mark.empty() || !reply.is_quoted()) return {};
    std::vector<std::string> letters;
    for (const record::Offer& offer : reply.offers)
        if (offer.is_quoted()) letters.push_back(offer.alternative);
    const bool is_one = letters.size() == 1;
    Diagnostic doubt = complaint(
        Severity::warning, "no-mark"_id,
        "nothing shows that alternative" + std::string(is_one ? " " : "s ") + join(letters, ", ") + " of this reply " +
            (is_one ? "is the spring" : "are the springs") + " enquired for now, as it bears no mark",
        "compare " + std::string(is_one ? "it" : "them") +
            " with the sheet the maker answers; where they are the same, copy the line that "
            "begins with mark from the blank form beside the enquiry");
    doubt.place.file = file_name;
    return {doubt};
}

}  // namespace seatload::io
