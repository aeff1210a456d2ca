// SPDX-License-Identifier: MIT
#include <seatload/sheet/terms.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::sheet {
namespace {

/// English words of built-in grades that papers in other languages say otherwise, the longer before those they hold.
constexpr std::string_view kWireWords[]{
    "wire_words.music_spring_quality_wire",
    "wire_words.hard_drawn_spring_wire",
    "wire_words.oil_tempered_MB_wire",
    "wire_words.carbon_valve_spring_quality",
    "wire_words.valve_spring_quality",
    "wire_words.spring_wire",
    "wire_words.nickel_alloy",
    "wire_words.spring_temper",
    "wire_words.phosphor_bronze",
    "wire_words.hardest_drawn_conditions",
    "wire_words.as_drawn",
    "wire_words.drawn",
    "wire_words.aged",
    "wire_words.condition",
    "wire_words.Class",
    "wire_words.Type",
};

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// Whole words put in place of others, which are told with underscores for blanks and hyphens.
std::string with_words_replaced(const std::string& words, const std::string& old, const std::string& own) {
    std::string joined = words;
    for (char& c : joined)
        if (c == ' ' || c == '-') c = '_';
    std::string out;
    std::size_t done = 0;
    for (std::size_t at = joined.find(old); at != std::string::npos; at = joined.find(old, at + 1)) {
        const std::size_t end = at + old.size();
        if (at < done || (at > 0 && is_letter(joined[at - 1])) || (end < joined.size() && is_letter(joined[end])))
            continue;
        out += words.substr(done, at - done) + own;
        done = end;
    }
    return out + words.substr(done);
}

/// The deviations of a toleranced number in brackets: "0.800 (± 0.013)".
std::string bracketed_deviation(const std::string& words) {
    const auto space = words.find(' ');
    return space == std::string::npos ? words : words.substr(0, space + 1) + reference(words.substr(space + 1));
}

std::string grade_words(const Facts& facts, const std::optional<int>& grade) {
    return grade ? facts.say("grade.one", {{"grade", std::to_string(*grade)}}) : facts.say("grade.one_finer");
}

}  // namespace

std::string listed(const std::vector<std::string>& parts, const Wording& words) {
    std::string out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == 0)
            out = parts[i];
        else if (i + 1 < parts.size())
            out = words.say("list.more", {{"rest", out}, {"next", parts[i]}});
        else
            out = words.say("list.last", {{"rest", out}, {"last", parts[i]}});
    }
    return out;
}

std::string symbol(std::string_view letter, std::string_view index) { return with_sub(letter, index); }

std::string wire_words(const Facts& facts, std::string words) {
    if (facts.spec.own_grade) return words;
    for (const std::string_view key : kWireWords)
        words = with_words_replaced(words, std::string(key.substr(key.find('.') + 1)), facts.say(key));
    return words;
}

std::string wire_name(const Facts& facts) {
    return facts.grade.standard + ", " + wire_words(facts, facts.grade.designation);
}

Amount wire_diameter(const Facts& facts) {
    const Length d = facts.spec.spring.wire_diameter;
    if (!facts.wire_tolerance) return facts.figures().wire(d);
    Amount out = facts.figures().toleranced(d, facts.wire_tolerance->value, 2);
    // Inside the brackets of an adjustable diameter it is a reference as it is.
    if (facts.wire_tolerance->is_firm() || facts.wire_is_adjustable()) return out;
    out.metric = bracketed_deviation(out.metric);
    out.inch = bracketed_deviation(out.inch);
    return out;
}

Amount coil_diameter(const Facts& facts, int least_decimals) {
    const spring::Spring& s = facts.spec.spring;
    const Length nominal = facts.spec.bore_rules ? s.outside_diameter() : s.inside_diameter();
    return facts.diameter_tolerance
               ? facts.figures().toleranced(nominal, facts.diameter_tolerance->value, least_decimals)
               : facts.figures().length(nominal, {3, least_decimals});
}

std::string coil_symbol(const Facts& facts) { return symbol("D", facts.spec.bore_rules ? "e" : "i"); }

std::string coil_name(const Facts& facts) {
    return facts.spec.bore_rules ? facts.say("coil.outside") : facts.say("coil.inside");
}

std::string load_grades(const Facts& facts) {
    const auto& first = facts.spec.seated.grade;
    const auto& second = facts.spec.full_travel.grade;
    if (first == second && first) return facts.say("grade.both", {{"grade", std::to_string(*first)}});
    const std::string words =
        first == second
            ? facts.say("grade.both_finer")
            : facts.say("grade.each", {{"first", grade_words(facts, first)}, {"second", grade_words(facts, second)}});
    return first && second ? words
                           : facts.say("grade.with_maker", {{"grades", words}, {"agreement", facts.agreement()}});
}

std::string duty(const Facts& facts) {
    const demand::Duty& duty = facts.spec.duty;
    if (!duty.cycles) return facts.say("service.few_cycles", {{"count", grouped(10000)}});
    const std::string count = grouped(static_cast<unsigned long long>(*duty.cycles));
    if (!duty.is_dynamic()) return facts.say("service.static_cycles", {{"count", count}});
    if (!duty.frequency) return facts.say("service.cycles", {{"count", count}});
    return facts.say("service.cycles_at",
                     {{"count", count}, {"frequency", facts.figures().number(in_hertz(*duty.frequency), {2})}});
}

