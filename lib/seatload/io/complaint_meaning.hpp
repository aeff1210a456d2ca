// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seatload::io {

/// What a kind of complaint means and what to do about it, under the name that stands behind such complaints.
struct ComplaintMeaning {
    std::string id;       ///< "bare-number"
    std::string meaning;  ///< one sentence
};

/// Every kind of complaint the program can make, in the order of the alphabet.
std::vector<ComplaintMeaning> complaint_meanings();

/// What a kind of complaint means; nothing when there is none of that name.
std::optional<std::string> meaning_of_complaint(std::string_view id);

}  // namespace seatload::io
