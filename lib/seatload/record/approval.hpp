// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
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
    std::size_t step = 0;  ///< with which it was kept, counted from the first; lots given now come after all of them
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

/// Why a spec cannot be approved, in words and by what would help.
struct Refusal {
    enum class Kind {
        altered,      ///< put the frozen content back
        strange_lot,  ///< a lot of this very spec is wanted
        rejected,     ///< only a later lot that is accepted overcomes it, no reason does
        open_lot,     ///< a better lot or a reason is wanted: none was given, or nothing is proven of it
        own_limit,    ///< another spring is wanted
    };
    Kind kind = Kind::open_lot;
    std::string why;
};

/// Whether a lot came after another: with a later step and no earlier date, or with the same step and a later date.
bool came_after(const LotEvidence& later, const LotEvidence& earlier);

/// Why a spec cannot be approved; none: it can. Wanted are an accepted lot of this very spec or a reason to do without,
/// no lot that was rejected or is of another spec unless a later one was accepted, and a spring that keeps its own
/// limits.
std::vector<Refusal> approval_refusals(const KeptSpec& kept, const check::Evaluation& evaluation,
                                       const ApprovalGround& ground);

/// The conditions under which lots of this very spec were accepted, each once: what nobody measured and must hold. None
/// when a lot was accepted without any.
std::vector<std::string> conditions_of(const KeptSpec& kept, const ApprovalGround& ground);

}  // namespace seatload::record
