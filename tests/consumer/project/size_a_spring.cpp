// SPDX-License-Identifier: MIT
// Sizes a spring with the library: tells it what a mechanism needs, has every combination counted that gives it, and
// prints the best one with what it gives.
#include <iostream>

#include <seatload/check/evaluation.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/sizing/spread.hpp>
#include <seatload/units/format.hpp>

using namespace seatload;

int main() {
    demand::Requirement need;
    need.space.bore = demand::Fit{9.00 * mm, 9.05 * mm, 9.00 * mm};  // smallest, largest, nominal
    need.space.seated_height = 15.0 * mm;
    need.space.full_travel_height = 9.0 * mm;
    need.seated_load = {4.8 * newton, 6.5 * newton};  // at least when hot, at most when cold
    need.full_travel_load.at_most = 13.5 * newton;
    need.surroundings.temperature = {80.0};
    need.wire.grades = {"EN10270-1-SM", "EN10270-3-1.4310-NS"};

    const auto wires = io::builtin_catalogue();
    const auto tolerances = io::builtin_tolerances();
    const sizing::Space space = sizing::search_space(need, *wires);
    const sizing::Census census = sizing::search(space, *tolerances);
    std::cout << census.fit << " of " << census.looked_at << " combinations fit\n";

    for (const sizing::Alternative& offer : sizing::spread(space, census, 1)) {
        const sizing::Candidate& c = offer.candidate;
        const sizing::WireOption& option = space.wires[c.wire];
        const spring::Spring spring{option.size.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm,
                                    c.ends};
        const wire::Grade& grade = space.grades[option.grade];
        const auto found = check::evaluate(spring, grade, need, *tolerances);
        std::cout << grade.id << ": d " << units::shown_wire(spring.wire_diameter) << ", D "
                  << units::shown(spring.mean_diameter, 2) << ", n " << found->active_coils << ", L0 "
                  << units::shown(spring.free_length, 1) << ", G " << units::shown(found->moduli.shear, 0) << "\ngives "
                  << units::shown(found->rate, 4) << ", " << units::shown(found->seated->load, 3) << " seated, "
                  << units::shown(found->full_travel->load, 3) << " at full travel\n";
    }
}
