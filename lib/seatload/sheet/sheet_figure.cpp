// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_figure.hpp>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {

SpringFigure sheet_figure(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const Figures figures = facts.figures();
    const auto shown_as = [](bool adjustable, const std::string& words) {
        return adjustable ? reference(words) : words;
    };
    const auto length = [&](std::string_view index, const Amount& amount) {
        return symbol("L", index) + " = " + first(amount);
    };
    SpringFigure out{spec.spring, in_mm(spec.seated.length), in_mm(spec.full_travel.length), !spec.bore_rules, {}};
    out.words.wire_diameter =
        shown_as(facts.wire_is_adjustable(), "Ø" + first(figures.wire(spec.spring.wire_diameter)));
    out.words.coil_diameter = shown_as(facts.diameter_is_adjustable(), "Ø" + first(coil_diameter(facts)));
    out.words.free_length =
        shown_as(facts.may_adjust(record::Adjustable::free_length), length("0", drawn_free_length(facts)));
    out.words.seated = length("1", figures.length(spec.seated.length));
    out.words.full_travel = length("2", figures.length(spec.full_travel.length));
    out.words.seated_plate = symbol("L", "1");
    out.words.full_travel_plate = symbol("L", "2");
    // Once more where it can be seen; in brackets, as it is given elsewhere.
    out.words.detail_wire = reference("Ø" + first(figures.wire(spec.spring.wire_diameter)));
    if (!spring::are_ground(spec.spring.ends)) return out;
    out.words.squareness = symbol("e", "1");
    out.words.parallelism = symbol("e", "2");
    return out;
}

std::string figure_heading(const Facts& facts, Scale scale) {
    return facts.spec.spring.hand == spring::Hand::right ? facts.say("figure.right", {{"scale", scale.text()}})
                                                         : facts.say("figure.left", {{"scale", scale.text()}});
}

std::string short_figure_heading(const Facts& facts) {
    return facts.say(facts.spec.spring.hand == spring::Hand::right ? "figure.right_alone" : "figure.left_alone");
}

}  // namespace seatload::sheet
