// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/lean_told.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sizing/merit.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::record {

/// The grade of EN 15800 in which a spec's tolerance room is counted.
inline constexpr int kUsualGrade = 2;

/// What judging needs beside the offer.
struct JudgingBasis {
    const wire::Catalogue& wires;
    const tolerance::Tables& tolerances;
};

/// A spec with what is needed to judge it.
struct JudgedSpec {
    Spec spec;
    wire::Grade grade;
    check::Evaluation evaluation;
    sizing::Merit merit;
    LeanTold lean;
};

/// What is ordered anew of a spring that is another than that of its spec.
struct Anew {
    std::optional<double> tips_degrees;  ///< as asked for
};

/// The spec judged as it stands; with `anew`, its spring is another than that of its loads, which are ordered anew.
/// Errors: it cannot be evaluated.
Result<JudgedSpec> judged_spec(Spec spec, const wire::Grade& grade, const tolerance::Tables& tables,
                               const std::optional<Anew>& anew);

/// Whether it keeps its limits where the other does not, or has more tolerance room, in whole tenths.
bool is_better(const JudgedSpec& a, const JudgedSpec& b);

}  // namespace seatload::record
