// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <limits>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sizing/best_at.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>
#include <seatload/wire/unknown_tolerance.hpp>

#include <cli/outlook_view.hpp>
#include <cli/size_shortfall.hpp>
#include <cli/size_tight.hpp>
#include <cli/size_view.hpp>
#include <cli/size_words.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using units::shown;
using Align = TextTable::Align;

std::string_view seats_words(demand::Seats seats) {
    switch (seats) {
        case demand::Seats::fixed:
            return "both ends held flat";
        case demand::Seats::pivots:
            return "one end tilts";
        case demand::Seats::both_pivot:
            return "both ends tilt";
        case demand::Seats::slides:
            return "one seat can slide sideways";
        case demand::Seats::free_end:
            return "one end free";
        case demand::Seats::guided:
            return "guided along its length";
    }
    return "";
}

std::string band_words(const demand::LoadBand& band, const demand::Surroundings& surroundings) {
    std::vector<std::string> parts;
    if (band.at_least)
        parts.push_back("at least " + shown(*band.at_least, 2) + " at " + shown(surroundings.temperature) +
                        " after load loss");
    if (band.at_most) parts.push_back("at most " + shown(*band.at_most, 2) + " cold and new");
    return parts.empty() ? "not limited" : join(parts, ", ");
}

std::string title(const SizeView& v) {
    std::vector<std::string> names;
    for (const std::string& name : {v.requirement.identity.engine, v.requirement.identity.position})
        if (!name.empty()) names.push_back(name);
    return names.empty() ? v.file : join(names, ", ") + " (" + v.file + ")";
}

std::string space_words(const demand::Space& space) {
    std::string words;
    if (space.bore) words += "bore " + shown(space.bore->smallest, 2) + ", ";
    if (space.rod) words += "rod " + shown(space.rod->largest, 2) + ", ";
    words +=
        "seated at " + shown(space.seated_height, 2) + ", full travel at " + shown(space.full_travel_height, 2) + ", ";
    return words + std::string(seats_words(space.seats));
}

std::string asked(const SizeView& v, int width) {
    const demand::Requirement& r = v.requirement;
    const auto line = [&](const std::string& words) { return wrapped("  ", words + ".", width, 4); };
    return wrapped("", title(v), width, 2) + line("Space: " + space_words(r.space)) +
           line("Seated load: " + band_words(r.seated_load, r.surroundings)) +
           line("Full-travel load: " + band_words(r.full_travel_load, r.surroundings)) +
           (r.plunger ? line("Both loads are worked out from the plunger: \"seatload budget " + v.file + "\" tells how")
                      : "") +
           line("Limits: school " + std::string(spring::word(r.limits.school)) +
                (r.maker.empty() ? "" : ", maker \"" + r.maker + '"'));
}

std::string counted(const SizeView& v, double seconds, int width) {
    return wrapped("",
                   grouped(v.census.looked_at) +
                       " combinations of wire, mean diameter, coils, ends and free length looked at; " +
                       grouped(v.census.fit) + (v.census.fit == 1 ? " fits (" : " fit (") + fixed(seconds, 2) + " s).",
                   width, 2);
}

std::string rejections(const SizeView& v, int width) {
    const bool counts_all = v.census.counts_all_rejections();
    TextTable t(counts_all ? std::vector{Align::left, Align::right, Align::right}
                           : std::vector{Align::left, Align::right});
    std::vector<std::string> head{"What rejects the rest", "rejects", "only it rejects"};
    if (!counts_all) head.erase(head.begin() + 1);
    t.add(head);
    const auto rules = check::rules();
    bool any = false;
    for (std::size_t i = 0; i < rules.size(); ++i) {
        const sizing::Rejections& r = v.census.rejections[i];
        if (r.all.value_or(r.alone) == 0) continue;
        std::vector<std::string> row{std::string(rules[i].name)};
        if (counts_all) row.push_back(grouped(*r.all));
        row.push_back(grouped(r.alone));
        t.add(row);
        any = true;
    }
    const std::string fine =
        counts_all ? "" : wrapped("", "How many each rejects in all is not counted on so fine a grid.", width, 2);
    return (any ? t.text(0) : std::string{}) + fine;
}

