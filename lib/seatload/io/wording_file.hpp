// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/phrase_book.hpp>

namespace seatload::io {

/// The phrases of a wording file ("seatload wording 1"). It must have exactly the keys of `model`, each with the same
/// blanks; errors name every phrase that is missing, not known, empty or has other blanks.
Result<record::PhraseBook> read_wording(std::string_view text, const std::string& file_name,
                                        const record::PhraseBook& model);

/// The same without a model: any keys are taken.
Result<record::PhraseBook> read_wording(std::string_view text, const std::string& file_name);

/// The blanks of a phrase in order of their names, each once: "{a} of {b}" has "a" and "b".
std::vector<std::string> blanks(std::string_view phrase);

}  // namespace seatload::io
