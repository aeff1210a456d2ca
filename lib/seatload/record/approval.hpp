// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/kept_spec.hpp>
#include <seatload/record/lot.hpp>

namespace seatload::record {

/// A lot's record with the file it stands in.
struct LotEvidence {
    std::string file;
    Lot lot;
};

/// Why a lot's record says nothing of a spec: it was inspected by another part, revision or content; empty when it was
/// this very one. `other_sha256` is that of the whole file in which the spec was inspected, which counts too.
std::string not_of_this_spec(const Lot& lot, const KeptSpec& kept, const std::string& other_sha256);

/// What an approval rests on.
struct ApprovalGround {
    std::vector<LotEvidence> lots;
    std::string file_sha256;         ///< of the spec with its states as it stands
    std::string without_inspection;  ///< the reason, when no lot was inspected and accepted
};

/// Why a spec cannot be approved, a sentence each; none: it can. Wanted are an accepted lot of this very spec or a
/// reason to do without, no lot that was rejected or is of another spec, and a spring that keeps its own limits.
std::vector<std::string> approval_refusals(const KeptSpec& kept, const check::Evaluation& evaluation,
                                           const ApprovalGround& ground);

/// The conditions under which lots were accepted, each once: what nobody measured and must hold. None when a lot was
/// accepted without any.
std::vector<std::string> conditions_of(const std::vector<LotEvidence>& lots);

}  // namespace seatload::record
