// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <fmt/format.h>

#include <seatload/core/text.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// A value the maker may alter or must keep, by the spec.
Named kept_or_adjusted(bool adjustable, std::string name, const std::string& value) {
    return adjustable ? Named{Status::adjustable, std::move(name), reference(value)}
                      : Named{Status::required, std::move(name), value};
}

std::string mpa(const Stress& stress) { return fixed(in_mpa(stress), 0); }
std::string newton_number(const Force& force) { return significant(in_newton(force), 4); }

void append(Entries& to, Entries from) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

Paragraph required_paragraph(const std::string& words) { return {words, Status::required}; }

Named load_entry(const record::LoadAtLength& load, std::string_view index) {
    return {Status::required,
            fmt::format("{} at {} = {} mm", symbol("F", index), symbol("L", index), number(load.length)),
            toleranced(load) + " N"};
}

/// Electroplated hard wire can crack from hydrogen (common practice, no source).
bool plating_embrittles(const Facts& facts) {
    const bool hard =
        facts.grade.family == wire::Family::cold_drawn_carbon || facts.grade.family == wire::Family::oil_tempered;
    const std::string finish = lower(facts.spec.finish);
    const auto mentions = [&](std::string_view word) { return finish.find(word) != std::string::npos; };
    return hard && (mentions("zinc") || mentions("plat") || mentions("cadmium") || mentions("nickel"));
}

std::string pair(const std::string& a, const std::string& b) { return reference(a) + "; " + reference(b); }

/// Squareness and parallelism are promised by EN 15800 up to here only (from memory).
constexpr double kLargestSquareIndex = 12.0;
constexpr double kLargestSquareSlenderness = 5.0;

Entries ground_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    Entries out;
    out.push_back(Named{Status::required, "squareness " + symbol("e", "1"),
                        "at most " + trimmed(in_mm(facts.squareness), 2) + " mm"});
    out.push_back(Named{Status::required, "parallelism " + symbol("e", "2"),
                        "at most " + trimmed(in_mm(facts.parallelism), 2) + " mm"});
    const double slenderness = s.free_length / s.mean_diameter;
    if (s.index() > kLargestSquareIndex || slenderness > kLargestSquareSlenderness)
        out.push_back(Paragraph{fmt::format("{}, {} of so {} a spring: to be agreed.", symbol("e", "1"),
                                            symbol("e", "2"), s.index() > kLargestSquareIndex ? "wide" : "slim")});
    if (spring::are_closed(s.ends))
        out.push_back(Named{Status::reference, "ground arc; tip",
                            "(270° or more); (" + trimmed(0.25 * in_mm(s.wire_diameter), 2) + " mm)"});
    return out;
}

Entries end_entries(const Facts& facts) {
    Entries out;
    out.push_back(Named{Status::required, "ends, free of burrs", ends(facts.spec.spring)});
    if (facts.keeps_half_turn())
        out.push_back(Named{Status::required, "end tips apart",
                            fmt::format("180° ± {}°", trimmed(360.0 * facts.spec.limits.half_turn_slack, 0))});
    if (spring::are_ground(facts.spec.spring.ends)) append(out, ground_entries(facts));
    return out;
}

/// The marked points of the load line, with what the tester looks for at each.
Grid points(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    const record::Spec& spec = facts.spec;
    const LoadLimits first = limits(spec.seated);
    const LoadLimits second = limits(spec.full_travel);
    const auto length = [](const Length& l) { return reference(trimmed(in_mm(l), 2)); };
    const auto load = [](const check::AtLength& at) { return reference(newton_number(at.load)); };
    Grid grid;
    for (const char* index : {"1", "2", "n", "c"}) grid.heads.push_back("at " + symbol("L", index));
    grid.rows.push_back({"L [mm]",
                         {number(spec.seated.length), number(spec.full_travel.length), length(e.smallest_length),
                          length(e.solid_length)}});
    grid.rows.push_back({"F most", {first.most, second.most}});
    grid.rows.push_back({"F [N]", {first.nominal, second.nominal, load(e.at_smallest_length), load(e.at_solid)}});
    grid.rows.push_back({"F least", {first.least, second.least}});
    const auto stresses = [&](const std::string& name, Stress check::AtLength::*stress) {
        Grid::Row row{name, {}};
        for (const auto* at : {e.seated ? &*e.seated : nullptr, e.full_travel ? &*e.full_travel : nullptr,
                               &e.at_smallest_length, &e.at_solid})
            row.values.push_back(at ? reference(mpa(at->*stress)) : "");
        grid.rows.push_back(std::move(row));
    };
    stresses("τ [MPa]", &check::AtLength::stress);
    if (spec.duty.is_dynamic() || spec.limits.stress_factor == demand::StressFactor::bergstraesser)
        stresses(symbol("τ", "k") + " [MPa]", &check::AtLength::corrected_stress);
    return grid;
}

