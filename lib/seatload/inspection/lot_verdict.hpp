// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/inspection/guard_band.hpp>
#include <seatload/inspection/samples.hpp>
#include <seatload/inspection/sequence.hpp>
#include <seatload/inspection/summary.hpp>
#include <seatload/inspection/verdict.hpp>

namespace seatload::inspection {

/// Pieces whose dimensions are measured, as the sheet says; all of a smaller lot.
inline constexpr int kPiecesForDimensions = 5;

/// How a lot is judged by its loads.
struct LotPlan {
    bool every_piece = true;
    int size = 0;  ///< pieces to be measured
    int accept = 0;
    int reject = 1;
    std::optional<SamplingPlan> sampling;  ///< the row of the tables, when it is not every piece
    PlanChoice choice;
};

/// The plan chosen, for a lot. Nothing: its AQL is none of the tables'.
std::optional<LotPlan> lot_plan(const PlanChoice& choice, int lot_size, const SamplingTables& tables);

/// A characteristic as found on the pieces measured.
struct Judged {
    Characteristic characteristic;
    double expanded = 0.0;                         ///< U of each value
    std::vector<std::optional<Finding>> findings;  ///< one a piece; nothing: not measured there
    std::vector<double> values;                    ///< those measured, in the order of measuring
    int inside = 0;
    int unproven = 0;
    int outside = 0;
    int wanted = 0;     ///< pieces that had to be measured
    int by_tips = 0;    ///< of those inside: only because their end tips are as close as that takes
    int want_tips = 0;  ///< of those unproven: their end tips would decide, and are not known well enough
    Verdict verdict = Verdict::not_proven;
    std::string why;  ///< of a verdict that is not accept; else empty
    std::optional<Summary> summary;
    std::optional<Sequence> sequence;

    int measured() const { return inside + unproven + outside; }
    bool decides() const { return characteristic.role != Role::noted; }
};

/// A lot as judged.
struct LotInspection {
    Samples samples;
    LotPlan plan;
    std::vector<Judged> characteristics;
    std::vector<std::size_t> bad;       ///< pieces with a load outside, by place
    std::vector<std::size_t> unproven;  ///< pieces with a load unproven and none outside
    Verdict verdict = Verdict::not_proven;
    std::vector<std::string> reasons;     ///< of a verdict that is not accept
    std::vector<std::string> conditions;  ///< of a verdict that is accept: what the sheet asks and nobody measured
    std::vector<std::string> remarks;
};

/// Judges a lot by the characteristics of its sheet. A load counts by pieces: a piece is bad when either load lies
/// outside. Dimensions must be inside on all pieces measured.
LotInspection inspect(const Samples& samples, const std::vector<Characteristic>& characteristics, const LotPlan& plan);

}  // namespace seatload::inspection
