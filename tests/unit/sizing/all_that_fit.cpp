// SPDX-License-Identifier: MIT
#include "all_that_fit.hpp"

#include <algorithm>

#include <seatload/check/rule.hpp>
#include <support/builtin.hpp>

namespace seatload::test {
namespace {

bool fits(const check::Coil& coil, double free_length) {
    if (coil.active_coils <= 0.0) return false;
    const auto rules = check::rules();
    return std::all_of(rules.begin(), rules.end(), [&](const check::Rule& rule) {
        return !rule.applies(coil.demand, coil.ends) || check::passes(rule, coil, free_length);
    });
}

}  // namespace

std::vector<sizing::Candidate> all_that_fit(const sizing::Space& space) {
    std::vector<sizing::Candidate> all;
    for (std::size_t w = 0; w < space.wires.size(); ++w)
        for (const spring::Ends ends : space.ends)
            for (long d = 0; d < space.wires[w].mean_diameters.count; ++d)
                for (long n = 0; n < space.total_coils.count; ++n) {
                    const check::Coil coil(space.demand, space.wires[w].numbers, tolerances(),
                                           space.wires[w].mean_diameters.at(d), ends, space.total_coils.at(n));
                    for (long l = 0; l < space.free_lengths.count; ++l)
                        if (const double L0 = space.free_lengths.at(l); fits(coil, L0))
                            all.push_back({w, ends, coil.D_mm, coil.total_coils, L0, sizing::merit(coil, L0)});
                }
    return all;
}

}  // namespace seatload::test
