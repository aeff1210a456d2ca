// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/io/spec_library.hpp>
#include <seatload/record/approval.hpp>
#include <seatload/record/history.hpp>

#include <cli/specs_options.hpp>
#include <cli/specs_shelves.hpp>

namespace seatload::cli {

/// A file given as evidence, as read.
struct EvidenceFile {
    std::string path;
    std::string bytes;
};

/// The files of a step, all read before anything is written.
struct Evidence {
    std::vector<EvidenceFile> lots;
    std::vector<EvidenceFile> files;
};

/// Reads the files a step names. Errors: those of reading; a lot's record that is none, or that is given
/// twice.
Result<Evidence> read_evidence(const StepOptions& options);

/// Complains of records of lots that lie with the revision already, to the byte: one lot would count as two.
Diagnostics lots_kept_before(const SpecsOptions& options, const record::Address& address,
                             const record::History& history, const Evidence& evidence);

/// The step as told, without its SHA-256 and files. Errors: nobody named, no date or none of the calendar, a date
/// before the last one of the history, words that are not UTF-8.
Result<record::Step> told_step(const StepOptions& options, record::Step::Kind kind, const record::History& history);

/// Lays the files beside the spec and names them in the step.
Diagnostics keep_evidence(const io::SpecLibrary& library, const record::Address& address, const Evidence& evidence,
                          record::Step& step);

/// The lots given now, and those kept with earlier steps. Errors: one kept is gone or was changed.
Result<std::vector<record::LotEvidence>> all_lots(const io::SpecLibrary& library, const SpecsOptions& options,
                                                  const record::Address& address, const record::History& history,
                                                  const Evidence& evidence);

/// An error, or for a reader a warning, that names the first line below the states which this program did not write:
/// writing the file anew would lose it. Blanks at the end are no loss.
Diagnostics foreign_line(const record::KeptRevision& revision, Severity severity);

/// Why a spec of which springs are about to be made cannot be drawn, as `seatload sheet` says it; none: it can.
Diagnostics not_to_be_drawn(const record::Spec& spec, const std::string& file, const References& references);

/// A warning when a revision was approved on a condition that no lot kept with it shows to hold.
Diagnostics open_conditions(const OnShelf& on, const io::SpecLibrary& library);

}  // namespace seatload::cli
