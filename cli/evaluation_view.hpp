// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/check/evaluation.hpp>
#include <seatload/record/measured_verdict.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::cli {

/// What a spring was judged by: the usual limits of its school, the limits and loads of its own spec, or a requirement.
enum class Judge { usual_limits, own_spec, requirement };

/// What is shown of one evaluated spring.
struct EvaluationView {
    std::string file;
    std::string name;
    const wire::Grade& grade;
    const demand::Requirement& requirement;
    const check::Evaluation& evaluation;
    Judge judge = Judge::usual_limits;
    const record::Measured* measured = nullptr;  ///< what the bench found of it; null when it was not measured
    std::vector<record::MeasuredVerdict> measured_verdicts{};
    const sizing::Outlook* outlook = nullptr;  ///< what tolerances do to it; null when it has no demand to keep
    bool is_temperature_stated = true;         ///< false: nobody said how hot it gets, and 20 °C was taken

    /// Every limit is kept by what is reckoned, and surely by what was measured.
    bool fits() const;
};

/// For people, in lines of at most `width` columns.
std::string evaluation_text(const EvaluationView& view, int width);

/// For programs: keys with unit suffixes, numbers in full precision, null where a value has no bound.
nlohmann::ordered_json evaluation_json(const EvaluationView& view);

}  // namespace seatload::cli
