// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// Whether a paper for the maker may name the standard as a number's source.
constexpr bool is_firm(wire::Evidence evidence) {
    return evidence == wire::Evidence::standard || evidence == wire::Evidence::given;
}

/// A number with how far it can be trusted.
template <class Q>
struct Trusted {
    Q value;
    wire::Evidence evidence = wire::Evidence::standard;

    bool is_firm() const { return sheet::is_firm(evidence); }
};

/// End tips closer than ordered, and the free length that they let a piece have.
struct CloserTips {
    double turns = 0.0;  ///< from half a turn apart, plus-minus
    Length longest_free_length;
};

/// All numbers of a spec's sheet. Loads, stresses and lengths are those of the new spring at 20 deg C, as it is
/// inspected. Ln follows the gap rule of the spec's limits. The grade of a load is worked out from its tolerances,
/// whatever the spec says.
struct Facts {
    Paper paper;        ///< how it is to be told
    record::Spec spec;  ///< texts made readable, our own reasons taken out
    wire::Grade grade;
    check::Evaluation values;
    std::optional<Trusted<Length>> wire_tolerance;
    std::optional<Trusted<Length>> diameter_tolerance;  ///< of De or Di
    Length squareness;                                  ///< e1
    Length parallelism;                                 ///< e2
    std::optional<Force> seated_grade_tolerance;        ///< of the EN 15800 grade the load corresponds to
    std::optional<Force> full_travel_grade_tolerance;
    Stress permissible_stress;                  ///< by the spec's limits, at their length and with their factor
    std::optional<Length> longest_free_length;  ///< before it buckles, leans or outgrows its room; nothing: no bound
    /// Of pieces whose end tips are closer to half a turn apart, where lean alone asks for the bound above.
    std::optional<CloserTips> closer_tips = {};
    std::optional<demand::LengthRange> wire_range = {};  ///< d the maker may go to; nothing: he must ask

    /// A phrase in the paper's language.
    std::string say(std::string_view key, std::initializer_list<Filling> fillings = {}) const {
        return paper.words.say(key, fillings);
    }
    Figures figures() const { return Figures(paper); }

    bool may_adjust(record::Adjustable quantity) const;
    bool wire_is_adjustable() const { return may_adjust(record::Adjustable::coils_and_wire); }
    bool diameter_is_adjustable() const { return may_adjust(record::Adjustable::coils_and_diameter); }
    /// How far what papers leave to agreement is: of one of several to be quoted it is to be agreed, of the one chosen
    /// it is as ordered.
    std::string agreement() const { return say(spec.alternative.empty() ? "agreement.done" : "agreement.open"); }
    /// Lc of a spring of the thickest wire that its tolerance allows, whichever form the limits take it by.
    Length longest_solid() const;
    /// Load and stress there.
    check::AtLength at_longest_solid() const;
    /// Whether the wire bears pressing the spring solid.
    bool bears_solid() const;
    /// Whether the wire is bought unaged and gets its strength after coiling.
    bool is_aged() const { return !grade.supplied_as.empty(); }
    /// On a sliding seat: how nearly the coils must stay half a turn over a whole number [turns, plus-minus].
    std::optional<double> half_turn_tolerance() const;
};

/// The facts of a spec. Errors: the grade has no strength at the wire diameter, and an over-defined spec: two loads fix
/// rate and free length, so that the maker must be left the free length and, with the coils, wire or coil diameter (EN
/// 15800, compensation rule, from memory); loads that its spring does not give within their tolerances; a text that is
/// not UTF-8; a spring that cannot be drawn (no active coils, coils longer than the free length, lengths out of order).
/// Warnings: characters that cannot be printed.
Result<Facts> facts(const record::Spec& spec, const wire::Grade& grade, const tolerance::Tables& tables,
                    const Paper& paper);

}  // namespace seatload::sheet
