// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/inspection/verdict.hpp>
#include <seatload/record/spec.hpp>

#include <cli/options.hpp>
#include <cli/session.hpp>

namespace seatload::cli {

/// The record of a lot that was just inspected.
struct FreshRecord {
    std::string path;
    std::string report;       ///< the PDF beside it
    std::string spec_sha256;  ///< of the spec it was inspected by
    inspection::Verdict verdict;
};

/// What to do next, in words: what to ask of the maker of a lot that is rejected; and what to do with the record of any
/// lot: where it belongs when its spec is kept in the library it lies in, or in the usual one; else how spec and record
/// come into one. Every command in it works as it is shown, once names and
/// dates are put in.
std::string inspect_next(const InspectOptions& options, const record::Spec& spec, const FreshRecord& record,
                         const References& references);

}  // namespace seatload::cli