std::string seats(const Facts& facts) {
    switch (facts.spec.space.seats) {
        case demand::Seats::fixed:
            return facts.say("seats.fixed");
        case demand::Seats::pivots:
            return facts.say("seats.pivots");
        case demand::Seats::both_pivot:
            return facts.say("seats.both_pivot");
        case demand::Seats::slides:
            return facts.say("seats.slides");
        case demand::Seats::free_end:
            return facts.say("seats.free_end");
        case demand::Seats::guided:
            return facts.spec.bore_rules ? facts.say("seats.in_bore") : facts.say("seats.on_rod");
    }
    return {};
}

std::string ends(const Facts& facts) {
    switch (facts.spec.spring.ends) {
        case spring::Ends::open:
            return facts.say("ends.open");
        case spring::Ends::open_ground:
            return facts.say("ends.open_ground");
        case spring::Ends::closed:
            return facts.say("ends.closed");
        case spring::Ends::closed_ground:
            return facts.say("ends.closed_ground");
    }
    return {};
}

std::string hand(const Facts& facts) {
    return facts.spec.spring.hand == spring::Hand::right ? facts.say("coil.right") : facts.say("coil.left");
}

std::string finish(const Facts& facts) {
    return facts.spec.finish.empty() ? reference(facts.say("process.no_finish")) : facts.spec.finish;
}

std::string drawing_number(const record::Spec& spec) {
    return spec.alternative.empty() ? spec.identity.number : spec.identity.number + "/" + spec.alternative;
}

std::string certificate_type(const record::Spec& spec) {
    // Results of this very lot, signed by the mill itself: usual in the trade (common practice, no source).
    switch (spec.certificate.value_or(demand::Certificate::inspection)) {
        case demand::Certificate::test_report:
            return "2.2";
        case demand::Certificate::inspection_by_third:
            return "3.2";
        default:
            return "3.1";
    }
}

std::string test_sequence(const Facts& facts) {
    return (facts.bears_solid() ? facts.say("inspection.press_solid") : facts.say("inspection.press_to_L2")) + " " +
           facts.say("inspection.sequence",
                     {{"temperature", facts.figures().temperature({20.0}, 5.0)}, {"diameter", coil_symbol(facts)}});
}

bool tests_every_piece(const record::Spec& spec) {
    return std::all_of(spec.quantities.begin(), spec.quantities.end(), [](int q) { return q <= kLargestFullyTested; });
}

std::string tip_degrees(const Facts& facts, double turns) { return facts.figures().number(360.0 * turns, {1}); }

std::string tips_apart(const Facts& facts) {
    const auto turns = facts.half_turn_tolerance();
    return turns ? "180° ± " + tip_degrees(facts, *turns) + "°" : reference(facts.say("coil.tips_anyhow"));
}

std::string tips_apart_words(const Facts& facts) {
    const check::Tips& tips = *facts.values.tips;
    const std::string slack = tip_degrees(facts, tips.ordered);
    return tips.is_closer() ? facts.say("coil.tips_closer", {{"slack", slack}, {"agreement", facts.agreement()}})
                            : facts.say("coil.tips_delivered", {{"slack", slack}});
}

namespace {

/// What is measured depends on the ends: a ground tip runs out, a cut one does not (common practice, no source).
std::string inspected_tips(const Facts& facts) {
    if (!facts.half_turn_tolerance()) return {};
    return " " + facts.say(spring::are_ground(facts.spec.spring.ends) ? "inspection.tips_ground" : "inspection.tips");
}

}  // namespace

std::string inspected_pieces(const Facts& facts) {
    const std::string loads = tests_every_piece(facts.spec)
                                  ? facts.say("inspection.every_piece")
                                  : facts.say("inspection.by_sampling", {{"agreement", facts.agreement()}});
    const bool is_bound = longest_free_length(facts).has_value();
    const std::string free_length = symbol("L", "0");
    std::string lengths = coil_symbol(facts);
    if (facts.diameter_is_adjustable()) {
        if (is_bound) lengths = facts.say("list.last", {{"rest", lengths}, {"last", free_length}});
        return loads + " " + facts.say("inspection.bound", {{"diameters", lengths}}) + inspected_tips(facts);
    }
    if (is_bound) lengths = facts.say("list.more", {{"rest", lengths}, {"next", free_length}});
    return loads + " " + facts.say("inspection.dimensions", {{"diameters", lengths}}) + inspected_tips(facts);
}

std::string quantities(const record::Spec& spec) {
    std::string out;
    for (const int quantity : spec.quantities) out += (out.empty() ? "" : ", ") + std::to_string(quantity);
    return out;
}

std::string title(const record::Spec& spec, const Wording& words) {
    if (spec.title.empty()) return words.say("document.untitled");
    // The title that is given when the user gives none is said in the language of the paper.
    if (spec.title == record::usual_title(spec.identity))
        return words.say("document.usual_title", {{"position", spec.identity.position}});
    return spec.title;
}

std::string supplementary_title(const record::Spec& spec, const Wording& words) {
    return spec.alternative.empty() ? "" : words.say("document.alternative", {{"letter", spec.alternative}});
}

}  // namespace seatload::sheet