std::string limits_source(const demand::Limits& limits) {
    return limits.school == spring::School::handbook ? "handbook rules" : std::string(spring::word(limits.school));
}

/// Wire that gets its strength from ageing must be aged; other wire is stress relieved by the maker's own practice, for
/// which a guide is given.
Entries heat_entries(const Facts& facts) {
    const auto& relief = facts.grade.stress_relief;
    if (!relief) return {};
    const std::string words = relief->temperature + (relief->time.empty() ? "" : ", " + relief->time);
    if (facts.grade.family != wire::Family::precipitation_stainless)
        return {Named{Status::adjustable, "stress relief, guide", reference(words)}};
    // The remark on the row says that ageing would make another grade of this one.
    if (!relief->analogy.empty()) return {Named{Status::required, "ageing", "none: used as drawn"}};
    return {Named{is_firm(relief->evidence) ? Status::required : Status::reference, "ageing after coiling",
                  is_firm(relief->evidence) ? words : reference(words)}};
}

}  // namespace

Entries wire_entries(const Facts& facts) {
    const wire::StrengthAt& strength = facts.values.strength;
    const bool firm = is_firm(strength.evidence);
    const std::string rm = symbol("R", "m");
    Entries out{Heading{"Wire"}};
    out.push_back(Paragraph{wire_name(facts.grade), Status::required, Face::bold});
    out.push_back(kept_or_adjusted(facts.wire_is_adjustable(), "diameter d, uncoiled", wire_diameter(facts)));
    out.push_back(Named{Status::reference, rm + (firm ? " at least; G" : " expected; G"),
                        reference(mpa(strength.minimum)) + "; " + reference(mpa(facts.values.moduli.shear)) + " MPa"});

    out.push_back(Named{Status::required, "mill certificate",
                        firm ? "with the lot: d, " + rm : "d, " + rm + "; ask if " + rm + " is lower"});
    return out;
}

Entries geometry_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const check::Evaluation& e = facts.values;
    const bool bore = facts.spec.bore_rules;
    const demand::Space& space = facts.spec.space;
    Entries out{Heading{"Coil"}};
    out.push_back(kept_or_adjusted(facts.diameter_is_adjustable(), (bore ? "outside " : "inside ") + coil_symbol(facts),
                                   coil_diameter(facts) + " mm"));
    if (facts.diameter_tolerance)
        out.push_back(Named{Status::reference, facts.diameter_tolerance->is_firm() ? "its tolerance" : "corresponds to",
                            reference(fmt::format("EN 15800 grade {}", facts.spec.diameter_grade))});
    if (bore && space.bore)
        out.push_back(Named{Status::reference, "works in bore of", reference(number(space.bore->smallest) + " mm")});
    if (!bore && space.rod)
        out.push_back(Named{Status::reference, "works over rod of", reference(number(space.rod->largest) + " mm")});
    out.push_back(
        Named{Status::reference, "mean D; " + symbol("D", bore ? "i" : "e"),
              pair(number(s.mean_diameter), number(bore ? s.inside_diameter() : s.outside_diameter())) + " mm"});
    out.push_back(kept_or_adjusted(facts.may_adjust(record::Adjustable::free_length), "free length " + symbol("L", "0"),
                                   number(s.free_length) + " mm"));
    out.push_back(Named{Status::adjustable, "coils, total " + symbol("n", "t") + "; n",
                        pair(trimmed(s.total_coils, 2), trimmed(e.active_coils, 2))});
    out.push_back(Named{Status::reference, "pitch, active coils", reference(trimmed(in_mm(e.pitch), 2) + " mm")});
    out.push_back(Named{Status::required, "hand of coiling", std::string(spring::word(s.hand))});
    append(out, end_entries(facts));
    out.push_back(Named{Status::reference, "wire a piece; mass",
                        reference(significant(in_mm(e.wire_length), 3) + " mm") + "; " +
                            reference(significant(in_gram(e.mass), 3) + " g")});
    return out;
}

