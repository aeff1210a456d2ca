// SPDX-License-Identifier: MIT
#include "consistency/designs.hpp"

#include <toml++/toml.h>

#include <string>

namespace seatload::consistency {
namespace {

std::vector<double> numbers(const toml::node& list) {
    std::vector<double> all;
    for (const toml::node& entry : *list.as_array()) all.push_back(entry.value<double>().value());
    return all;
}

std::vector<Design> every_combination() {
    const toml::table root = toml::parse_file(std::string(SEATLOAD_SOURCE_DIR) + "/tests/consistency/designs.toml");
    const auto list = [&](const char* key) { return numbers(*root.get(key)); };
    std::vector<Design> all;
    for (const double d : list("wire_diameters_mm"))
        for (const double w : list("indices"))
            for (const double n : list("active_coils"))
                for (const double pitch : list("pitches_in_wires"))
                    for (const toml::node& row : *root.get("wires")->as_array()) {
                        const auto wire = numbers(row);
                        all.push_back({d, d * w, n, pitch * d, wire.at(0), wire.at(1), wire.at(2) * 1e-9});
                    }
    return all;
}

}  // namespace

const std::vector<Design>& designs() {
    static const std::vector<Design> all = every_combination();
    return all;
}

}  // namespace seatload::consistency
