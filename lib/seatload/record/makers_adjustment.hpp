// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/record/judged_spec.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::record {

/// The best spring that the sheet lets the maker make of a spec, in free length and, by halves of a turn up to two, in
/// coils, as far as his offer states neither; nothing when none keeps all limits.
std::optional<JudgedSpec> adjusted(const JudgedSpec& from, bool is_catalogued, const Offer& offer,
                                   const JudgingBasis& basis);

}  // namespace seatload::record
