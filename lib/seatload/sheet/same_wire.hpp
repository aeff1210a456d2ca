// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include <seatload/sheet/facts.hpp>

namespace seatload::sheet {

/// The wire of one lot of each part of a family.
struct WireOfLots {
    std::vector<int> lots;  ///< pieces of each part
    Mass mass;              ///< of their wire together, without waste
};

/// An alternative of this enquiry and one in each of other enquiries, which one coil of wire serves.
struct SameWire {
    std::string letter;                ///< of this enquiry's alternative
    std::vector<record::Spec> others;  ///< the alternatives of the other enquiries
    bool is_same_spring = false;       ///< they are even one and the same spring
    std::vector<WireOfLots> amounts = {};
};

/// Says that one coil serves several enquiries, and how much wire they take; empty when no alternative has the letter.
std::string same_wire_words(std::span<const Facts> alternatives, const SameWire& same);

}  // namespace seatload::sheet
