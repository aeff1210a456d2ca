// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/record/quotation.hpp>

namespace seatload::record {

/// The spec of the offer that is to be ordered, as a draft: the spring as offered, its loads ordered anew, the quantity
/// bought, and in `why` whose offer it is and how it was judged. A spring other than the one enquired for is a new
/// revision, dated by the comparison's date, with its changes told and no approver: papers of the old one are out.
/// Errors: an offer that cannot be ordered; a changed spring without a date, with one before the last revision, or
/// whose revision index has no next.
Result<Spec> chosen_spec(const Comparison& all, const JudgedOffer& offer);

/// The offer a spec was chosen by.
struct ChosenOffer {
    std::string alternative;  ///< its letter
    std::string quotation;    ///< the maker's own number of it; empty when he gave none
};

/// The offer that chosen_spec() put down in a spec's `why`, read back from there: a spec once kept is never written
/// anew. Nothing when `why` begins with other words.
std::optional<ChosenOffer> chosen_offer(const Spec& spec);

}  // namespace seatload::record
