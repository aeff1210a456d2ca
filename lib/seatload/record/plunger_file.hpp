// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/plunger.hpp>
#include <seatload/demand/requirement.hpp>

namespace seatload::record {

/// A plunger as a person describes it, to have the loads of its spring worked out.
struct PlungerFile {
    demand::Identity identity;
    std::optional<demand::Space> space;  ///< the room of its spring, when it is known
    std::optional<demand::Surroundings> surroundings;
    demand::Plunger plunger;
    std::optional<demand::SpringLoads> spring;  ///< of a spring to be looked at
};

}  // namespace seatload::record
