// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/quotation.hpp>

namespace seatload::cli {

/// An enquiry as it was sent, and our own specs of what was enquired for.
struct SentEnquiry {
    std::string stem;  ///< of its files: "output/ottermere-m14-ahead-latch-plunger"
    record::Enquired asked;
    std::vector<record::EnquiredSpring> springs;
};

/// The enquiry of a PDF that `size` wrote (...-enquiry.pdf), or of the blank form beside it (...-reply.toml), with the
/// specs that lie in the same folder: the PDF tells what the makers saw, but not the loads needed, which are ours. Each
/// spec must be the one sent.
/// Errors: another kind of file, a PDF changed since, a spec that is missing or changed since.
Result<SentEnquiry> read_enquiry(const std::string& path, const wire::Catalogue& wires);

}  // namespace seatload::cli
