// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/reply.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::record {

/// What is asked for beside what stands on the sheet: "free length 20.6 mm instead of 20.3 mm".
struct Difference {
    std::string name;
    std::string now;
    std::string before;
    std::string symbol;  ///< the name in short: "L0"

    std::string words() const { return name + ' ' + now + " instead of " + before; }
};

/// "20.6 mm", in as many digits as it has.
std::string millimetres(Length length);

/// Adds what differs to what is told: its name, short name, and both values as people write them.
void note_change(std::vector<Difference>& into, const std::string& name, const std::string& symbol,
                 const std::string& now, const std::string& before);

/// Puts a wire into the spec, whose coil diameter that the sheet requires stays, and tells what differs. A wire of no
/// catalogue goes along as the spec's own.
void apply_wire(Spec& spec, const wire::Grade& grade, Length diameter, bool is_catalogued,
                std::vector<Difference>& told);

/// Puts what a maker asks for, wire apart, into the spec, and tells what differs.
void apply_changes(Spec& spec, const AskedChanges& asked, std::vector<Difference>& told);

}  // namespace seatload::record
