// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/record/plunger_file.hpp>

namespace seatload::cli {

/// The budget of a plunger with the file it came from.
struct BudgetView {
    std::string file;
    const record::PlungerFile& plunger;
    const demand::Budget& budget;
};

/// For people, in lines of at most `width` columns.
std::string budget_text(const BudgetView& view, int width);

/// For programs.
nlohmann::ordered_json budget_json(const BudgetView& view);

/// Why no spring can do it and what would mend it, in lines of at most `width` columns; empty when one can.
std::string contradictions_text(const demand::Budget& budget, int width);
nlohmann::ordered_json contradictions_json(const demand::Budget& budget);

/// "4.8 N .. 6.5 N", "at most 13.5 N".
std::string band_text(const demand::LoadBand& band, int digits);

/// The limits that the spring given does not surely keep, by their titles.
std::vector<std::string> broken_titles(const BudgetView& view);

}  // namespace seatload::cli
