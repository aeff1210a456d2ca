// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/demand/budget.hpp>
#include <seatload/record/plunger_file.hpp>

namespace seatload::io {

/// The requirement that a plunger makes of its spring, with remarks on where each load comes from. What the plunger
/// file does not tell (the room of the spring, when it has no [space]) stands in it as a remark to be filled in.
/// `source` names the plunger file. The budget must be possible.
std::string write_budget_requirement(const record::PlungerFile& plunger, const demand::Budget& budget,
                                     const std::string& source);

}  // namespace seatload::io
