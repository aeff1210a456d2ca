// SPDX-License-Identifier: MIT
#include <elements/demo_springs.hpp>

#include <seatload/core/file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/sizing/spread.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/helix.hpp>
#include <support/builtin.hpp>

namespace seatload::test::elements {
namespace {

DemoSpring best_of(const std::string& name) {
    const std::string path = std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name;
    const auto requirement = io::read_requirement(read_text_file(path).value(), path, wires()).value();
    const sizing::Space space = sizing::search_space(requirement, wires());
    const auto best = sizing::spread(space, sizing::search(space, tolerances()), 1).at(0).candidate;
    const check::WireNumbers& wire = space.wires[best.wire].numbers;
    const double n = spring::active_coils(best.ends, best.total_coils);
    const double pitch = spring::pitch(best.ends, best.free_length_mm, wire.d_mm, n);
    const ActiveCoils coils{wire.d_mm, best.mean_diameter_mm, n, pitch, wire.shear_modulus_mpa, wire.young_modulus_mpa};
    return {name, coils, best.free_length_mm - space.demand.full_travel_height_mm};
}

}  // namespace

const std::vector<DemoSpring>& demo_springs() {
    static const std::vector<DemoSpring> all{best_of("ahead_latch.toml"), best_of("astern_latch.toml"),
                                             best_of("oil_relief_valve.toml")};
    return all;
}

ActiveCoils with_coils(ActiveCoils coils, double n) {
    coils.n = n;
    return coils;
}

}  // namespace seatload::test::elements
