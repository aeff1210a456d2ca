// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/size_family_view.hpp>
#include <cli/size_shortfall.hpp>
#include <cli/size_words.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using Align = TextTable::Align;

/// "both" or "all 3".
std::string all_of(const FamilyView& v) {
    return v.members.size() == 2 ? "both" : "all " + std::to_string(v.members.size());
}

std::string listed(const std::vector<std::string>& names) {
    std::string out;
    for (std::size_t i = 0; i < names.size(); ++i)
        out += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    return out;
}

/// At most so many characters, so that a table keeps its width.
std::string clipped(const std::string& words, std::size_t most) {
    const auto characters = code_points(words);
    if (characters.size() <= most) return words;
    std::string out;
    for (std::size_t i = 0; i + 1 < most; ++i) out += characters[i];
    return out + "…";
}

std::string used_words(double margin) { return fixed(100.0 * (1.0 - margin), 0) + " %"; }

/// The ends in one word, for which a table has room.
std::string short_ends(spring::Ends ends) {
    switch (ends) {
        case spring::Ends::closed_ground:
            return "ground";
        case spring::Ends::closed:
            return "closed";
        case spring::Ends::open_ground:
            return "open g.";
        case spring::Ends::open:
            return "open";
    }
    return "";
}

/// The spring of each requirement, a row each; a spring that is not offered has no letter.
std::string springs_table(const FamilyView& v, const std::vector<Offer>& springs) {
    constexpr std::size_t kWidestName = 21;
    TextTable t({Align::left, Align::left, Align::right, Align::right, Align::left, Align::right, Align::right,
                 Align::right, Align::right, Align::right});
    t.add({"", "for", "De", "nt", "ends", "L0", "F1", "F2", "room", "stress"});
    t.add({"", "", "mm", "", "", "mm", "N", "N", "", "used"});
    for (std::size_t i = 0; i < springs.size(); ++i) {
        const Offer& o = springs[i];
        const sizing::Merit& merit = o.alternative.candidate.merit;
        t.add({o.spec.alternative, clipped(v.members[i].name, kWidestName),
               fixed(in_mm(o.evaluation.spring.outside_diameter()), 2), significant(o.evaluation.spring.total_coils, 5),
               short_ends(o.evaluation.spring.ends), fixed(in_mm(o.evaluation.spring.free_length), 1),
               fixed(in_newton(o.evaluation.seated->load), 2), fixed(in_newton(o.evaluation.full_travel->load), 2),
               room_words(merit.tolerance_room), used_words(merit.stress_margin)});
    }
    return t.text(3);
}

std::string pieces_words(const FamilyLot& lot) {
    std::vector<std::string> pieces;
    for (const int count : lot.pieces) pieces.push_back(std::to_string(count));
    return join(pieces, " + ");
}

/// "Wire without waste: 20 + 20 pieces 11.3 m (34 g), ...".
std::string lots_words(const FamilyView& v, const std::vector<Offer>& springs, int width) {
    std::vector<std::string> lots;
    for (const FamilyLot& lot : lots_of(v, springs))
        lots.push_back(pieces_words(lot) + " pieces " + significant(in_mm(lot.wire_length) / 1000.0, 3) + " m (" +
                       significant(in_gram(lot.mass), 3) + " g)");
    return wrapped("   ", "Wire without waste: " + join(lots, ", ") + ".", width, 5);
}

std::string common_wires(const FamilyView& v, int width) {
    const std::size_t count = v.wires_that_serve_all;
    std::string out =
        wrapped("",
                "One wire for " + all_of(v) + ": " + grouped(count) + (count == 1 ? " serves " : " serve ") +
                    all_of(v) + (count > v.wires.size() ? "; the best, by the spring that has least room:" : ":"),
                width, 2);
    int number = 0;
    for (const FamilyWire& wire : v.wires)
        out += '\n' +
               wrapped(std::to_string(++number) + "  ",
                       wire.grade + ", d " + units::shown_wire(wire.diameter) + ": room " +
                           room_words(wire.merit.tolerance_room) + " or more, stress used " +
                           used_words(wire.merit.stress_margin) + " or less",
                       width, 3) +
               springs_table(v, wire.springs) + lots_words(v, wire.springs, width);
    return out;
}

std::string near_wire(const FamilyView& v, int width) {
    const std::string start = "One wire for " + all_of(v) + ": none. ";
    if (!v.near) return wrapped("", start + "No wire that " + all_of(v) + " allow serves even one of them.", width, 2);
    std::vector<std::string> served;
    for (std::size_t i = 0; i < v.members.size(); ++i)
        if (v.near->springs[i]) served.push_back(v.members[i].name);
    std::string out = wrapped("",
                              start + "The closest is " + v.near->grade + ", d " + units::shown_wire(v.near->diameter) +
                                  ", of which there are springs for: " + listed(served) + ".",
                              width, 2);
    for (const sizing::WireLack& lack : v.near->lacks)
        out += '\n' + wrapped("", "With it nothing fits: " + v.members[lack.member].name + '.', width, 2) +
               shortfall_text(v.members[lack.member].run.requirement, lack.why, width);
    return out;
}

