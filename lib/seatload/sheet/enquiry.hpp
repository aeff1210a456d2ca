// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// A spec offered for quoting, with the grade of its wire.
struct EnquiryAlternative {
    const record::Spec& spec;
    const wire::Grade& grade;
    std::string spec_text = {};  ///< as in SheetInput
};

/// The enquiry to a maker: what is asked, the alternatives compared, what he may change, how the lot is accepted, a
/// reply form for each quantity, then one sheet an alternative. Identity and quantities are those of the first
/// alternative. Errors: no alternative, and those of spring_sheet() for each of them.
Result<std::vector<Drawing>> enquiry(std::span<const EnquiryAlternative> alternatives,
                                     const tolerance::Tables& tolerances, const Paper& paper);

/// The same as the bytes of a PDF, with the specs' texts attached, and `more` beside them.
Result<std::string> enquiry_pdf(std::span<const EnquiryAlternative> alternatives, const tolerance::Tables& tolerances,
                                const Paper& paper, std::span<const Attachment> more = {});

}  // namespace seatload::sheet
