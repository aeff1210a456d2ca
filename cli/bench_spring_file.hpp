// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/wire/catalogue.hpp>

#include <cli/bench_view.hpp>

namespace seatload::cli {

/// The text of a spring file for a measured spring, with what the bench found of it; `readings` is the name of the file
/// it rests on. Nothing when the readings do not state d, De, nt and the ends, or when the catalogue has no wire of
/// that thickness.
std::optional<std::string> bench_spring_file(const bench::Readings& session, const BenchedSpring& spring,
                                             const std::string& readings, const wire::Catalogue& catalogue);

}  // namespace seatload::cli