Entries load_entries(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    Entries out{Heading{"Loads of the new spring at 20 °C"}};
    out.push_back(load_entry(spec.seated, "1"));
    out.push_back(load_entry(spec.full_travel, "2"));
    const bool fine = !spec.seated.grade || !spec.full_travel.grade;
    out.push_back(
        Named{Status::reference, "corresponding to", reference(load_grades(spec) + (fine ? "; to be agreed" : ""))});
    out.push_back(
        Named{Status::reference, "rate R", reference(significant(in_newton_per_mm(facts.values.rate), 4) + " N/mm")});
    out.push_back(points(facts));
    out.push_back(
        Named{Status::reference, "limit of " + limited_stress(facts),
              reference(fmt::format("{} MPa, {}", mpa(facts.permissible_stress), limits_source(facts.spec.limits)))});
    if (spec.duty.is_dynamic() && facts.values.seated && facts.values.full_travel)
        out.push_back(
            Named{Status::reference, "stress range " + symbol("τ", "kh"),
                  reference(mpa(facts.values.full_travel->corrected_stress - facts.values.seated->corrected_stress) +
                            " MPa")});
    if (facts.values.smallest_length > spec.full_travel.length)
        out.push_back(
            Paragraph{symbol("L", "2") + " lies below " + symbol("L", "n") + ": coils may touch on the way to it."});
    return out;
}

Entries process_entries(const Facts& facts) {
    Entries out{Heading{"Process"}};
    append(out, heat_entries(facts));
    out.push_back(Named{Status::adjustable, "surface; presetting", "maker's choice"});
    if (facts.spec.duty.peened)
        out.push_back(Named{Status::required, "shot peening", "required; agree intensity"});
    else if (facts.spec.duty.is_dynamic())
        out.push_back(Named{Status::reference, "shot peening", "(none)"});
    out.push_back(facts.spec.finish.empty() ? Named{Status::reference, "finish", "(none, lightly oiled)"}
                                            : Named{Status::required, "finish", facts.spec.finish});
    if (plating_embrittles(facts))
        out.push_back(required_paragraph("Bake at once after plating, against hydrogen embrittlement."));
    return out;
}

Entries service_entries(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const std::string medium = spec.surroundings.medium.empty() ? "" : ", " + spec.surroundings.medium;
    return {Heading{"Service"}, Named{Status::reference, "duty", reference(duty(spec.duty))},
            Named{Status::reference, "works at up to",
                  reference(trimmed(spec.surroundings.temperature.degrees, 1) + " °C" + medium)},
            Named{Status::reference, "seats", reference(seats(facts))}};
}

Entries inspection_entries(const Facts& facts) {
    Entries out{Heading{"Inspection on receipt"}};
    out.push_back(required_paragraph(test_sequence(facts)));
    if (!facts.bears_solid())
        out.push_back(required_paragraph("Never press it shorter than " + symbol("L", "2") + ": the wire may yield."));
    out.push_back(required_paragraph(tests_every_piece(facts.spec) ? "Loads: every piece, at both lengths."
                                                                   : "Loads: sampling plan by agreement."));
    out.push_back(required_paragraph(decision_rule()));
    return out;
}

Entries adjust_entries(const Facts& facts) {
    std::string words = "To bring both loads in: " + adjustable_quantities(facts) + ".";
    const std::string bounds = kept_bounds(facts);
    if (!bounds.empty()) words += " Keep " + bounds + ".";
    words += " Nothing else without agreement. Report " + quantities_as_made(facts) + " as made.";
    return {Heading{std::string(sign(Status::adjustable)) + " The maker may adjust"}, Paragraph{words}};
}

Entries order_entries(const Facts& facts) {
    Entries out{Heading{"Order, packing, notes"}};
    if (!facts.spec.quantities.empty())
        out.push_back(Paragraph{"Lots to quote: " + quantities(facts.spec) + " pieces."});
    out.push_back(required_paragraph("Packed so that pieces neither tangle nor rust."));
    out.push_back(required_paragraph("Label: number, revision, pieces, lot of wire."));
    int count = 0;
    for (const std::string& note : facts.spec.notes)
        out.push_back(required_paragraph(fmt::format("{}. {}", ++count, note)));
    return out;
}

Entries sheet_entries(const Facts& facts) {
    Entries all;
    for (const auto group : {&wire_entries, &geometry_entries, &load_entries, &process_entries, &inspection_entries,
                             &adjust_entries, &service_entries, &order_entries})
        append(all, group(facts));
    return all;
}

}  // namespace seatload::sheet
