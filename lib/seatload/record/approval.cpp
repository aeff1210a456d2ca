// SPDX-License-Identifier: MIT
#include <seatload/record/approval.hpp>

#include <algorithm>

namespace seatload::record {
namespace {

using inspection::Verdict;

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string first_reason(const Lot& lot) { return lot.reasons.empty() ? "" : " (" + lot.reasons.front() + ")"; }

bool is_accepted(const LotEvidence& evidence) { return evidence.lot.verdict == Verdict::accept; }

}  // namespace

std::string not_of_this_spec(const Lot& lot, const KeptSpec& kept, const std::string& other_sha256) {
    const demand::Identity& identity = kept.spec.identity;
    if (lot.spec.number != identity.number)
        return "the lot was inspected by part number " + quoted(lot.spec.number) + ", this spec is " +
               quoted(identity.number);
    if (lot.spec.revision != identity.revision)
        return "the lot was inspected by revision " + quoted(lot.spec.revision) + ", this one is " +
               quoted(identity.revision);
    if (lot.spec.sha256 != kept.sha256 && lot.spec.sha256 != other_sha256)
        return "the lot was inspected by a spec of the same number and revision but other contents: SHA-256 " +
               lot.spec.sha256.substr(0, 12) + "..., this one has " + kept.sha256.substr(0, 12) + "...";
    return {};
}

std::vector<std::string> approval_refusals(const KeptSpec& kept, const check::Evaluation& evaluation,
                                           const ApprovalGround& ground) {
    std::vector<std::string> why;
    if (kept.is_altered())
        why.push_back("the spec was changed while it was on trial: what was tried is another spring");
    for (const LotEvidence& evidence : ground.lots) {
        const std::string other = not_of_this_spec(evidence.lot, kept, ground.file_sha256);
        if (!other.empty())
            why.push_back(evidence.file + ": " + other);
        else if (evidence.lot.verdict == Verdict::reject)
            why.push_back(evidence.file + ": the lot was rejected" + first_reason(evidence.lot));
        else if (evidence.lot.verdict == Verdict::not_proven && ground.without_inspection.empty())
            why.push_back(evidence.file + ": it is not proven that the lot is good" + first_reason(evidence.lot));
    }
    if (std::none_of(ground.lots.begin(), ground.lots.end(), is_accepted) && ground.without_inspection.empty())
        why.push_back("no lot of it was inspected and accepted");
    for (const check::Verdict& verdict : evaluation.verdicts)
        if (!verdict.passed) why.push_back("it breaks a limit of its own: " + verdict.reason);
    return why;
}

std::vector<std::string> conditions_of(const std::vector<LotEvidence>& lots) {
    std::vector<std::string> all;
    for (const LotEvidence& evidence : lots) {
        if (!is_accepted(evidence)) continue;
        if (evidence.lot.conditions.empty()) return {};
        for (const std::string& each : evidence.lot.conditions)
            if (std::find(all.begin(), all.end(), each) == all.end()) all.push_back(each);
    }
    return all;
}

}  // namespace seatload::record
