// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <algorithm>
#include <numbers>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/inspection_limits.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// Squareness and parallelism are promised by EN 15800 up to here only (from memory).
constexpr double kLargestSquareIndex = 12.0;
constexpr double kLargestSquareSlenderness = 5.0;

/// The limit, and in brackets the grade it corresponds to: the standard's shares are from memory.
std::string square_limit(const Facts& facts, Length limit) {
    return facts.say("coil.square_limit",
                     {{"limit", with_unit(end_limit(facts, limit))},
                      {"grade", facts.say("grade.one", {{"grade", std::to_string(facts.spec.squareness_grade)}})}});
}

Entries ground_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    Entries out;
    out.push_back(Named{Status::required, facts.say("coil.squareness"), square_limit(facts, facts.squareness)});
    out.push_back(Named{Status::required, facts.say("coil.parallelism"), square_limit(facts, facts.parallelism)});
    if (s.index() > kLargestSquareIndex)
        out.push_back(Paragraph{facts.say("coil.square_so_wide", {{"agreement", facts.agreement()}})});
    else if (s.free_length / s.mean_diameter > kLargestSquareSlenderness)
        out.push_back(Paragraph{facts.say("coil.square_so_slim", {{"agreement", facts.agreement()}})});
    if (!spring::are_closed(s.ends)) {
        out.push_back(Named{Status::adjustable, facts.say("coil.tip"), reference(facts.say("coil.tip_as_ground"))});
    } else {
        const std::string tip = with_unit(facts.figures().length(0.25 * s.wire_diameter, {2}));
        out.push_back(Named{Status::reference, facts.say("coil.arc_and_tip"),
                            facts.say("coil.arc_and_tip_values", {{"tip", tip}})});
    }
    return out;
}

Entries end_entries(const Facts& facts) {
    Entries out;
    out.push_back(Named{Status::required, facts.say("coil.ends"), ends(facts)});
    // Only a ground face has an edge inside and outside; other ends have the burr of the cut (common practice, no
    // source).
    out.push_back(Named{Status::required, facts.say("coil.deburred"),
                        spring::are_ground(facts.spec.spring.ends) ? facts.say("coil.deburred_where")
                                                                   : facts.say("coil.deburred_tips")});
    if (facts.half_turn_tolerance())
        out.push_back(Named{Status::required, facts.say("coil.tips_apart"), tips_apart_words(facts)});
    if (spring::are_ground(facts.spec.spring.ends)) append(out, ground_entries(facts));
    return out;
}

}  // namespace

Entries geometry_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const check::Evaluation& e = facts.values;
    const Figures figures = facts.figures();
    const bool bore = facts.spec.bore_rules;
    const demand::Space& space = facts.spec.space;
    Entries out{Heading{facts.say("coil.heading")}};
    out.push_back(kept_or_adjusted(facts.diameter_is_adjustable(), coil_name(facts), with_unit(coil_diameter(facts))));
    if (facts.diameter_tolerance)
        out.push_back(
            Named{Status::reference,
                  facts.diameter_tolerance->is_firm() ? facts.say("coil.its_tolerance") : facts.say("coil.corresponds"),
                  reference(facts.say("grade.both", {{"grade", std::to_string(facts.spec.diameter_grade)}}))});
    const Length other_diameter = bore ? s.inside_diameter() : s.outside_diameter();
    const Decimals of_both{
        3, std::max(decimals(figures.length(s.mean_diameter)), decimals(figures.length(other_diameter)))};
    // Both when it works between a bore and a rod: either binds it.
    if (space.bore)
        out.push_back(Named{Status::reference, facts.say("coil.in_bore"),
                            reference(with_unit(figures.length(space.bore->smallest)))});
    if (space.rod)
        out.push_back(Named{Status::reference, facts.say("coil.over_rod"),
                            reference(with_unit(figures.length(space.rod->largest)))});
    out.push_back(
        Named{Status::reference, bore ? facts.say("coil.mean_and_inside") : facts.say("coil.mean_and_outside"),
              references_with_unit(figures.length(s.mean_diameter, of_both), figures.length(other_diameter, of_both))});
    out.push_back(kept_or_adjusted(facts.may_adjust(record::Adjustable::free_length), facts.say("coil.free_length"),
                                   with_unit(drawn_free_length(facts))));
    if (longest_free_length(facts))
        out.push_back(Named{Status::required, facts.say("coil.longest"), longest_free_length_words(facts)});
    out.push_back(
        Named{Status::adjustable, facts.say("coil.coils"),
              reference(figures.number(s.total_coils, {2})) + "; " + reference(figures.number(e.active_coils, {2}))});
    const double helix_degrees = in_base_unit(e.helix_angle) * 180.0 / std::numbers::pi;
    out.push_back(Named{Status::reference, facts.say("coil.pitch_and_helix"),
                        reference(with_unit(figures.length(e.pitch, {2}))) + "; " +
                            reference(figures.number(helix_degrees, {1}) + "°")});
    if (facts.half_turn_tolerance())
        out.push_back(Named{Status::required, facts.say("coil.hand"), hand(facts)});
    else
        out.push_back(Named{Status::required, facts.say("coil.hand_and_tips"),
                            hand(facts) + "; " + reference(facts.say("coil.tips_anyhow"))});
    append(out, end_entries(facts));
    out.push_back(Named{Status::reference, facts.say("coil.wire_and_mass"),
                        reference(with_unit(figures.significant(Unit::mm, in_mm(e.wire_length), 3))) + "; " +
                            reference(with_unit(figures.significant(Unit::gram, in_gram(e.mass), 3)))});
    return out;
}

}  // namespace seatload::sheet
