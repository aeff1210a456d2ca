// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::io {

/// The reply as a form in TOML, every line there is an answer for with its question behind it, unanswered ones as empty
/// texts; above it, in plain words, how a maker fills it in. Equal replies give equal bytes.
std::string write_reply(const record::Reply& reply);

/// The reply a form states, equal to the one write_reply() was given. Empty texts are absent answers, and so are keys
/// left out. Errors: everything wrong in the text, by position; a letter that was not enquired for, a letter or a
/// quantity twice, prices without a currency or a firm, a reply that ends before it was written.
/// With `asked` it must answer that enquiry, see expect_answer_to().
Result<record::Reply> read_reply(std::string_view text, const std::string& file_name,
                                 const record::Enquired* asked = nullptr);

}  // namespace seatload::io
