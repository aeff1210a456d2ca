// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/wire/catalogue.hpp>

#include <cli/papers.hpp>

namespace seatload::cli {

/// A PDF larger than this was never one of ours [bytes].
inline constexpr std::size_t kLargestPdf = 64 * 1024 * 1024;

/// The specs taken out of PDFs.
struct Extracted {
    std::vector<Paper> papers;  ///< each spec once, for the folder, under its name in the PDF
    Diagnostics said;           ///< what stands in the way: a file that cannot be read, a spec that is none
    Diagnostics tampered;
};

/// Takes the specs out of the PDFs of sheets and enquiries, in memory. Two of one name must be alike, and so must one
/// that lies in the folder already: nothing is overwritten.
Extracted extract_specs(const std::vector<std::string>& pdfs, const std::filesystem::path& folder,
                        const wire::Catalogue& wires);

}  // namespace seatload::cli
