// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::test {

/// All words on a page, in drawing order, script marks left out.
std::string words_of(const sheet::Drawing& page);

/// The words of the sheet of a spec, sheet 2 of 7; its wire is the grade it names unless another is given.
std::string sheet_words(const record::Spec& spec, const wire::Grade& grade);
std::string sheet_words(const record::Spec& spec);

/// The words in one line, however they were broken; unbreakable blanks as plain ones.
std::string joined(std::string words);

/// The words of the enquiry for specs.
std::string enquiry_words(const std::vector<record::Spec>& specs);

}  // namespace seatload::test
