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
    150;                              ///< lot size up to which every piece is load-tested (common practice, no source)
constexpr double kSolidShare = 0.56;  ///< of Rm, permissible at solid length (EN 13906-1 cl. 10, from memory)

}  // namespace

std::string symbol(std::string_view letter, std::string_view index) { return with_sub(letter, index); }

std::string wire_name(const wire::Grade& grade) { return grade.standard + ", " + grade.designation; }

std::string wire_diameter(const Facts& facts) {
    const std::string d = wire_number(facts.spec.spring.wire_diameter);
    if (!facts.wire_tolerance) return d + " mm";
    const std::string tolerance = "± " + number(facts.wire_tolerance->value);
    // Inside the brackets of an adjustable diameter it is a reference as it is.
    const bool in_brackets = facts.wire_tolerance->is_firm() || facts.wire_is_adjustable();
    return d + " " + (in_brackets ? tolerance : reference(tolerance)) + " mm";
}

std::string coil_diameter(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const std::string nominal = number(facts.spec.bore_rules ? s.outside_diameter() : s.inside_diameter());
    return facts.diameter_tolerance ? nominal + " ± " + number(facts.diameter_tolerance->value) : nominal;
}

std::string coil_symbol(const Facts& facts) { return symbol("D", facts.spec.bore_rules ? "e" : "i"); }

std::string load_grades(const record::Spec& spec) {
    const auto words = [](const std::optional<int>& grade) {
        return grade ? "grade " + std::to_string(*grade) : std::string("finer than grade 1");
    };
    const std::string first = words(spec.seated.grade);
    const std::string second = words(spec.full_travel.grade);
    if (first == second) return "EN 15800 " + first;
    return symbol("F", "1") + " " + first + "; " + symbol("F", "2") + " " + second + " of EN 15800";
}

std::string duty(const demand::Duty& duty) {
    if (!duty.cycles) return "static";
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

std::string adjustable_quantities(const Facts& facts) {
    const std::string coils = "coils " + symbol("n", "t");
    std::string ways;
    if (facts.wire_is_adjustable()) ways = coils + " and wire diameter d";
    if (facts.diameter_is_adjustable()) {
        if (!ways.empty()) ways = "either " + ways + ", or ";
        ways += coils + " and coil diameter " + coil_symbol(facts);
    }
    return "free length " + symbol("L", "0") + ", and " + ways;
}

std::string preload_length(const Facts& facts) {
    const bool bears_solid = facts.values.at_solid.share_of_strength <= kSolidShare;
    return bears_solid ? "solid length" : "length " + symbol("L", "2");
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
