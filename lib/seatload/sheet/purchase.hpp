// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/history.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// What is ordered beside what the spec says; what is absent or empty is left open for a hand to fill in.
struct Purchase {
    std::optional<int> pieces;
    std::string number;                             ///< of the order
    std::string date;                               ///< of the order, ISO 8601
    record::State state = record::State::approved;  ///< of the spec; what is not approved yet says so
    std::string quotation = {};                     ///< the maker's own number of the offer that is ordered
    std::string alternative = {};                   ///< its letter in the enquiry
};

/// The order of a spec's springs, a page beside the spec's sheet, seldom two: pieces, dates and price, the spring in
/// brief, what binds, how the lot is accepted. `spec_text` is the spec attached to the sheet, by whose mark the order
/// names it. Errors: those of facts(), and a number of the order that is not UTF-8.
Result<std::vector<Drawing>> purchase_order(const record::Spec& spec, const wire::Grade& grade,
                                            const tolerance::Tables& tables, const Paper& paper,
                                            const Purchase& purchase, const std::string& spec_text);

/// The same as the bytes of a PDF.
Result<std::string> purchase_order_pdf(const record::Spec& spec, const wire::Grade& grade,
                                       const tolerance::Tables& tables, const Paper& paper, const Purchase& purchase,
                                       const std::string& spec_text);

}  // namespace seatload::sheet
