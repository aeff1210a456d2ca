// SPDX-License-Identifier: MIT
#include <cli/replaced_papers.hpp>

#include <string>

#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/reply_file.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kLargestPaper = std::size_t{64} * 1024 * 1024;

/// Specs and calculation stay in the workshop.
bool is_for_makers(const Paper& paper, const std::filesystem::path& form) {
    const std::string name = paper.path.filename().string();
    return paper.path == form || (name.ends_with(".pdf") && !name.ends_with("-calculation.pdf"));
}

/// Whether a file stands there that is another than the paper; one that cannot be read is another.
bool is_replaced(const Paper& paper) {
    std::error_code unreadable;
    if (!std::filesystem::exists(paper.path, unreadable)) return false;
    const auto old = read_text_file(paper.path, kLargestPaper);
    return !old || *old != paper.bytes;
}

/// Whether the form is known to be of another enquiry, so that the papers beside it are not sent in its place.
bool is_of_another(const std::filesystem::path& form, const demand::Identity& identity) {
    const auto text = read_text_file(form);
    if (!text) return false;
    const auto reply = io::read_reply(*text, form.string());
    return reply && (reply->enquiry.number != identity.number || reply->enquiry.revision != identity.revision);
}

/// " (OM14-LAT-AHD, revision A)", as far as they are stated.
std::string enquiry_words(const demand::Identity& identity) {
    std::vector<std::string> words;
    if (!identity.number.empty()) words.push_back(identity.number);
    if (!identity.revision.empty()) words.push_back("revision " + identity.revision);
    return words.empty() ? "" : " (" + join(words, ", ") + ")";
}

}  // namespace

Diagnostics replaced_papers(const std::vector<Paper>& papers, const std::filesystem::path& form,
                            const demand::Identity& identity) {
    std::vector<std::string> replaced;
    for (const Paper& paper : papers)
        if (is_for_makers(paper, form) && is_replaced(paper)) replaced.push_back(paper.path.string());
    if (replaced.empty() || is_of_another(form, identity)) return {};
    const std::string count = replaced.size() == 1 ? "" : ", the first of " + std::to_string(replaced.size());
    Diagnostic warning =
        error_in(replaced.front(), "paper-replaced"_id,
                 "replaces another paper of the same enquiry" + enquiry_words(identity) + count,
                 "if it was sent, add a [[revision]] to the requirement first; the numbers it was made with bring it "
                 "back");
    warning.severity = Severity::warning;
    return {std::move(warning)};
}

}  // namespace seatload::cli
