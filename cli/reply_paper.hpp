// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <span>
#include <string>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/enquiry.hpp>

namespace seatload::cli {

/// The form on which a maker replies to an enquiry; its mark is the SHA-256 of the specs enquired for, one text behind
/// the other as they are attached to the enquiry.
std::string reply_form(std::span<const sheet::EnquiryAlternative> alternatives,
                       const demand::Correspondence& correspondence);

/// An error when a maker's answers stand where a blank form is about to be written: they may be the only copy.
Diagnostics answers_in_the_way(const std::filesystem::path& path);

}  // namespace seatload::cli
