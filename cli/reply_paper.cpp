// SPDX-License-Identifier: MIT
#include <cli/reply_paper.hpp>

#include <seatload/core/file.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/io/reply_file.hpp>

namespace seatload::cli {

std::string reply_form(std::span<const sheet::EnquiryAlternative> alternatives,
                       const demand::Correspondence& correspondence) {
    std::vector<std::string> letters;
    std::string specs;
    for (const sheet::EnquiryAlternative& alternative : alternatives) {
        letters.push_back(alternative.spec.alternative);
        specs += alternative.spec_text;
    }
    record::Reply reply = record::blank_reply(alternatives.front().spec, letters, correspondence);
    reply.enquiry.mark = sha256_hex(specs);
    return io::write_reply(reply);
}

Diagnostics answers_in_the_way(const std::filesystem::path& path) {
    std::error_code unreadable;
    if (!std::filesystem::exists(path, unreadable)) return {};
    const auto text = read_text_file(path);
    if (!text) return text.error();
    const auto reply = io::read_reply(*text, path.string());
    if (reply && !reply->is_quoted() && reply->maker.firm.empty()) return {};
    return {error_in(path.string(), "answers-stand-here"_id,
                     "a maker's answers stand in this file, where a blank form is to be written",
                     "name it after the maker, or move it away")};
}

}  // namespace seatload::cli
