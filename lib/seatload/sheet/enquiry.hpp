// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/demand/correspondence.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/sheet/same_wire.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// A spec offered for quoting, with the grade of its wire.
struct EnquiryAlternative {
    const record::Spec& spec;
    const wire::Grade& grade;
    std::string spec_text = {};  ///< as in SheetInput
};

/// What an enquiry says beside the springs.
struct EnquiryLetter {
    demand::Correspondence correspondence;
    std::string form_name = {};            ///< a plain file name; empty: no form is attached
    std::string form = {};                 ///< the form to reply on, as a text
    std::vector<SameWire> same_wire = {};  ///< alternatives that share their wire with other enquiries
};

/// The enquiry to a maker: what is asked, by when and where to he answers, the alternatives compared, what he may
/// change, how the lot is accepted, a form for his reply, then one sheet an alternative. Identity and quantities are
/// those of the first alternative. Errors: no alternative, and those of spring_sheet() for each of them.
Result<std::vector<Drawing>> enquiry(std::span<const EnquiryAlternative> alternatives,
                                     const tolerance::Tables& tolerances, const Paper& paper,
                                     const EnquiryLetter& letter = {});

/// The same as the bytes of a PDF, with the specs' texts and the form attached.
Result<std::string> enquiry_pdf(std::span<const EnquiryAlternative> alternatives, const tolerance::Tables& tolerances,
                                const Paper& paper, const EnquiryLetter& letter = {});

}  // namespace seatload::sheet
