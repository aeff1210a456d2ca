// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json.hpp>
#include <seatload/core/diagnostic.hpp>

namespace seatload::test {

/// What the reader of a kind of file complains of.
Diagnostics complaints_of(std::string_view kind, std::string_view text);

/// A TOML text as JSON, dates as texts; nothing (null) when it is no TOML.
nlohmann::json toml_as_json(std::string_view text);

}  // namespace seatload::test
