// SPDX-License-Identifier: MIT
#include <seatload/inspection/sampling_plan.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/assert.hpp>

namespace seatload::inspection {
namespace {

constexpr double kSameAql = 1e-9;

std::optional<std::size_t> column_of(const SamplingTables& tables, double aql) {
    const auto found =
        std::find_if(tables.aql.begin(), tables.aql.end(), [&](double a) { return std::abs(a - aql) < kSameAql; });
    if (found == tables.aql.end()) return std::nullopt;
    return static_cast<std::size_t>(found - tables.aql.begin());
}

/// The row whose cell holds a plan, from a row on in the direction its arrow points.
const PlanRow& row_with_plan(const PlanTable& table, std::size_t row, std::size_t column) {
    using Kind = PlanCell::Kind;
    const Kind way = table.rows[row].cells[column].kind;
    while (table.rows[row].cells[column].kind != Kind::plan) {
        SEATLOAD_ASSERT(way == Kind::first_below ? row + 1 < table.rows.size() : row > 0);
        row = way == Kind::first_below ? row + 1 : row - 1;
    }
    return table.rows[row];
}

}  // namespace

char code_letter(const SamplingTables& tables, long lot_size, Level level) {
    SEATLOAD_ASSERT(!tables.letters.empty());
    const LetterRow* found = &tables.letters.front();
    for (const LetterRow& row : tables.letters)
        if (row.from <= lot_size) found = &row;
    return found->letters[static_cast<std::size_t>(level)];
}

std::optional<SamplingPlan> find_plan(const SamplingTables& tables, long lot_size, Level level, double aql,
                                      Severity severity) {
    const auto column = column_of(tables, aql);
    if (!column) return std::nullopt;
    const char letter = code_letter(tables, lot_size, level);
    const PlanTable& table = tables.of(severity);
    const auto start =
        std::find_if(table.rows.begin(), table.rows.end(), [&](const PlanRow& row) { return row.letter == letter; });
    SEATLOAD_ASSERT(start != table.rows.end());
    const PlanRow& row = row_with_plan(table, static_cast<std::size_t>(start - table.rows.begin()), *column);
    const PlanCell& cell = row.cells[*column];
    return SamplingPlan{letter, row.letter, static_cast<int>(std::min<long>(row.size, lot_size)), cell.accept,
                        cell.reject};
}

}  // namespace seatload::inspection