std::string apart_words(const FamilyView& v) {
    switch (v.shared.apart) {
        case sizing::Apart::hand:
            return "they ask for different hands of coiling";
        case sizing::Apart::wire:
            return "they allow no wire in common";
        case sizing::Apart::ends:
            return "they allow no ends in common";
        case sizing::Apart::mean_diameter:
            return "no wire has a mean diameter that lies on the grid of each";
        case sizing::Apart::total_coils:
            return "no number of coils lies on the grid of each";
        case sizing::Apart::free_length:
            return "no free length lies on the grid of each";
        case sizing::Apart::nothing:
            break;
    }
    return "";
}

/// A limit with the height a load is asked for at, which tells one requirement's loads from another's.
std::string limit_at_its_height(const check::Rule& rule, const demand::Requirement& requirement) {
    std::string words = limit_words(rule, requirement);
    const bool at_seat = rule.id.starts_with("seated_load");
    if (!at_seat && !rule.id.starts_with("full_travel_load")) return words;
    const Length height = at_seat ? requirement.space.seated_height : requirement.space.full_travel_height;
    return words + " at " + significant(in_mm(height), 5) + " mm";
}

std::string conflict(const FamilyView& v, int width) {
    std::string out;
    for (std::size_t i = 0; i < v.members.size(); ++i) {
        std::vector<std::string> limits;
        for (const sizing::MemberRule& limit : v.conflict)
            if (limit.member == i)
                limits.push_back(limit_at_its_height(check::rules()[limit.rule], v.members[i].run.requirement));
        if (!limits.empty())
            out += wrapped("  - ", capitalized(v.members[i].name) + ": " + join(limits, "; ") + '.', width, 4);
    }
    return out;
}

std::string no_shared_spring(const FamilyView& v, int width) {
    const std::string start = "One spring for " + all_of(v) + ": none, ";
    if (v.shared.apart != sizing::Apart::nothing) return wrapped("", start + "since " + apart_words(v) + '.', width, 2);
    const std::string counted =
        start + "of " + grouped(v.shared.looked_at) + " combinations that lie on the grids of " + all_of(v) + ".";
    if (v.conflict.empty()) return wrapped("", counted + " No few limits alone tell why.", width, 2);
    return wrapped("",
                   counted + (v.conflict.size() == 1 ? " None keeps this limit, whatever the others:"
                                                     : " These limits contradict each other:"),
                   width, 2) +
           conflict(v, width);
}

std::string shared_spring(const FamilyView& v, int width) {
    if (!v.shared_spring) return no_shared_spring(v, width);
    const Offer& front = v.shared_spring->springs.front();
    const unsigned long long fit = v.shared.fit;
    return wrapped("",
                   "One spring for " + all_of(v) + ": " + grouped(fit) + (fit == 1 ? " fits, of " : " fit, of ") +
                       grouped(v.shared.looked_at) + " combinations that lie on the grids of " + all_of(v) +
                       "; the best is of " + v.shared_spring->grade + ", d " +
                       units::shown_wire(v.shared_spring->diameter) + ", with " +
                       std::string(spring::word(front.evaluation.spring.ends)) + " ends:",
                   width, 2) +
           springs_table(v, v.shared_spring->springs) +
           wrapped("   ", "Made once, it must meet the sheets of " + all_of(v) + ".", width, 5);
}

std::string unserved(const FamilyView& v, int width) {
    std::vector<std::string> names;
    for (const FamilyMember& member : v.members)
        if (member.run.offers.empty()) names.push_back(member.name);
    return wrapped("",
                   "No wire and no spring serves " + all_of(v) + ", since nothing at all fits: " + listed(names) + ".",
                   width, 2);
}

}  // namespace

std::vector<FamilyLot> lots_of(const FamilyView& view, const std::vector<Offer>& springs) {
    std::size_t count = view.members.front().run.requirement.quantities.size();
    for (const FamilyMember& member : view.members) count = std::min(count, member.run.requirement.quantities.size());
    std::vector<FamilyLot> lots;
    for (std::size_t k = 0; k < std::max<std::size_t>(1, count); ++k) {
        FamilyLot lot{{}, 0.0 * mm, 0.0 * gram};
        for (std::size_t i = 0; i < springs.size(); ++i) {
            const int pieces = count == 0 ? 1 : view.members[i].run.requirement.quantities[k];
            lot.pieces.push_back(pieces);
            lot.wire_length += static_cast<double>(pieces) * springs[i].evaluation.wire_length;
            lot.mass += static_cast<double>(pieces) * springs[i].evaluation.mass;
        }
        lots.push_back(std::move(lot));
    }
    return lots;
}

std::string family_text(const FamilyView& v, int width) {
    if (!v.all_served()) return unserved(v, width);
    return (v.wires.empty() ? near_wire(v, width) : common_wires(v, width)) + '\n' + shared_spring(v, width);
}

}  // namespace seatload::cli
