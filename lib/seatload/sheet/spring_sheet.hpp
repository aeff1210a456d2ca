// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// A spec to be drawn, the grade of its wire, and where the sheet stands among others.
struct SheetInput {
    const record::Spec& spec;
    const wire::Grade& grade;
    const tolerance::Tables& tolerances;
    const Paper& paper;
    int page = 1;
    int pages = 1;
    std::string spec_text = {};  ///< TOML of the maker's copy, to be attached; empty: nothing attached, no mark
};

/// The drawing-and-tolerance sheet of a spec, A4 landscape. Errors: over-defined spec, wire diameter outside the
/// grade's range, more to say than the sheet has room for. Warnings: characters that cannot be printed.
Result<Drawing> spring_sheet(const SheetInput& input);

/// The same as the bytes of a PDF, with the spec's text attached.
Result<std::string> spring_sheet_pdf(const SheetInput& input);

}  // namespace seatload::sheet
