// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/record/spec.hpp>
#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// The spec's text, described in the language of `words`, as an attachment of its sheet, named after the drawing
/// number: "ot-14-0312-a.toml", or "spec-a.toml" when there is no number.
Attachment spec_attachment(const record::Spec& spec, std::string spec_text, const Wording& words);

/// A text in TOML as an attachment.
Attachment toml_attachment(std::string name, std::string text, std::string description);

/// Gives the second and later of equally named attachments a number: "a.toml", "a-2.toml".
void make_names_differ(std::vector<Attachment>& attachments);

/// The SHA-256 of each attachment as one line for a PDF's keywords; empty when there is none.
std::string marks_of(std::span<const Attachment> attachments);

/// The SHA-256 of an attachment, as 64 hexadecimal digits.
struct NamedMark {
    std::string name;
    std::string hex;
};

/// The marks that a line written by marks_of() holds; other words in it are passed over.
std::vector<NamedMark> marks_in(std::string_view keywords);

}  // namespace seatload::sheet