/// Grades looked at whose service limit lies below the temperature: told by name, so that an empty list has a reason.
std::string heat(const SizeView& v, int width) {
    if (!v.requirement.limits.heed_service_limit) return {};
    const Celsius temperature = v.requirement.surroundings.temperature;
    std::vector<std::string> out;
    const auto& left_out = v.space.left_out;
    for (const wire::Grade& grade : v.space.grades) {
        const bool is_left_out =
            std::any_of(left_out.begin(), left_out.end(), [&](const auto& each) { return each.grade == grade.id; });
        if (grade.service_limit < temperature && !is_left_out)
            out.push_back(grade.id + " (" + shown(grade.service_limit) + ")");
    }
    if (out.empty()) return {};
    return wrapped("", "Out at " + shown(temperature) + " by their service limit: " + join(out, ", ") + ".", width, 2);
}

/// Grades left out, one paragraph a reason.
std::string left_out(const SizeView& v, int width) {
    std::vector<std::string> reasons;
    for (const sizing::GradeLeftOut& grade : v.space.left_out)
        if (std::find(reasons.begin(), reasons.end(), grade.reason) == reasons.end()) reasons.push_back(grade.reason);
    std::string out;
    for (const std::string& reason : reasons) {
        std::vector<std::string> names;
        for (const sizing::GradeLeftOut& grade : v.space.left_out)
            if (grade.reason == reason) names.push_back(grade.grade);
        out += wrapped("", "Left out (" + reason + "): " + join(names, ", ") + ".", width, 2);
    }
    return out;
}

