// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include <seatload/wire/evidence.hpp>

namespace seatload::inspection {

/// Inspection levels, in the order of the table's columns: the special ones first.
enum class Level { s1, s2, s3, s4, one, two, three };
inline constexpr std::size_t kLevels = 7;

/// How strictly lots of a maker are looked at.
enum class Severity { normal, tightened, reduced };

constexpr std::string_view word(Severity severity) {
    return severity == Severity::normal ? "normal" : severity == Severity::tightened ? "tightened" : "reduced";
}

/// A cell of a master table: a plan, or where to go for one.
struct PlanCell {
    enum class Kind { plan, first_below, first_above };
    Kind kind = Kind::first_below;
    int accept = 0;  ///< Ac
    int reject = 1;  ///< Re
};

/// A row of a master table: code letter, sample size, a cell for each AQL.
struct PlanRow {
    char letter = 'A';
    int size = 0;
    std::vector<PlanCell> cells;
};

struct PlanTable {
    std::vector<PlanRow> rows;
    wire::Evidence evidence = wire::Evidence::memory;
};

/// Code letters for lots from one size on.
struct LetterRow {
    long from = 2;
    std::array<char, kLevels> letters{};
};

/// Single sampling by attributes: ISO 2859-1, MIL-STD-105E.
struct SamplingTables {
    std::vector<double> aql;  ///< acceptance quality limits, per cent nonconforming (rising)
    std::vector<LetterRow> letters;
    std::array<PlanTable, 3> plans;  ///< by Severity

    const PlanTable& of(Severity severity) const { return plans[static_cast<std::size_t>(severity)]; }
};

/// How many pieces to take, and how many of them may be bad.
struct SamplingPlan {
    char letter = 'A';  ///< as the lot size gives it
    char used = 'A';    ///< of the plan used, after the arrows
    int size = 0;
    int accept = 0;
    int reject = 1;
};

/// The code letter for a lot; lots smaller than the table's first take that.
char code_letter(const SamplingTables& tables, long lot_size, Level level);

/// The plan for a lot, arrows followed. A sample as large as the lot or larger is the whole lot. Nothing: the AQL is
/// none of the table's.
std::optional<SamplingPlan> find_plan(const SamplingTables& tables, long lot_size, Level level, double aql,
                                      Severity severity);

}  // namespace seatload::inspection
