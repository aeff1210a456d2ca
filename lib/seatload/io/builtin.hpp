// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/inspection/sampling_plan.hpp>
#include <seatload/demand/maker.hpp>
#include <seatload/record/phrase_book.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The wire grades, stock series and bibliography built into the library. An error in them is an error of ours.
Result<wire::Catalogue> builtin_catalogue();

/// The tolerance tables of EN 15800 built into the library. An error in them is an error of ours.
Result<tolerance::Tables> builtin_tolerances();

/// The sampling tables of ISO 2859-1 built into the library. An error in them is an error of ours.
Result<inspection::SamplingTables> builtin_sampling();

/// The spring makers built into the library, the ordinary workshop first. An error in them is an error of ours.
demand::Makers builtin_makers();

/// The languages papers are built in for (ISO 639-1), English first.
std::vector<std::string> builtin_languages();

/// The wording of papers in a built-in language. An error in it is an error of ours, as is a language that is not built
/// in.
record::PhraseBook builtin_wording(std::string_view language = "en");

}  // namespace seatload::io
