// SPDX-License-Identifier: MIT
#include <seatload/sheet/terms.hpp>

#include <fmt/format.h>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr int kLargestFullyTested =
    150;  ///< lot size up to which every piece is load-tested (common practice, no source)

}  // namespace

std::string listed(const std::vector<std::string>& parts) {
    std::string out;
    for (std::size_t i = 0; i < parts.size(); ++i)
        out += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
    return out;
}

std::string symbol(std::string_view letter, std::string_view index) { return with_sub(letter, index); }

std::string wire_name(const wire::Grade& grade) { return grade.standard + ", " + grade.designation; }

std::string wire_diameter(const Facts& facts) {
    const Length d = facts.spec.spring.wire_diameter;
    if (!facts.wire_tolerance) return wire_number(d) + " mm";
    const std::string words = with_tolerance(d, facts.wire_tolerance->value, 2);
    // Inside the brackets of an adjustable diameter it is a reference as it is.
    if (facts.wire_tolerance->is_firm() || facts.wire_is_adjustable()) return words + " mm";
    const auto space = words.find(' ');
    return words.substr(0, space + 1) + reference(words.substr(space + 1)) + " mm";
}

std::string coil_diameter(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const Length nominal = facts.spec.bore_rules ? s.outside_diameter() : s.inside_diameter();
    return facts.diameter_tolerance ? with_tolerance(nominal, facts.diameter_tolerance->value) : number(nominal);
}

std::string coil_symbol(const Facts& facts) { return symbol("D", facts.spec.bore_rules ? "e" : "i"); }

std::string load_grades(const record::Spec& spec) {
    if (spec.seated.grade == spec.full_travel.grade)
        return spec.seated.grade ? "EN 15800 grade\u00a0" + std::to_string(*spec.seated.grade)
                                 : std::string("finer than EN 15800 grade\u00a01");
    const auto words = [](const std::optional<int>& grade) {
        return grade ? "grade\u00a0" + std::to_string(*grade) : std::string("finer than grade\u00a01");
    };
    return "EN 15800: " + symbol("F", "1") + " " + words(spec.seated.grade) + ", " + symbol("F", "2") + " " +
           words(spec.full_travel.grade);
}

std::string duty(const demand::Duty& duty) {
    if (!duty.cycles) return "under 10\u00a0000 cycles";
    const std::string cycles = grouped(static_cast<unsigned long long>(*duty.cycles)) + " cycles";
    return duty.frequency ? cycles + " at " + trimmed(in_hertz(*duty.frequency), 2) + " Hz" : cycles;
}

std::string seats(const Facts& facts) {
    switch (facts.spec.space.seats) {
        case demand::Seats::fixed:
            return "flat and parallel, on axis";
        case demand::Seats::pivots:
            return "one flat, the other tilts";
        case demand::Seats::both_pivot:
            return "both ends tilt";
        case demand::Seats::slides:
            return "flat, one slides sideways";
        case demand::Seats::free_end:
            return "one flat, the other free";
        case demand::Seats::guided:
            return facts.spec.bore_rules ? "guided in the bore" : "guided on the rod";
    }
    return {};
}

std::string preload_length(const Facts& facts) {
    return facts.bears_solid() ? "solid length" : "length " + symbol("L", "2");
}

std::string ends(const spring::Spring& spring) {
    switch (spring.ends) {
        case spring::Ends::open:
            return "open, not ground";
        case spring::Ends::closed:
            return "closed, not ground";
        default:
            return std::string(spring::word(spring.ends));
    }
}

std::string drawing_number(const record::Spec& spec) {
    return spec.alternative.empty() ? spec.identity.number : spec.identity.number + "/" + spec.alternative;
}

std::string test_sequence(const Facts& facts) {
    return "Press 3 times to " + preload_length(facts) + ". Then, at 20\u00a0±\u00a05\u00a0°C: " + coil_symbol(facts) +
           " on the free spring; " + symbol("F", "1") + " at " + symbol("L", "1") + ", then " + symbol("F", "2") +
           " at " + symbol("L", "2") + ", each reached by closing and not passed.";
}

std::string decision_rule() {
    return "A reading passes when it lies inside its limits by the uncertainty of measuring (k\u00a0=\u00a02).";
}

bool tests_every_piece(const record::Spec& spec) {
    return std::all_of(spec.quantities.begin(), spec.quantities.end(), [](int q) { return q <= kLargestFullyTested; });
}

std::string quantities(const record::Spec& spec) {
    std::string out;
    for (const int quantity : spec.quantities) out += (out.empty() ? "" : ", ") + std::to_string(quantity);
    return out;
}

std::string caution() {
    return "A spring stores energy: guard eyes and hands when pressing, testing or releasing it. It may hold an engine "
           "together: a competent person must check it before use. Local codes and licensed practice govern.";
}

std::string title(const record::Spec& spec) { return spec.title.empty() ? "Compression spring" : spec.title; }

std::string supplementary_title(const record::Spec& spec) {
    return spec.alternative.empty() ? "" : "Alternative " + spec.alternative;
}

}  // namespace seatload::sheet
