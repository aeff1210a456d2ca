// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <cli/options.hpp>
#include <cli/size_run.hpp>

namespace seatload::cli {

/// What to do with an answer of which no papers were written: have them written, or, when nothing fits, change what the
/// requirement asks; a paragraph of its own.
std::string size_next(const SizeRun& run, const SizeOptions& options);
/// The same of a requirement whose plunger asks what no spring can do.
std::string contradicted_next(const std::string& file, const SizeOptions& options);

}  // namespace seatload::cli
