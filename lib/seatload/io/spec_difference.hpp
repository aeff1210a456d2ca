// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/spec.hpp>

namespace seatload::io {

/// A key that two specs state otherwise; empty on the side that does not state it.
struct SpecDifference {
    std::string key;  ///< "spring.free_length"
    std::string before;
    std::string after;
};

/// What two specs state otherwise, by the keys of their files in the order of the file, whatever their remarks.
std::vector<SpecDifference> spec_differences(const record::Spec& before, const record::Spec& after);

}  // namespace seatload::io
