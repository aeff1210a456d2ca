// SPDX-License-Identifier: MIT
#include "infeasible_requirements.hpp"

#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>

namespace seatload::test {
namespace {

using demand::Requirement;

struct Hardening {
    const char* name;
    void (*apply)(Requirement&);
};

const Hardening kHardenings[] = {
    {"as it is", [](Requirement&) {}},
    {"more load seated",
     [](Requirement& r) {
         if (r.seated_load.at_least) *r.seated_load.at_least *= 1.3;
         if (r.seated_load.at_most) *r.seated_load.at_most *= 1.3;
         if (r.full_travel_load.at_most) *r.full_travel_load.at_most *= 0.8;
     }},
    {"narrow bands",
     [](Requirement& r) {
         if (r.seated_load.at_most) r.seated_load.at_least = *r.seated_load.at_most * 0.995;
         if (r.full_travel_load.at_most) r.full_travel_load.at_least = *r.full_travel_load.at_most * 0.995;
     }},
    {"half the way to solid", [](Requirement& r) { r.space.full_travel_height = 0.5 * r.space.full_travel_height; }},
    {"short springs",
     [](Requirement& r) {
         r.space.free_length = demand::LengthRange{1.05 * r.space.seated_height, 1.15 * r.space.seated_height};
     }},
    {"little stress",
     [](Requirement& r) {
         r.limits.stress_share = 0.2;
         r.limits.stress_safety = 1.3;
     }},
    {"few coils, small index",
     [](Requirement& r) {
         r.limits.most_active_coils = 3.0;
         r.limits.largest_index = 7.0;
     }},
    {"safe from buckling",
     [](Requirement& r) {
         r.limits.buckling_margin = 3.0;
         r.limits.bore_clearance = 0.4 * mm;
     }},
};

bool is_small(const sizing::Space& space) { return space.size() < 1'000'000; }

}  // namespace

const std::vector<NamedRequirement>& infeasible_requirements() {
    static const std::vector<NamedRequirement> all = [] {
        std::vector<NamedRequirement> found;
        for (const NamedRequirement& varied : varied_requirements())
            for (const Hardening& hardening : kHardenings) {
                NamedRequirement harder{varied.name + ", " + hardening.name, varied.requirement};
                hardening.apply(harder.requirement);
                const sizing::Space space = sizing::search_space(harder.requirement, wires());
                if (is_small(space) && sizing::search(space, tolerances()).fit == 0) found.push_back(harder);
            }
        return found;
    }();
    return all;
}

}  // namespace seatload::test
