// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/result.hpp>
#include <seatload/record/quotation.hpp>

#include <cli/options.hpp>
#include <cli/papers.hpp>

namespace seatload::cli {

/// The offer that "MAKER/ALTERNATIVE" names, the maker by his firm in any case, or as file names write it. Errors:
/// another form, no such offer, two replies of that maker.
Result<const record::JudgedOffer*> find_offer(const record::Comparison& all, const std::string& words);

/// The offer as find_offer() takes it, fit to be typed: "maker-a/a".
std::string offer_words(const record::Comparison& all, const record::JudgedOffer& offer);

/// The spec of the chosen offer as a file for the folder, named after part, alternative and maker. Errors: those of
/// record::chosen_spec(), and a spec that stands in its place and was edited by hand.
Result<Paper> chosen_paper(const record::Comparison& all, const record::JudgedOffer& offer,
                           const QuotesOptions& options);

}  // namespace seatload::cli
