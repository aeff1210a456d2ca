// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/result.hpp>
#include <seatload/record/quotation.hpp>

#include <cli/options.hpp>

namespace seatload::cli {

/// What offers are compared for, of the words given and the replies. Errors: a date or a rate that is none, a currency
/// without a rate, or more than one that could be compared in.
Result<record::ComparisonTerms> comparison_terms(const QuotesOptions& options, const record::Enquired& asked,
                                                 const std::vector<record::NamedReply>& replies);

}  // namespace seatload::cli
