// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/document.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::io {

/// Complains of what shows that a reply answers another enquiry than `asked`: its number, revision, alternatives,
/// quantities or mark. What a typed-in reply leaves out is passed over; one that names neither number nor mark is
/// warned of.
void expect_answer_to(Document& document, const record::Enquired& stated, const record::Enquired& asked);

/// A warning when prices stand in a reply without the mark of its enquiry: its letters may then be those of springs
/// that were enquired for before, under the same number. Nothing when it bears one, or quotes nothing.
Diagnostics doubts_on_letters(const record::Reply& reply, const std::string& file_name);

}  // namespace seatload::io
