// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/demand/requirement.hpp>

#include <cli/papers.hpp>

namespace seatload::cli {

/// A warning that names the first of the papers for makers that stands in the folder with other bytes, when the form
/// for the reply there is of the same number and revision: makers may hold what is about to be lost. Nothing when all
/// papers are new, are as they were, or belong to another revision.
Diagnostics replaced_papers(const std::vector<Paper>& papers, const std::filesystem::path& form,
                            const demand::Identity& identity);

}  // namespace seatload::cli
