// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace seatload::sheet {

/// What a person compares to see that a spec is the one a sheet was drawn from: the SHA-256 of its text, in 8 groups of
/// 8 hexadecimal digits with a blank between them (71 characters).
std::string tamper_mark(std::string_view spec_text);

}  // namespace seatload::sheet
