// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// A spec to be drawn, the grade of its wire, and where the sheet stands among others.
struct SheetInput {
    const record::Spec& spec;
    const wire::Grade& grade;
    const tolerance::Tables& tolerances;
    int page = 1;
    int pages = 1;
};

/// The drawing-and-tolerance sheet of a spec, A4 landscape. Errors: over-defined spec, wire diameter outside the
/// grade's range, notes longer than the sheet has room for. Warnings: characters that cannot be printed.
Result<Drawing> spring_sheet(const SheetInput& input);

/// The same as the bytes of a PDF.
Result<std::string> spring_sheet_pdf(const SheetInput& input);

}  // namespace seatload::sheet
