// SPDX-License-Identifier: MIT
#include <seatload/record/drift.hpp>

#include <algorithm>
#include <optional>

#include <seatload/record/specify.hpp>

namespace seatload::record {
namespace {

bool any_of_group(const std::vector<Moved>& all, ResultGroup group) {
    return std::any_of(all.begin(), all.end(), [&](const Moved& m) { return m.kind->group == group; });
}

/// "least tensile strength Rm, shear modulus G": the names of a group.
std::string names(const std::vector<Moved>& all, ResultGroup group) {
    std::string out;
    for (const Moved& m : all)
        if (m.kind->group == group) out += (out.empty() ? "" : ", ") + std::string(m.kind->name);
    return out;
}

/// The key results with the wire data that counted when the spec was approved.
std::optional<KeyResults> with_wire_of_then(const KeptSpec& kept, const wire::Grade& grade,
                                            const tolerance::Tables& tables, const KeyResults& before) {
    const wire::Grade then = as_then(grade, kept.spec, before);
    const auto evaluation = check::evaluate(kept.spec.spring, then, requirement_of(kept.spec), tables);
    if (!evaluation) return std::nullopt;
    return key_results({*evaluation, kept.spec, then, tables}, before.program);
}

/// Why results moved; `all` are those that did, and what of them is left with the wire data of then tells the rest.
std::vector<std::string> causes_of(const KeptSpec& kept, const wire::Grade& grade, const tolerance::Tables& tables,
                                   const KeyResults& before, const KeyResults& now, const std::vector<Moved>& all) {
    std::vector<std::string> causes;
    const bool by_wire = any_of_group(all, ResultGroup::wire);
    if (by_wire)
        causes.push_back("the data of wire " + kept.spec.wire_grade + " changed (" + names(all, ResultGroup::wire) +
                         ")");
    const auto then = with_wire_of_then(kept, grade, tables, before);
    const std::vector<Moved> left = then ? moved(before, *then) : all;
    if (any_of_group(left, ResultGroup::tolerance))
        causes.push_back("tolerances changed (" + names(left, ResultGroup::tolerance) + ")");
    if (any_of_group(left, ResultGroup::spring))
        causes.push_back("it is worked out otherwise: by " + before.program + " then, by " + now.program + " now");
    else if (by_wire)
        causes.push_back("with the wire data of then the spring comes out as it did");
    return causes;
}

}  // namespace

Drift drift_of(const KeptSpec& kept, const wire::Grade& grade, const tolerance::Tables& tables,
               const std::string& program) {
    Drift drift;
    if (kept.is_altered()) return drift;
    const auto evaluation = check::evaluate(kept.spec.spring, grade, requirement_of(kept.spec), tables);
    if (!evaluation) {
        for (const Diagnostic& d : evaluation.error()) drift.unusable.push_back(d.message);
        return drift;
    }
    for (const check::Verdict& verdict : evaluation->verdicts)
        if (!verdict.passed) drift.broken.push_back(verdict.reason);
    const Step* approval = approval_of(kept.history);
    if (approval == nullptr || !approval->results) return drift;
    const KeyResults now = key_results({*evaluation, kept.spec, grade, tables}, program);
    drift.moved = moved(*approval->results, now);
    if (!drift.moved.empty()) drift.causes = causes_of(kept, grade, tables, *approval->results, now, drift.moved);
    return drift;
}

}  // namespace seatload::record
