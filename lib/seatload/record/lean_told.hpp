// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/check/numbers.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::record {

/// What whoever orders a spring is to be told of its lean on a sliding seat.
struct LeanTold {
    bool may_rub = false;  ///< it may lean further than there is room, though its tips stand as they are ordered
    std::string words;     ///< whole sentences; empty where tips as usual leave room, and where no seat slides
};

LeanTold lean_told(const check::Coil& coil, double free_length_mm);
/// The same of a spec; nothing told when it cannot be worked out.
LeanTold lean_told(const Spec& spec, const wire::Grade& grade, const tolerance::Tables& tables);

}  // namespace seatload::record
