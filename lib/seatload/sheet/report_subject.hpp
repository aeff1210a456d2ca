// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include <seatload/check/evaluation.hpp>
#include <seatload/check/numbers.hpp>
#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/report_trust.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// A spec with everything its calculation report tells of. Unlike the sheet's, these numbers are those in service too:
/// hot, and after load loss.
struct ReportSubject {
    record::Spec spec;  ///< texts made readable; our own reasons kept
    wire::Grade grade;
    demand::Requirement requirement;  ///< the one the spec carries
    check::DemandNumbers demand;
    check::WireNumbers wire;
    check::Evaluation values;
    double coil_tolerance_mm = 0.0;  ///< plus-minus on De or Di used in the clearances
    Trust coil_tolerance_trust = Trust::memory;
    Trust wire_tolerance_trust = Trust::estimate;
    tolerance::Tables tables;
    /// What the springs are taken to be made to: the grades ordered; grade 1 where loads are ordered tighter.
    sizing::ToleranceGrades made_to;
    tolerance::MadeAllowance allowance;           ///< of these grades
    tolerance::MadeOrder order;                   ///< the loads ordered
    std::optional<sizing::Outlook> outlook = {};  ///< when it is known already

    const check::AtLength& seated() const { return *values.seated; }
    const check::AtLength& full_travel() const { return *values.full_travel; }
    /// The verdict of a rule in play, or null.
    const check::Verdict* verdict(std::string_view rule) const;
    /// Share of a cold and new load that is left hot and after load loss.
    double kept_share() const { return wire.hot_share * wire.load_kept; }
    /// Ln by the gap rule of the limits [mm].
    double smallest_length_mm() const;
    /// Whether a tolerance of the wire is known at this diameter; if not, none is counted.
    bool knows_wire_tolerance() const;
    /// Fatigue is judged, and there are numbers to judge it by.
    bool has_fatigue() const;
};

/// Everything a report needs of a spec. Errors: those of check::evaluate(); texts that are not UTF-8; a spring without
/// active coils, or whose lengths do not fall from free to seated to full travel. Warnings: characters that cannot be
/// printed.
Result<ReportSubject> report_subject(const record::Spec& spec, const wire::Grade& grade,
                                     const tolerance::Tables& tables);

/// A letter for each: the spec's own, or its place in the row ("1", "2").
std::string report_letter(const record::Spec& spec, std::size_t index);

}  // namespace seatload::sheet
