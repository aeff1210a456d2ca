// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// "0.78 mm to 0.86 mm": what the maker may take without asking, or that he must ask.
std::string wire_range_words(const Facts& facts) {
    if (!facts.wire_range) return facts.say("wire.range_ask");
    const Figures figures = facts.figures();
    return figures.wires_with_unit(facts.wire_range->smallest, facts.wire_range->largest,
                                   [&](const std::string& from, const std::string& to) {
                                       return facts.say("wire.range_from_to", {{"from", from}, {"to", to}});
                                   });
}

std::string strength_name(const Facts& facts, bool firm) {
    if (facts.is_aged())
        return firm ? facts.say("wire.aged_strength_at_least") : facts.say("wire.aged_strength_expected");
    return firm ? facts.say("wire.strength_at_least") : facts.say("wire.strength_expected");
}

/// R_m of wire that is aged later is not that of our data, so that there is nothing to compare on the certificate.
std::string certificate_words(const Facts& facts, bool firm) {
    const std::string type = certificate_type(facts.spec);
    return firm || facts.is_aged() ? facts.say("wire.certificate_says", {{"type", type}})
                                   : facts.say("wire.certificate_asks", {{"type", type}});
}

}  // namespace

Entries wire_entries(const Facts& facts) {
    const wire::StrengthAt& strength = facts.values.strength;
    const Figures figures = facts.figures();
    const bool firm = is_firm(strength.evidence);
    Entries out{Heading{facts.say("wire.heading")}};
    out.push_back(Paragraph{wire_name(facts), Status::required, Face::bold});
    if (facts.is_aged())
        out.push_back(Named{Status::required, facts.say("wire.bought"),
                            facts.say("wire.bought_as", {{"condition", wire_words(facts, facts.grade.supplied_as)}})});
    if (const auto& bought = facts.grade.supplied_strength)
        out.push_back(Named{
            Status::reference,
            facts.say(is_firm(bought->second) ? "wire.bought_strength_at_least" : "wire.bought_strength_expected"),
            reference(with_unit(figures.stress(bought->first)))});
    // Where every other wire must be asked for, the diameter is no value for him to adjust, nor one that is inspected.
    const Status wire = facts.wire_range ? Status::adjustable : Status::reference;
    out.push_back(facts.wire_is_adjustable()
                      ? Named{wire, facts.say("wire.diameter"), reference(with_unit(wire_diameter(facts)))}
                      : kept_or_adjusted(false, facts.say("wire.diameter"), with_unit(wire_diameter(facts))));
    if (facts.wire_is_adjustable())
        out.push_back(Named{wire, facts.say(facts.wire_range ? "wire.range" : "wire.another"),
                            reference(wire_range_words(facts))});
    if (facts.wire_tolerance)
        out.push_back(Named{Status::reference, facts.say("wire.tolerance"),
                            reference(facts.wire_tolerance->is_firm() ? facts.say("wire.tolerance_of_standard")
                                                                      : facts.say("wire.tolerance_usual"))});
    else
        out.push_back(
            Named{Status::required, facts.say("wire.tolerance_of_wire"), facts.say("wire.tolerance_unknown")});
    out.push_back(
        Named{Status::reference, strength_name(facts, firm),
              references_with_unit(figures.stress(strength.minimum), figures.stress(facts.values.moduli.shear))});
    out.push_back(Named{Status::required, facts.say("wire.certificate"), certificate_words(facts, firm)});
    if (facts.is_aged()) out.push_back(Paragraph{facts.say("wire.certificate_of_aged")});
    return out;
}

}  // namespace seatload::sheet
