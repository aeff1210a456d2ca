// SPDX-License-Identifier: MIT
#pragma once

// One include for every test, for Catch2 2.13 (one header) and 3.x alike.
#if __has_include(<catch2/catch_test_macros.hpp>)
#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators_all.hpp>
#include <catch2/matchers/catch_matchers_all.hpp>
namespace seatload::check_text {
using Catch::Matchers::ContainsSubstring;
}
#else
#include <catch2/catch.hpp>
namespace seatload::check_text {
inline auto ContainsSubstring(const std::string& text) { return Catch::Matchers::Contains(text); }
}  // namespace seatload::check_text
#endif
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using seatload::check_text::ContainsSubstring;