/// The limits that alone keep springs out, those that keep out most first.
std::string nearest_limits(const SizeView& v) {
    constexpr std::size_t kMost = 3;
    std::vector<std::pair<unsigned long long, std::string>> alone;
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (const auto count = v.census.rejections[i].alone; count != 0)
            alone.emplace_back(count, std::string(rules[i].name));
    std::stable_sort(alone.begin(), alone.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<std::string> words;
    for (std::size_t i = 0; i < std::min(kMost, alone.size()); ++i)
        words.push_back("\"" + alone[i].second + "\" (" + grouped(alone[i].first) + ")");
    return join(words, ", ");
}

/// Why nothing fits, as far as one reason stands for all, and what to look at first.
std::string nothing_fits(const SizeView& v, int width) {
    const auto& wires = v.space.wires;
    if (wires.empty()) return wrapped("", "No spring fits: no wire is left to look at.", width, 2);
    const bool too_hot =
        v.requirement.limits.heed_service_limit && std::all_of(wires.begin(), wires.end(), [&](const auto& wire) {
            return v.space.grades[wire.grade].service_limit < v.requirement.surroundings.temperature;
        });
    if (too_hot)
        return wrapped("",
                       "No spring fits: every wire allowed is past its service limit at " +
                           shown(v.requirement.surroundings.temperature) +
                           ". Allow a wire that stands the heat; \"seatload wire\" lists the limits.",
                       width, 2);
    const std::string nearest = nearest_limits(v);
    if (nearest.empty())
        return wrapped("", "No spring fits, and none would if any one limit were lifted: two or more must give way.",
                       width, 2);
    return wrapped("", "No spring fits. Some would if one limit alone gave way; look at these first: " + nearest + ".",
                   width, 2);
}

/// What a seat that cannot slide would let in: the right loads may well be at hand, in springs that buckle.
std::string held_seat(const SizeView& v, int width) {
    if (!v.held_seat) return {};
    const std::string buckle = v.held_seat->all_buckle
                                   ? "A softer, longer spring has the right loads, but buckles on a seat that slides: "
                                   : "A spring that has the right loads buckles or leans on a seat that slides: ";
    const unsigned long long fit = v.held_seat->fit;
    return wrapped("",
                   buckle + "with the far seat held from sliding (seats = \"fixed\") " + grouped(fit) +
                       (fit == 1 ? " spring" : " springs") +
                       " would fit. Hold the seat, guide the spring along its length, or give it less height to fill.",
                   width, 2);
}

/// In whole tenths, as rooms are compared.
/// The finest load grade of EN 15800 the two loads need.
std::string load_grade_words(const record::Spec& spec) {
    if (!spec.seated.grade || !spec.full_travel.grade) return "loads tighter than EN 15800 grade 1, to be agreed";
    return "loads to EN 15800 grade " + std::to_string(std::min(*spec.seated.grade, *spec.full_travel.grade));
}

std::string strength_words(const wire::StrengthAt& strength) {
    if (strength.evidence == wire::Evidence::memory)
        return "; Rm from memory, to be confirmed by the wire's certificate";
    if (strength.evidence == wire::Evidence::estimate)
        return "; Rm an estimate, to be confirmed by the wire's certificate";
    return {};
}

/// What the sheet asks of the end tips, when that is more than is usual.
std::string tips_words(const check::Evaluation& e) {
    return e.tips && e.tips->is_closer() ? "end tips " + check::tips_apart(*e.tips) + " apart; " : "";
}

/// The least wire cost of the springs offered; nothing when none is known.
std::optional<double> least_cost(const SizeView& v) {
    double least = std::numeric_limits<double>::infinity();
    for (const Offer& o : v.offers) least = std::min(least, o.alternative.candidate.merit.cost);
    return std::isfinite(least) ? std::optional(least) : std::nullopt;
}

std::string cost_words(double cost, const std::optional<double>& least) {
    return least && std::isfinite(cost) ? fixed(cost / *least, 1) : "-";
}

/// "tolerance room, then stress margin, then cost".
std::string order_words(const check::DemandNumbers& demand) {
    std::vector<std::string> words;
    for (const demand::Criterion criterion : demand.preference.order)
        if (criterion != demand::Criterion::release || demand.release_counts)
            words.emplace_back(sizing::word(criterion));
    return join(words, ", then ");
}

/// The order, with what comes before all criteria (the class of sizing::Standing).
std::string ranked_words(const check::DemandNumbers& demand) {
    const std::string few = "with a room under " + fixed(sizing::kFewKeepTenths / 10.0, 1);
    if (!demand.slides) return "Ranked by " + order_words(demand) + ", those " + few + " last";
    return "Ranked: first springs half a turn over (nt such as 8.5 leaves the wire's two ends opposite, and it hardly "
           "leans), then others, last those that lean further than their room or are left " +
           few + "; within each by " + order_words(demand);
}

/// How loads tighter than grade 1 and a share kept at grade 1 go together.
std::string tight_loads_words(const SizeView& v) {
    const bool any = std::any_of(v.offers.begin(), v.offers.end(), [](const Offer& o) {
        return o.outlook && !(o.spec.seated.grade && o.spec.full_travel.grade);
    });
    return any ? " Loads tighter than grade 1: on one side of a load the demand leaves less than that grade's whole "
                 "tolerance, which few springs made to it use up; the shares below count those that do."
               : "";
}

std::string legend(const SizeView& v, int width) {
    std::string ranked =
        wrapped("",
                ranked_words(v.space.demand) + ". They are the spread of the " + grouped(v.census.front.size()) +
                    " that no fitting spring betters." +
                    (v.explains ? " \"Of all\" is said of all that fit, \"of these\" of those offered." : ""),
                width, 2);
    if (!v.explains) return ranked;
    return wrapped("",
                   "room: how many times what the maker's tolerances (EN 15800 grade " +
                       std::to_string(v.requirement.load_grade) +
                       ", from memory) do to the spring fits before the nearest limit: of loads, bore, rod, solid "
                       "length, stress, buckling, lean; in whole tenths. cost: of the wire, over the cheapest of these "
                       "(-: not known). Loads F1 seated and F2 at full travel are "
                       "cold and new." +
                       tight_loads_words(v),
                   width, 2) +
           ranked;
}

/// Said once of all whose wire it is.
std::string unknown_tolerances(const SizeView& v, int width) {
    std::vector<std::string> letters;
    bool are_shares_told = false;
    for (const Offer& o : v.offers) {
        const auto& grades = v.space.grades;
        const auto grade = std::find_if(grades.begin(), grades.end(),
                                        [&](const wire::Grade& each) { return each.id == o.spec.wire_grade; });
        if (grade == grades.end() || wire::diameter_tolerance_at(*grade, o.spec.spring.wire_diameter)) continue;
        letters.push_back(o.spec.alternative);
        are_shares_told = are_shares_told || o.outlook;
    }
    if (letters.empty()) return {};
    const auto flattered = are_shares_told ? wire::Flattered::solid_length_and_shares : wire::Flattered::solid_length;
    return wrapped("", join(letters, ", ") + ": " + wire::unknown_tolerance_words(flattered) + ".", width, 3);
}

std::string offers(const SizeView& v, int width) {
    TextTable t({Align::left, Align::left, Align::right, Align::right, Align::right, Align::right, Align::right,
                 Align::right, Align::right, Align::right, Align::right});
    t.add({"", "wire", "d", "De", "nt", "L0", "F1", "F2", "room", "stress", "cost"});
    t.add({"", "", "mm", "mm", "", "mm", "N", "N", "", "used", ""});
    const auto least = least_cost(v);
    for (const Offer& o : v.offers) {
        const auto& s = o.evaluation.spring;
        std::string wire = units::shown_wire(s.wire_diameter);
        wire.erase(wire.size() - 3);
        t.add({o.spec.alternative, o.spec.wire_grade, wire, fixed(in_mm(s.outside_diameter()), 2),
               significant(s.total_coils, 5), fixed(in_mm(s.free_length), 1),
               fixed(in_newton(o.evaluation.seated->load), 2), fixed(in_newton(o.evaluation.full_travel->load), 2),
               room_words(o.alternative.candidate.merit.tolerance_room),
               fixed(100.0 * (1.0 - o.alternative.candidate.merit.stress_margin), 0) + " %",
               cost_words(o.alternative.candidate.merit.cost, least)});
    }
    std::string out = t.text(0);
    for (const Offer& o : v.offers)
        out += wrapped("",
                       o.spec.alternative + ": " + o.spec.why + "; " + std::string(spring::word(o.spec.spring.ends)) +
                           " ends; " + tips_words(o.evaluation) + load_grade_words(o.spec) +
                           strength_words(o.evaluation.strength) + ".",
                       width, 3);
    return out + unknown_tolerances(v, width) + legend(v, width);
}

/// What tolerances do to each of them.
std::string outlooks(const SizeView& v, int width) {
    std::vector<NamedOutlook> springs;
    for (const Offer& o : v.offers)
        if (o.outlook) springs.push_back({o.spec.alternative, *o.outlook});
    return springs.empty() ? "" : '\n' + outlooks_text(springs, width, v.explains);
}

}  // namespace

std::string size_text(const SizeView& v, double seconds, int width) {
    std::string out = asked(v, width) + '\n' + counted(v, seconds, width) + '\n' + rejections(v, width) +
                      heat(v, width) + left_out(v, width);
    if (v.offers.empty())
        return out + '\n' + nothing_fits(v, width) + held_seat(v, width) +
               (v.shortfall ? shortfall_text(v.requirement, *v.shortfall, width) : "");
    return out + '\n' + offers(v, width) + outlooks(v, width) + (v.tight ? tight_text(*v.tight, width) : "");
}

}  // namespace seatload::cli
