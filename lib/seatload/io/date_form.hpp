// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/io/form.hpp>

namespace seatload::io {

/// A calendar date as text, "2026-11-25" (ISO 8601).
struct DateText {
    std::string iso;
};

/// A date in quotes or as TOML's own date; one that is not in the calendar is refused.
template <>
struct Form<DateText> {
    static units::Parsed<DateText> read(const Node& node);
    static std::string write(const DateText& date) { return quoted_text(date.iso); }
    static std::vector<double> numbers(const DateText&) { return {}; }
};

}  // namespace seatload::io
