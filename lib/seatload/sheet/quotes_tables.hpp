// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/record/quotation.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// The offers in their order: who, which, how its spring fits, what to buy and what that costs.
RuledTable quotes_ranking_table(const record::Comparison& all, double width);

/// What each quoted quantity costs, part by part.
RuledTable quotes_costs_table(const record::Comparison& all, double width);

/// What makers state beside prices: quotation, validity, delivery, certificates.
RuledTable quotes_terms_table(const record::Comparison& all, double width);

}  // namespace seatload::sheet
