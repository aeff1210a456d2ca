// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/judged_spec.hpp>
#include <seatload/record/lean_told.hpp>
#include <seatload/record/reply.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/record/spec_changes.hpp>
#include <seatload/sizing/merit.hpp>

namespace seatload::record {

/// How the spring a maker would wind stands to what is required.
enum class Fit {
    as_enquired,  ///< nothing is asked for otherwise
    fits,         ///< every limit is kept, with as much tolerance room as the spring enquired for
    less_room,    ///< every limit is kept, with less
    fails,
    unknown,  ///< a value is missing
};

/// A limit that the spring offered breaks.
struct Failure {
    std::string rule;  ///< its id
    std::string name;  ///< "buckling"
    std::string reason;
};

/// The spring of an offer, built anew and judged.
struct CounterOffer {
    Fit fit = Fit::as_enquired;
    std::vector<Difference> asked;
    std::vector<Difference> adjusted;  ///< what the sheet lets him adjust, so that the loads come in again
    std::vector<std::string> missing;  ///< values without which it cannot be judged
    std::vector<Failure> failures;
    std::vector<std::string> remarks;
    Spec spec;          ///< as it would be ordered, its loads ordered anew; as enquired when it cannot be judged
    wire::Grade grade;  ///< of its wire
    std::optional<check::Evaluation> evaluation;
    sizing::Merit merit;      ///< of the spring offered
    sizing::Merit enquired;   ///< of the spring enquired for
    LeanTold lean;            ///< of the spring offered, on a sliding seat
    bool is_altered = false;  ///< the spec is not the one enquired for

    bool can_be_ordered() const { return fit != Fit::fails && fit != Fit::unknown; }
};

/// The spring of an offer for a spec, which keeps what the maker does not ask to change; of coil diameters the one the
/// sheet requires. Where it then breaks a limit or leaves less tolerance room, and the sheet lets the maker adjust what
/// he did not state (free length; coils, by halves of a turn up to two), the best such adjustment is searched and
/// taken. A grade of load tolerance asked for must find room on both sides of both loads. Errors: the spec enquired for
/// cannot be evaluated.
Result<CounterOffer> judge_offer(const Spec& enquired, const wire::Grade& grade, const Offer& offer,
                                 const JudgingBasis& basis);

}  // namespace seatload::record
