// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sizing/relief.hpp>
#include <seatload/sizing/what_if_number.hpp>
#include <seatload/wire/evidence.hpp>

namespace seatload::sizing {

/// The best spring of a search, by better().
struct BestSpring {
    std::string grade;
    wire::Evidence strength_evidence = wire::Evidence::given;
    spring::Spring spring;
    Merit merit;
};

/// What fits when the number has one value.
struct WhatIfRow {
    double value = 0.0;  ///< in the number's unit
    bool is_stated = false;
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::optional<BestSpring> best;  ///< nothing when none fits
};

inline constexpr int kWhatIfValues = 11;  // ends and tenths: a range of round ends gives round values

/// One row a value, rising: `kWhatIfValues` values evenly spaced from end to end, and the stated one when it is none of
/// them. Each is a whole search of the requirement with nothing but this number changed, on its own grid.
std::vector<WhatIfRow> what_if(const demand::Requirement& requirement, const WhatIf& question, const Setting& setting);

/// True when at least one of the values lets in a spring.
bool lets_in_any(const std::vector<WhatIfRow>& rows);

}  // namespace seatload::sizing
