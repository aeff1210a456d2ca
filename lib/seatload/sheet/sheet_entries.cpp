// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <fmt/format.h>

#include <seatload/core/text.hpp>
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

}  // namespace

Entries wire_entries(const Facts& facts) {
    const wire::StrengthAt& strength = facts.values.strength;
    Entries out{Heading{"Wire"}};
    out.push_back(Paragraph{wire_name(facts.grade), Status::required, Face::bold});
    out.push_back(kept_or_adjusted(facts.wire_is_adjustable(), "diameter d, uncoiled", wire_diameter(facts)));
    out.push_back(Named{Status::reference, symbol("R", "m") + ", lowest; G",
                        reference(mpa(strength.minimum)) + "; " + reference(mpa(facts.values.moduli.shear)) + " MPa"});
    if (!is_firm(strength.evidence))
        out.push_back(Named{Status::required, symbol("R", "m"), "confirm by mill certificate"});
    return out;
}

Entries geometry_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const check::Evaluation& e = facts.values;
    const bool bore = facts.spec.bore_rules;
    const demand::Space& space = facts.spec.space;
    const auto pair = [](const std::string& a, const std::string& b) { return reference(a) + "; " + reference(b); };
    Entries out{Heading{"Coil"}};
    out.push_back(kept_or_adjusted(facts.diameter_is_adjustable(), (bore ? "outside " : "inside ") + coil_symbol(facts),
                                   coil_diameter(facts) + " mm"));
    if (facts.diameter_tolerance)
        out.push_back(Named{Status::reference, facts.diameter_tolerance->is_firm() ? "its tolerance" : "corresponds to",
                            fmt::format("EN 15800 grade {}", facts.spec.diameter_grade)});
    if (bore && space.bore)
        out.push_back(Named{Status::reference, "works in bore", reference(number(space.bore->smallest) + " mm")});
    if (!bore && space.rod)
        out.push_back(Named{Status::reference, "works over rod", reference(number(space.rod->largest) + " mm")});
    out.push_back(
        Named{Status::reference, "mean D; " + symbol("D", bore ? "i" : "e"),
              pair(number(s.mean_diameter), number(bore ? s.inside_diameter() : s.outside_diameter())) + " mm"});
    out.push_back(kept_or_adjusted(facts.may_adjust(record::Adjustable::free_length), "free length " + symbol("L", "0"),
                                   number(s.free_length) + " mm"));
    out.push_back(Named{Status::adjustable, "coils, total " + symbol("n", "t") + "; n",
                        pair(trimmed(s.total_coils, 2), trimmed(e.active_coils, 2))});
    out.push_back(Named{Status::reference, symbol("L", "c") + " at most; " + symbol("L", "n"),
                        pair(trimmed(in_mm(e.solid_length), 2), trimmed(in_mm(e.smallest_length), 2)) + " mm"});
    out.push_back(Named{Status::required, "hand of coiling", std::string(spring::word(s.hand))});
    out.push_back(Named{Status::required, "ends, free of burrs", std::string(spring::word(s.ends))});
    if (!spring::are_ground(s.ends)) return out;
    out.push_back(Named{Status::required, "squareness " + symbol("e", "1"),
                        "at most " + trimmed(in_mm(facts.squareness), 2) + " mm"});
    out.push_back(Named{Status::required, "parallelism " + symbol("e", "2"),
                        "at most " + trimmed(in_mm(facts.parallelism), 2) + " mm"});
    if (spring::are_closed(s.ends))
        out.push_back(Named{Status::reference, "ground arc; tip",
                            "(270° or more; about " + trimmed(0.25 * in_mm(s.wire_diameter), 2) + ")"});
    return out;
}

Entries load_entries(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    const record::Spec& spec = facts.spec;
    Entries out{Heading{"Loads of the new spring at 20 °C"}};
    out.push_back(load_entry(spec.seated, "1"));
    out.push_back(load_entry(spec.full_travel, "2"));
    out.push_back(Named{Status::reference, "corresponding to", load_grades(spec)});
    if (!spec.seated.grade || !spec.full_travel.grade)
        out.push_back(Paragraph{"A load tolerance tighter than grade 1 is to be agreed with the maker."});
    out.push_back(Named{Status::reference, "rate R", reference(significant(in_newton_per_mm(e.rate), 4) + " N/mm")});
    out.push_back(Named{
        Status::reference, symbol("F", "n") + "; " + symbol("F", "c"),
        reference(newton_number(e.at_smallest_length.load)) + "; " + reference(newton_number(e.at_solid.load)) + " N"});
    return out;
}

