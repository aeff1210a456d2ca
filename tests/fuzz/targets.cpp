// SPDX-License-Identifier: MIT
#include "fuzz/targets.hpp"

#include <stdexcept>
#include <string>

namespace seatload::fuzz {

std::span<const Target> targets() {
    static constexpr Target kTargets[] = {
        {"requirement", read_requirement},
        {"spring", read_spring},
        {"readings", read_readings},
        {"readings_table", read_readings_table},
        {"reply", read_reply},
        {"samples", read_samples},
        {"samples_table", read_samples_table},
        {"spec", read_spec},
        {"kept_spec", read_kept_spec},
        {"lot", read_lot},
        {"plunger", read_plunger},
        {"maker", read_maker},
        {"wire", read_wire},
        {"tolerances", read_tolerances},
        {"wording", read_wording},
        {"quantity", read_quantity},
        {"what_if", read_what_if},
        {"size", size_tiny_grid},
    };
    return kTargets;
}

const Target& target(std::string_view name) {
    for (const Target& t : targets())
        if (t.name == name) return t;
    throw std::invalid_argument("no target is called \"" + std::string(name) + "\"");
}

}  // namespace seatload::fuzz
