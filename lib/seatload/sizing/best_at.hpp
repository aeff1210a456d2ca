// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/sizing/merit.hpp>

namespace seatload::sizing {

/// One of several springs that are offered side by side.
struct Contender {
    Standing steps{};
    bool has_room = true;     ///< its tolerance room is limited, and so can be compared
    bool is_on_front = true;  ///< as in Alternative
    bool leans = false;
    bool leans_too_far = false;
    std::string preferred{};  ///< the wishes it meets: "grade and ends"
};

/// "tolerance room", as in requirement files and JSON.
std::string_view word(demand::Criterion criterion);

/// The criteria at which none of the contenders is better than this one, and at least one is worse (or it stands
/// alone).
std::vector<demand::Criterion> best_at(std::span<const Contender> contenders, std::size_t which,
                                       const check::DemandNumbers& demand);

/// The same in a phrase: "widest tolerance room of all, least stress of these". `best_of_all` holds the best steps any
/// fitting spring has. One that is best at nothing says what it balances, or that it is there for its wire.
std::string best_at_words(std::span<const Contender> contenders, std::size_t which, const Standing& best_of_all,
                          const check::DemandNumbers& demand);

}  // namespace seatload::sizing
