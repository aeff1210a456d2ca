// SPDX-License-Identifier: MIT
#include <seatload/io/builtin.hpp>

#include <seatload/core/embedded.hpp>
#include <seatload/io/tolerance_file.hpp>
#include <seatload/io/wire_file.hpp>

namespace seatload::io {

Result<wire::Catalogue> builtin_catalogue() {
    // wire/common.toml must come before the grades that name its tables
    std::vector<std::string_view> names{"data/sources.toml", "data/stock_sizes.toml", "data/wire/common.toml"};
    for (const std::string_view name : embedded_names("data/wire/"))
        if (name != names[2]) names.push_back(name);
    wire::Catalogue catalogue;
    for (const std::string_view name : names) {
        Result<wire::Catalogue> larger = read_wire_file(embedded(name), std::string(name), std::move(catalogue));
        if (!larger) return larger;
        catalogue = std::move(larger).value();
    }
    return catalogue;
}

Result<tolerance::Tables> builtin_tolerances() {
    constexpr std::string_view kName = "data/en_15800.toml";
    return read_tolerances(embedded(kName), std::string(kName));
}

}  // namespace seatload::io
