// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/sizing/outlook.hpp>

namespace seatload::cli {

/// A spring's name in a table, and what is to be expected of it.
struct NamedOutlook {
    std::string name;
    const sizing::Outlook& outlook;
};

/// One row a spring: share that meets the demand at each grade, the coarsest grade that keeps 99 %, what breaks first
/// and what moves the loads most. In lines of at most `width` columns; empty without springs. `explains`: the columns
/// and how it was reckoned are told below it.
std::string outlooks_text(const std::vector<NamedOutlook>& springs, int width, bool explains = true);

/// One spring at length: the same for each grade, then every quantity at the grade recommended.
std::string outlook_text(const sizing::Outlook& outlook, int width);

/// For programs: everything, numbers in full precision, null where a value has no bound.
nlohmann::ordered_json outlook_json(const sizing::Outlook& outlook);

/// A share in whole tenths of a per cent, rounded down, so that 99.0 % is never less: "98.9 %".
std::string kept_words(double share);

}  // namespace seatload::cli
