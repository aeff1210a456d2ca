// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/inspection/sampling_plan.hpp>

namespace seatload::io {

/// The sampling tables of a TOML text such as data/iso_2859_1.toml. Errors: rows of a wrong length, cells that are no
/// plan, arrows that lead out of the table.
Result<inspection::SamplingTables> read_sampling(std::string_view text, const std::string& file_name);

}  // namespace seatload::io
