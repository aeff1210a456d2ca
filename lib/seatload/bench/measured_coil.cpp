// SPDX-License-Identifier: MIT
#include <seatload/bench/measured_coil.hpp>

#include <seatload/spring/coils.hpp>

namespace seatload::bench {

std::string listed(const std::vector<std::string>& words, const std::string& conjunction) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? " " + conjunction + " " : ", ") + words[i];
    return text;
}

CoilAnswer measured_coil(const Dimensions& dimensions) {
    std::vector<std::string> missing;
    if (!dimensions.wire_diameter) missing.push_back("the wire diameter d");
    if (!dimensions.outside_diameter) missing.push_back("the outside diameter De");
    if (!dimensions.total_coils) missing.push_back("the number of coils nt");
    if (!dimensions.ends) missing.push_back("the ends");
    if (!missing.empty()) return {std::nullopt, listed(missing, "and")};
    const auto& d = *dimensions.wire_diameter;
    const auto& De = *dimensions.outside_diameter;
    const auto& nt = *dimensions.total_coils;
    const MeasuredCoil coil{{in_mm(d.value), in_mm(d.plus_minus)},
                            {in_mm(De.value), in_mm(De.plus_minus)},
                            {spring::active_coils(*dimensions.ends, nt.value), nt.plus_minus}};
    if (coil.wire_diameter_mm.value <= 0.0 || coil.mean_diameter_mm() <= coil.wire_diameter_mm.value)
        return {std::nullopt, "an outside diameter De of more than twice the wire diameter d"};
    if (coil.active_coils.value <= 0.0) return {std::nullopt, "more coils nt than the ends take"};
    return {coil, {}};
}

}  // namespace seatload::bench
