// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::cli {

/// A spec with the grade of its wire.
struct GradedSpec {
    record::Spec spec;
    wire::Grade grade;
};

/// The spec of a file, with its own grade or that of the catalogue; one that a library keeps without the letter it had
/// among alternatives. Errors: those of io::read_spec(); a PDF.
Result<GradedSpec> read_graded_spec(const std::string& path, const wire::Catalogue& wires);

}  // namespace seatload::cli
