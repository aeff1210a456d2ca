// SPDX-License-Identifier: MIT
#include <seatload/record/offered_wire.hpp>

#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::record {
namespace {

/// Letters and digits alone: makers write "EN 10270-1 SH", "en10270-1/SH".
std::string bare(std::string_view text) {
    std::string out = lower(text);
    std::erase_if(out, [](char c) { return !((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')); });
    return out;
}

/// The grades a text may mean: the one of that id, or all whose id ends or begins with it.
std::vector<const wire::Grade*> meant(std::string_view words, const wire::Grade& on_sheet,
                                      const wire::Catalogue& catalogue) {
    const std::string wanted = bare(words);
    if (wanted == bare(on_sheet.id)) return {&on_sheet};
    std::vector<const wire::Grade*> like;
    for (const wire::Grade& grade : catalogue.grades) {
        const std::string id = bare(grade.id);
        if (id == wanted) return {&grade};
        if (!wanted.empty() && (id.starts_with(wanted) || id.ends_with(wanted))) like.push_back(&grade);
    }
    return like;
}

std::string ids(const std::vector<const wire::Grade*>& grades) {
    std::vector<std::string> names;
    for (const wire::Grade* grade : grades) names.push_back(grade->id);
    return join(names, ", ");
}

/// The grade with the maker's strength at one diameter in place of the table's.
wire::Grade certified(wire::Grade grade, Length diameter, Stress strength) {
    const wire::Moduli moduli = wire::moduli_at(grade, diameter);
    const auto tolerance = wire::diameter_tolerance_at(grade, diameter);
    grade.id += " as certified";
    grade.strength = wire::StrengthGiven{strength, diameter, diameter};
    grade.moduli = {{diameter, moduli.shear, moduli.young}};
    grade.diameter_tolerance.clear();
    if (tolerance) grade.diameter_tolerance = {{diameter, *tolerance, wire::Evidence::given}};
    return grade;
}

void heed_strength(OfferedWire& wire, Length diameter, Stress stated) {
    const auto standard = wire::strength_at(wire.grade, diameter);
    const std::string certificate = "its certificate says " + units::shown(stated, 0);
    if (standard && stated >= standard->minimum) {
        wire.remarks.push_back(certificate + "; what counts is the least its standard allows, " +
                               units::shown(standard->minimum, 0));
        return;
    }
    wire.remarks.push_back(certificate + (standard ? ", less than its standard allows (" +
                                                         units::shown(standard->minimum, 0) + "), and that counts"
                                                   : ", and its standard has no strength for this diameter"));
    wire.grade = certified(std::move(wire.grade), diameter, stated);
    wire.is_catalogued = false;
}

}  // namespace

OfferedWire offered_wire(const HeldWire& held, const wire::Grade& on_sheet, Length diameter,
                         const wire::Catalogue& catalogue) {
    OfferedWire wire{on_sheet, true, {}, {}};
    if (!held.grade.empty()) {
        const auto grades = meant(held.grade, on_sheet, catalogue);
        if (grades.size() != 1) {
            const std::string near = catalogue.suggestion(held.grade);
            wire.missing.push_back(grades.empty()
                                       ? "what wire \"" + held.grade + "\" is: no grade of that name is known" +
                                             (near.empty() ? "" : " (" + near + ")") +
                                             "; its strength and moduli can be stated in a wire file (--wire-file)"
                                       : "which grade \"" + held.grade + "\" is: " + ids(grades));
            return wire;
        }
        wire.grade = *grades.front();
    }
    if (held.tensile_strength) heed_strength(wire, diameter, *held.tensile_strength);
    if (!wire::strength_at(wire.grade, diameter)) {
        const wire::DiameterRange range = wire::strength_range(wire.grade);
        wire.missing.push_back("the tensile strength of " + wire.grade.id + " at " + units::shown_wire(diameter) +
                               ": it is known from " + units::shown_wire(range.smallest) + " to " +
                               units::shown_wire(range.largest));
    }
    return wire;
}

}  // namespace seatload::record
