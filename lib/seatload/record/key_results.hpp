// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::record {

/// What a key result hangs on.
enum class ResultGroup {
    wire,       ///< data of the grade
    tolerance,  ///< tables of tolerances
    spring,     ///< worked out from the former
};

/// What key results are read off.
struct Worked {
    const check::Evaluation& e;
    const Spec& spec;
    const wire::Grade& grade;
    const tolerance::Tables& tables;
};

/// A number worth keeping with an approval, so that it can be seen later whether it is still worked out the same.
struct ResultKind {
    std::string_view key;   ///< in files
    std::string_view name;  ///< for people
    std::string_view unit;
    ResultGroup group;
    double (*value)(const Worked&);
};

/// Every kind of key result, in the order they are told.
std::span<const ResultKind> result_kinds();

/// The key results of a spring, one a kind.
struct KeyResults {
    std::string program;         ///< that worked them out: "seatload 0.1.0"
    std::vector<double> values;  ///< in the units of result_kinds(); NaN where a kind was not known then
};

/// The key results of a spec, worked out by a program ("seatload 0.1.0").
KeyResults key_results(const Worked& worked, std::string program);

/// A key result that is no longer what it was.
struct Moved {
    const ResultKind* kind = nullptr;
    double before = 0.0;
    double now = 0.0;
};

/// Those that differ by more than a share of 6e-6: files keep six digits.
std::vector<Moved> moved(const KeyResults& before, const KeyResults& now);

/// The number as files and people see it, six digits and the unit.
std::string shown(const ResultKind& kind, double value);

/// The grade with the strength, moduli, and density that key results were worked out with, at the diameter of the spec.
wire::Grade as_then(wire::Grade grade, const Spec& spec, const KeyResults& before);

}  // namespace seatload::record