Entries stress_entries(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    Entries out{Heading{"Stress, uncorrected; school " + std::string(spring::word(facts.spec.limits.school))}};
    const auto row = [&](std::string_view a, std::string_view b, const Stress& of_a, const Stress& of_b) {
        out.push_back(Named{Status::reference, symbol("τ", a) + "; " + symbol("τ", b),
                            reference(mpa(of_a)) + "; " + reference(mpa(of_b)) + " MPa"});
    };
    if (e.seated && e.full_travel) row("1", "2", e.seated->stress, e.full_travel->stress);
    row("n", "c", e.at_smallest_length.stress, e.at_solid.stress);
    if (facts.spec.duty.is_dynamic() && e.seated && e.full_travel) {
        out.push_back(Heading{"Stress, corrected"});
        row("k1", "k2", e.seated->corrected_stress, e.full_travel->corrected_stress);
    }
    return out;
}

Entries process_entries(const Facts& facts) {
    Entries out{Heading{"Process"}};
    if (const auto& relief = facts.grade.stress_relief)
        out.push_back(Named{Status::reference, "stress relief",
                            reference(relief->temperature + (relief->time.empty() ? "" : ", " + relief->time))});
    out.push_back(Named{Status::adjustable, "presetting", "maker's choice"});
    out.push_back(facts.spec.duty.peened ? Named{Status::required, "shot peening", "required"}
                                         : Named{Status::reference, "shot peening", "(none)"});
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
            Named{Status::reference, "hottest; medium",
                  reference(trimmed(spec.surroundings.temperature.degrees, 1) + " °C" + medium)},
            Named{Status::reference, "seats", reference(seats(facts))}};
}

Entries inspection_entries(const Facts& facts) {
    return {Heading{"Inspection"},
            required_paragraph("Press 3 times to " + preload_length(facts) +
                               ", then measure at 20 ± 5 °C, coming from the free length."),
            required_paragraph(tests_every_piece(facts.spec) ? "Loads: every piece."
                                                             : "Loads: sampling plan by agreement."),
            required_paragraph(
                "A reading passes when it lies inside its tolerance by the uncertainty of measuring (k = 2).")};
}

Entries adjust_entries(const Facts& facts) {
    std::string words = "To bring both loads in: " + adjustable_quantities(facts) + ". " + symbol("L", "n") +
                        " stays at or below " + symbol("L", "2") + ". Nothing else without agreement.";
    if (facts.diameter_is_adjustable() && facts.diameter_tolerance) {
        const Length nominal =
            facts.spec.bore_rules ? facts.spec.spring.outside_diameter() : facts.spec.spring.inside_diameter();
        const Length limit = facts.spec.bore_rules ? nominal + facts.diameter_tolerance->value
                                                   : nominal - facts.diameter_tolerance->value;
        words += fmt::format(" {} never {} {} mm.", coil_symbol(facts), facts.spec.bore_rules ? "above" : "below",
                             number(limit));
    }
    return {Heading{std::string(sign(Status::adjustable)) + " The maker may adjust"}, Paragraph{words}};
}

Entries note_entries(const Facts& facts) {
    Entries out;
    if (facts.spec.notes.empty() && facts.spec.quantities.empty()) return out;
    out.push_back(Heading{"Order and notes"});
    if (!facts.spec.quantities.empty())
        out.push_back(Paragraph{"Quantities to quote: " + quantities(facts.spec) + "."});
    int count = 0;
    for (const std::string& note : facts.spec.notes) out.push_back(Paragraph{fmt::format("{}. {}", ++count, note)});
    return out;
}

Entries sheet_entries(const Facts& facts) {
    Entries all;
    for (const auto group : {&wire_entries, &geometry_entries, &load_entries, &stress_entries, &process_entries,
                             &inspection_entries, &adjust_entries, &service_entries, &note_entries})
        append(all, group(facts));
    return all;
}

}  // namespace seatload::sheet
