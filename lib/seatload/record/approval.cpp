// SPDX-License-Identifier: MIT
#include <seatload/record/approval.hpp>

#include <algorithm>
#include <optional>

namespace seatload::record {
namespace {

using inspection::Verdict;

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string first_reason(const Lot& lot) { return lot.reasons.empty() ? "" : " (" + lot.reasons.front() + ")"; }

bool is_of_this_spec(const LotEvidence& evidence, const KeptSpec& kept, const ApprovalGround& ground) {
    return not_of_this_spec(evidence.lot, kept, ground.file_sha256).empty();
}

bool is_accepted(const LotEvidence& evidence, const KeptSpec& kept, const ApprovalGround& ground) {
    return evidence.lot.verdict == Verdict::accept && is_of_this_spec(evidence, kept, ground);
}

/// Whether a lot that is good came after one, so that what was wrong with the earlier one no longer counts.
bool is_overcome(const LotEvidence& earlier, const KeptSpec& kept, const ApprovalGround& ground) {
    return std::any_of(ground.lots.begin(), ground.lots.end(), [&](const LotEvidence& later) {
        return is_accepted(later, kept, ground) && came_after(later, earlier);
    });
}

/// What speaks against an approval in one lot, or nothing.
std::optional<Refusal> refusal_by(const LotEvidence& evidence, const KeptSpec& kept, const ApprovalGround& ground) {
    const std::string other = not_of_this_spec(evidence.lot, kept, ground.file_sha256);
    const auto because = [&](Refusal::Kind kind, const std::string& words) {
        return Refusal{kind, evidence.file + ": " + words};
    };
    if (!other.empty()) return because(Refusal::Kind::strange_lot, other);
    if (evidence.lot.verdict == Verdict::reject)
        return because(Refusal::Kind::rejected, "the lot was rejected" + first_reason(evidence.lot));
    if (evidence.lot.verdict == Verdict::not_proven && ground.without_inspection.empty())
        return because(Refusal::Kind::open_lot, "it is not proven that the lot is good" + first_reason(evidence.lot));
    return std::nullopt;
}

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

bool came_after(const LotEvidence& later, const LotEvidence& earlier) {
    // Dates as ISO 8601 writes them sort as texts; one that is not told is empty.
    const bool are_dated = !later.lot.date.empty() && !earlier.lot.date.empty();
    if (later.step == earlier.step) return are_dated && later.lot.date > earlier.lot.date;
    return later.step > earlier.step && !(are_dated && later.lot.date < earlier.lot.date);
}

std::vector<Refusal> approval_refusals(const KeptSpec& kept, const check::Evaluation& evaluation,
                                       const ApprovalGround& ground) {
    std::vector<Refusal> all;
    if (kept.is_altered())
        all.push_back(
            {Refusal::Kind::altered, "the spec was changed while it was on trial: what was tried is another spring"});
    for (const LotEvidence& evidence : ground.lots)
        if (auto refusal = refusal_by(evidence, kept, ground); refusal && !is_overcome(evidence, kept, ground))
            all.push_back(*std::move(refusal));
    const bool has_good_one = std::any_of(ground.lots.begin(), ground.lots.end(), [&](const LotEvidence& evidence) {
        return is_accepted(evidence, kept, ground);
    });
    if (!has_good_one && ground.without_inspection.empty())
        all.push_back({Refusal::Kind::open_lot, "no lot of it was inspected and accepted"});
    for (const check::Verdict& verdict : evaluation.verdicts)
        if (!verdict.passed)
            all.push_back({Refusal::Kind::own_limit, "it breaks a limit of its own: " + verdict.reason});
    return all;
}

std::vector<std::string> conditions_of(const KeptSpec& kept, const ApprovalGround& ground) {
    std::vector<std::string> all;
    for (const LotEvidence& evidence : ground.lots) {
        if (!is_accepted(evidence, kept, ground)) continue;
        if (evidence.lot.conditions.empty()) return {};
        for (const std::string& each : evidence.lot.conditions)
            if (std::find(all.begin(), all.end(), each) == all.end()) all.push_back(each);
    }
    return all;
}

}  // namespace seatload::record
