// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::sheet {

/// A spec to be reckoned, with the grade of its wire.
struct ReportAlternative {
    const record::Spec& spec;
    const wire::Grade& grade;
    const sizing::Outlook* outlook = nullptr;  ///< what tolerances do to it, when that is known already
};

/// What was looked at and what fits, when the specs come from a search.
struct ReportSizing {
    const sizing::Space& space;
    const sizing::Census& census;
};

/// What a calculation report tells of. Title and identity are those of the first alternative.
struct ReportInput {
    std::vector<ReportAlternative> alternatives;
    const tolerance::Tables& tolerances;
    const std::vector<wire::Source>& sources;  ///< the bibliography behind keys in square brackets
    const Wording& words;                      ///< of the title block's fields; the report itself is in English
    std::optional<ReportSizing> sizing;        ///< nothing: no map
    PaperSize size = PaperSize::a4;
};

/// The calculation report, for us and for an engineer who checks by hand, never for the maker: upright pages. For each
/// spec every input, formula, number, limit, margin, source and trust mark; load-length diagram, simulated loads, and
/// the fatigue diagram where the duty is cyclic; once, the map of all that fits. Errors: no alternative, and those of
/// report_subject() for each.
Result<std::vector<Drawing>> calculation_report(const ReportInput& input);

/// The same as the bytes of a PDF.
Result<std::string> calculation_report_pdf(const ReportInput& input);

}  // namespace seatload::sheet
