// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/document.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::io {

/// Complains of what shows that a reply answers another enquiry than `asked`: its number, revision, alternatives,
/// quantities or mark. What a typed-in reply leaves out is passed over; one that names neither number nor mark is
/// warned of.
void expect_answer_to(Document& document, const record::Enquired& stated, const record::Enquired& asked);

}  // namespace seatload::io
