// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <numbers>

#include <seatload/core/assert.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/inspection_limits.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// A value the maker may alter or must keep, by the spec.
Named kept_or_adjusted(bool adjustable, std::string name, const std::string& value) {
    return adjustable ? Named{Status::adjustable, std::move(name), reference(value)}
                      : Named{Status::required, std::move(name), value};
}

void append(Entries& to, Entries from) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

Paragraph required_paragraph(const std::string& words) { return {words, Status::required}; }

/// Electroplated hard wire can crack from hydrogen (common practice, no source).
bool plating_embrittles(const Facts& facts) {
    const bool hard =
        facts.grade.family == wire::Family::cold_drawn_carbon || facts.grade.family == wire::Family::oil_tempered;
    const std::string finish = lower(facts.spec.finish);
    const auto mentions = [&](std::string_view word) { return finish.find(word) != std::string::npos; };
    // Word stems of the languages papers are written in.
    return hard && (mentions("zinc") || mentions("zink") || mentions("plat") || mentions("galvan") ||
                    mentions("cadmi") || mentions("kadmi") || mentions("nickel") || mentions("nichel"));
}

/// Squareness and parallelism are promised by EN 15800 up to here only (from memory).
constexpr double kLargestSquareIndex = 12.0;
constexpr double kLargestSquareSlenderness = 5.0;

constexpr double kWarm = 80.0;       ///< deg C from which a loss of load must be spoken of (common practice, no source)
constexpr double kBakeFrom = 190.0;  ///< deg C, usual against hydrogen embrittlement (from memory)
constexpr double kBakeTo = 220.0;

/// The limit, and in brackets the grade it corresponds to: the standard's shares are from memory.
std::string square_limit(const Facts& facts, Length limit) {
    return facts.say("coil.square_limit",
                     {{"limit", with_unit(end_limit(facts, limit))},
                      {"grade", facts.say("grade.one", {{"grade", std::to_string(facts.spec.squareness_grade)}})}});
}

Entries ground_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    Entries out;
    out.push_back(Named{Status::required, facts.say("coil.squareness"), square_limit(facts, facts.squareness)});
    out.push_back(Named{Status::required, facts.say("coil.parallelism"), square_limit(facts, facts.parallelism)});
    if (s.index() > kLargestSquareIndex)
        out.push_back(Paragraph{facts.say("coil.square_so_wide", {{"agreement", facts.agreement()}})});
    else if (s.free_length / s.mean_diameter > kLargestSquareSlenderness)
        out.push_back(Paragraph{facts.say("coil.square_so_slim", {{"agreement", facts.agreement()}})});
    if (!spring::are_closed(s.ends)) {
        out.push_back(Named{Status::adjustable, facts.say("coil.tip"), reference(facts.say("coil.tip_as_ground"))});
    } else {
        const std::string tip = with_unit(facts.figures().length(0.25 * s.wire_diameter, {2}));
        out.push_back(Named{Status::reference, facts.say("coil.arc_and_tip"),
                            facts.say("coil.arc_and_tip_values", {{"tip", tip}})});
    }
    return out;
}

Entries end_entries(const Facts& facts) {
    Entries out;
    out.push_back(Named{Status::required, facts.say("coil.ends"), ends(facts)});
    // Only a ground face has an edge inside and outside; other ends have the burr of the cut (common practice, no
    // source).
    out.push_back(Named{Status::required, facts.say("coil.deburred"),
                        spring::are_ground(facts.spec.spring.ends) ? facts.say("coil.deburred_where")
                                                                   : facts.say("coil.deburred_tips")});
    if (facts.half_turn_tolerance())
        out.push_back(Named{Status::required, facts.say("coil.tips_apart"), tips_apart_words(facts)});
    if (spring::are_ground(facts.spec.spring.ends)) append(out, ground_entries(facts));
    return out;
}

/// A row of the grid; on a paper in inches with the metric values, in square brackets.
void add_row(Grid& grid, const Facts& facts, const std::string& name, Unit unit,
             const std::vector<std::optional<Amount>>& amounts, bool is_unit_told = true) {
    const Figures figures = facts.figures();
    Grid::Row row{is_unit_told || figures.has_inches() ? name + " [" + figures.first_unit(unit) + "]" : name, {}};
    if (figures.has_inches()) row.metric_name = std::string("[") + metric_name(unit) + "]";
    for (const auto& amount : amounts) {
        row.values.push_back(amount ? first(*amount) : "");
        if (figures.has_inches()) row.metric.push_back(amount ? "[" + amount->metric + "]" : "");
    }
    grid.rows.push_back(std::move(row));
}

/// The amount with both its forms in brackets.
Amount bracketed(Amount amount) {
    amount.metric = reference(amount.metric);
    if (!amount.inch.empty()) amount.inch = reference(amount.inch);
    return amount;
}

/// The marked points of the load line, with what the tester looks for at each.
Grid points(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    const record::Spec& spec = facts.spec;
    const Figures figures = facts.figures();
    const LoadLimits one = figures.limits(spec.seated);
    const LoadLimits two = figures.limits(spec.full_travel);
    const auto length = [&](const Length& l) { return bracketed(figures.length(l, {2})); };
    const auto at_most = [](Amount amount) {
        amount.metric = "≤ " + amount.metric;
        if (!amount.inch.empty()) amount.inch = "≤ " + amount.inch;
        return bracketed(std::move(amount));
    };
    const auto load = [&](const check::AtLength& at) { return bracketed(figures.force(at.load)); };
    Grid grid;
    for (const char* index : {"1", "2", "n", "c"})
        grid.heads.push_back(facts.say("load.at", {{"length", symbol("L", index)}}));
    add_row(grid, facts, "L", Unit::mm,
            {figures.length(spec.seated.length), figures.length(spec.full_travel.length), length(e.smallest_length),
             at_most(figures.length(e.solid_length, {2}))});
    add_row(grid, facts, facts.say("load.most"), Unit::newton, {one.most, two.most}, false);
    add_row(grid, facts, "F", Unit::newton, {one.nominal, two.nominal, load(e.at_smallest_length), load(e.at_solid)});
    add_row(grid, facts, facts.say("load.least"), Unit::newton, {one.least, two.least}, false);
    const auto stresses = [&](const std::string& name, Stress check::AtLength::*stress) {
        std::vector<std::optional<Amount>> row;
        for (const auto* at : {e.seated ? &*e.seated : nullptr, e.full_travel ? &*e.full_travel : nullptr,
                               &e.at_smallest_length, &e.at_solid})
            row.push_back(at ? std::optional(bracketed(figures.stress(at->*stress))) : std::nullopt);
        add_row(grid, facts, name, Unit::mpa, row);
    };
    stresses("τ", &check::AtLength::stress);
    if (spec.duty.is_dynamic() || spec.limits.stress_factor == demand::StressFactor::bergstraesser)
        stresses(symbol("τ", "k"), &check::AtLength::corrected_stress);
    return grid;
}

std::string limits_source(const Facts& facts) {
    const spring::School school = facts.spec.limits.school;
    return school == spring::School::handbook ? facts.say("stress.handbook") : std::string(spring::word(school));
}

/// The temperature that the data write so: "200 °C".
std::optional<Celsius> celsius(std::string_view as_written) {
    double degrees = 0.0;
    const char* const end = as_written.data() + as_written.size();
    const auto [rest, fault] = std::from_chars(as_written.data(), end, degrees);
    return fault == std::errc{} && std::string_view(rest, end) == " °C" ? std::optional(Celsius{degrees})
                                                                        : std::nullopt;
}

/// "392 to 572 °F [200 to 300 °C]".
std::string range_in_both(const Facts& facts, Celsius from, Celsius to) {
    const Figures figures = facts.figures();
    const auto range = [&](double first, double last, const char* unit) {
        return facts.say("wire.range_from_to",
                         {{"from", figures.number(first, {0})}, {"to", figures.number(last, {0}) + unit}});
    };
    return range(1.8 * from.degrees + 32.0, 1.8 * to.degrees + 32.0, " °F") + " [" +
           range(from.degrees, to.degrees, " °C") + "]";
}

/// "200 °C to 300 °C" or "482 °C", as the data write it, in the paper's language and units; other words as they are.
std::string temperature_words(const Facts& facts, const std::string& as_written) {
    constexpr std::string_view kTo = " to ";
    const auto at = as_written.find(kTo);
    if (at == std::string::npos) {
        const auto one = celsius(as_written);
        return one ? facts.figures().temperature(*one) : as_written;
    }
    const std::string from = as_written.substr(0, at);
    const std::string to = as_written.substr(at + kTo.size());
    if (celsius(from) && celsius(to) && facts.figures().has_inches())
        return range_in_both(facts, *celsius(from), *celsius(to));
    return facts.say("wire.range_from_to", {{"from", from}, {"to", to}});
}

/// Wire whose strength rests on ageing must be aged; other wire is stress relieved by the maker's own practice, for
/// which a guide is given.
Entries heat_entries(const Facts& facts) {
    const auto& relief = facts.grade.stress_relief;
    if (!relief) return {};
    const std::string words =
        temperature_words(facts, relief->temperature) + (relief->time.empty() ? "" : ", " + relief->time);
    if (!relief->hardens) return {Named{Status::adjustable, facts.say("process.stress_relief"), reference(words)}};
    // The remark on the row says that ageing would make another grade of this one.
    if (!relief->analogy.empty())
        return {Named{Status::required, facts.say("process.ageing"), facts.say("process.used_as_drawn")}};
    // That it is aged is required whatever is known of the cycle.
    return {Named{
        Status::required, facts.say("process.ageing_after"),
        is_firm(relief->evidence) ? words : facts.say("process.ageing_unconfirmed", {{"cycle", reference(words)}})}};
}

std::string allowed_uncertainty(const Facts& facts) {
    const auto most = [&](const record::LoadAtLength& load) { return with_unit(allowed_uncertainty(facts, load)); };
    return facts.say("inspection.uncertainty",
                     {{"first", most(facts.spec.seated)}, {"second", most(facts.spec.full_travel)}});
}

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

/// What the spring may lose in warm service; nothing when it stays cool.
Entries relaxation_entries(const Facts& facts) {
    const std::optional<Share>& loss = facts.spec.limits.load_loss;
    const Celsius temperature = facts.spec.surroundings.temperature;
    if (!loss && temperature.degrees < kWarm) return {};
    const std::string words =
        loss ? facts.say("service.relaxation_at_most", {{"share", facts.figures().number(100.0 * loss->value, {2})},
                                                        {"temperature", facts.figures().temperature(temperature)}})
             : facts.say("service.relaxation_open");
    return {Named{Status::reference, facts.say("service.relaxation"), reference(words)}};
}

}  // namespace

Entries wire_entries(const Facts& facts) {
    const wire::StrengthAt& strength = facts.values.strength;
    const Figures figures = facts.figures();
    const bool firm = is_firm(strength.evidence);
    Entries out{Heading{facts.say("wire.heading")}};
    out.push_back(Paragraph{wire_name(facts.grade), Status::required, Face::bold});
    if (facts.is_aged())
        out.push_back(Named{Status::required, facts.say("wire.bought"),
                            facts.say("wire.bought_as", {{"condition", facts.grade.supplied_as}})});
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
    out.push_back(
        Named{Status::reference, strength_name(facts, firm),
              references_with_unit(figures.stress(strength.minimum), figures.stress(facts.values.moduli.shear))});
    out.push_back(Named{Status::required, facts.say("wire.certificate"), certificate_words(facts, firm)});
    if (facts.is_aged()) out.push_back(Paragraph{facts.say("wire.certificate_of_aged")});
    return out;
}

Entries geometry_entries(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const check::Evaluation& e = facts.values;
    const Figures figures = facts.figures();
    const bool bore = facts.spec.bore_rules;
    const demand::Space& space = facts.spec.space;
    Entries out{Heading{facts.say("coil.heading")}};
    out.push_back(kept_or_adjusted(facts.diameter_is_adjustable(), coil_name(facts), with_unit(coil_diameter(facts))));
    if (facts.diameter_tolerance)
        out.push_back(
            Named{Status::reference,
                  facts.diameter_tolerance->is_firm() ? facts.say("coil.its_tolerance") : facts.say("coil.corresponds"),
                  reference(facts.say("grade.both", {{"grade", std::to_string(facts.spec.diameter_grade)}}))});
    const Length other_diameter = bore ? s.inside_diameter() : s.outside_diameter();
    const Decimals of_both{
        3, std::max(decimals(figures.length(s.mean_diameter)), decimals(figures.length(other_diameter)))};
    // Both when it works between a bore and a rod: either binds it.
    if (space.bore)
        out.push_back(Named{Status::reference, facts.say("coil.in_bore"),
                            reference(with_unit(figures.length(space.bore->smallest)))});
    if (space.rod)
        out.push_back(Named{Status::reference, facts.say("coil.over_rod"),
                            reference(with_unit(figures.length(space.rod->largest)))});
    out.push_back(
        Named{Status::reference, bore ? facts.say("coil.mean_and_inside") : facts.say("coil.mean_and_outside"),
              references_with_unit(figures.length(s.mean_diameter, of_both), figures.length(other_diameter, of_both))});
    out.push_back(kept_or_adjusted(facts.may_adjust(record::Adjustable::free_length), facts.say("coil.free_length"),
                                   with_unit(drawn_free_length(facts))));
    if (longest_free_length(facts))
        out.push_back(Named{Status::required, facts.say("coil.longest"), longest_free_length_words(facts)});
    out.push_back(
        Named{Status::adjustable, facts.say("coil.coils"),
              reference(figures.number(s.total_coils, {2})) + "; " + reference(figures.number(e.active_coils, {2}))});
    const double helix_degrees = in_base_unit(e.helix_angle) * 180.0 / std::numbers::pi;
    out.push_back(Named{Status::reference, facts.say("coil.pitch_and_helix"),
                        reference(with_unit(figures.length(e.pitch, {2}))) + "; " +
                            reference(figures.number(helix_degrees, {1}) + "°")});
    if (facts.half_turn_tolerance())
        out.push_back(Named{Status::required, facts.say("coil.hand"), hand(facts)});
    else
        out.push_back(Named{Status::required, facts.say("coil.hand_and_tips"),
                            hand(facts) + "; " + reference(facts.say("coil.tips_anyhow"))});
    append(out, end_entries(facts));
    out.push_back(Named{Status::reference, facts.say("coil.wire_and_mass"),
                        reference(with_unit(figures.significant(Unit::mm, in_mm(e.wire_length), 3))) + "; " +
                            reference(with_unit(figures.significant(Unit::gram, in_gram(e.mass), 3)))});
    return out;
}

Entries load_entries(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const Figures figures = facts.figures();
    const auto at = [&](const record::LoadAtLength& load) { return with_unit(figures.length(load.length)); };
    Entries out{Heading{facts.say("load.heading", {{"temperature", figures.temperature({20.0})}})}};
    out.push_back(Named{Status::required, facts.say("load.first", {{"length", at(spec.seated)}}),
                        with_unit(figures.toleranced(spec.seated))});
    out.push_back(Named{Status::required, facts.say("load.second", {{"length", at(spec.full_travel)}}),
                        with_unit(figures.toleranced(spec.full_travel))});
    out.push_back(Named{Status::reference, facts.say("load.corresponding"), reference(load_grades(facts))});
    out.push_back(Named{Status::reference, facts.say("load.rate_and_stroke"),
                        reference(with_unit(figures.rate(facts.values.rate))) + "; " +
                            reference(with_unit(figures.length(spec.seated.length - spec.full_travel.length)))});
    out.push_back(points(facts));
    out.push_back(Named{Status::reference, facts.say("stress.limit", {{"stress", limited_stress(facts)}}),
                        reference(with_unit(figures.stress(facts.permissible_stress)) + ", " + limits_source(facts))});
    if (spec.duty.is_dynamic() && facts.values.seated && facts.values.full_travel)
        out.push_back(Named{Status::reference, facts.say("stress.range"),
                            reference(with_unit(figures.stress(facts.values.full_travel->corrected_stress -
                                                               facts.values.seated->corrected_stress)))});
    if (facts.values.smallest_length > spec.full_travel.length)
        out.push_back(Paragraph{facts.say("load.coils_may_touch")});
    return out;
}

Entries process_entries(const Facts& facts) {
    Entries out{Heading{facts.say("process.heading")}};
    append(out, heat_entries(facts));
    out.push_back(Named{
        Status::adjustable, facts.say("process.surface_and_presetting"),
        reference(facts.bears_solid() ? facts.say("process.preset_to_solid") : facts.say("process.preset_to_L2"))});
    if (facts.spec.duty.peened)
        out.push_back(Named{Status::required, facts.say("process.peening"),
                            facts.say("process.peening_required", {{"agreement", facts.agreement()}})});
    else if (facts.spec.duty.is_dynamic())
        out.push_back(
            Named{Status::reference, facts.say("process.peening"), reference(facts.say("process.no_peening"))});
    out.push_back(Named{facts.spec.finish.empty() ? Status::reference : Status::required, facts.say("process.finish"),
                        finish(facts)});
    if (plating_embrittles(facts))
        out.push_back(required_paragraph(facts.say("process.bake", {{"from", facts.figures().temperature({kBakeFrom})},
                                                                    {"to", facts.figures().temperature({kBakeTo})}})));
    return out;
}

Entries service_entries(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const std::string medium = spec.surroundings.medium.empty() ? "" : ", " + spec.surroundings.medium;
    Entries out{Heading{facts.say("service.heading")}};
    out.push_back(Named{Status::reference, facts.say("service.duty"), reference(duty(facts))});
    out.push_back(Named{Status::reference, facts.say("service.temperature"),
                        reference(facts.figures().temperature(spec.surroundings.temperature) + medium)});
    append(out, relaxation_entries(facts));
    out.push_back(Named{Status::reference, facts.say("service.seats"), reference(seats(facts))});
    return out;
}

Entries inspection_entries(const Facts& facts) {
    Entries out{Heading{facts.say("inspection.heading")}};
    out.push_back(required_paragraph(test_sequence(facts)));
    if (!facts.bears_solid()) out.push_back(required_paragraph(facts.say("inspection.never_shorter")));
    out.push_back(required_paragraph(inspected_pieces(facts)));
    out.push_back(required_paragraph(facts.say("inspection.decision") + " " + allowed_uncertainty(facts)));
    return out;
}

Entries adjust_entries(const Facts& facts) {
    std::string words = facts.say("adjust.loads", {{"quantities", adjustable_quantities(facts)}});
    const std::string bounds = kept_bounds(facts);
    if (!bounds.empty()) words += " " + facts.say("adjust.keep", {{"bounds", bounds}});
    if (const auto aim = aimed_free_length(facts))
        words += " " + facts.say("adjust.aim", {{"length", with_unit(facts.figures().length(*aim))}});
    words += " " + facts.say("adjust.nothing_else");
    words += " " + facts.say("adjust.report", {{"diameter", coil_symbol(facts)}});
    return {Heading{std::string(sign(Status::adjustable)) + " " + facts.say("adjust.heading")}, Paragraph{words}};
}

Entries order_entries(const Facts& facts) {
    Entries out{Heading{facts.say("order.heading")}};
    if (!facts.spec.quantities.empty() && !facts.spec.alternative.empty())  // once chosen, the order says how many
        out.push_back(Paragraph{facts.say("order.lots", {{"lots", quantities(facts.spec)}})});
    out.push_back(required_paragraph(facts.say("order.packing")));
    out.push_back(required_paragraph(facts.say("order.label")));
    int count = 0;
    for (const std::string& note : facts.spec.notes)
        out.push_back(required_paragraph(std::to_string(++count) + ". " + note));
    return out;
}

Entries sheet_entries(const Facts& facts) {
    Entries all;
    for (const auto group : {&wire_entries, &geometry_entries, &load_entries, &process_entries, &inspection_entries,
                             &adjust_entries, &service_entries, &order_entries})
        append(all, group(facts));
    for (Entry& entry : all)
        if (auto* const heading = std::get_if<Heading>(&entry))
            heading->again = facts.say("sheet.heading_again", {{"heading", heading->words}});
    return all;
}

Entries evened(const Entries& entries) {
    constexpr std::array<std::size_t, 8> kOrder{0, 1, 3, 6, 2, 4, 5, 7};  // process and service before the loads
    std::vector<Entries> groups;
    for (const Entry& entry : entries) {
        if (std::holds_alternative<Heading>(entry)) groups.emplace_back();
        groups.back().push_back(entry);
    }
    SEATLOAD_ASSERT(groups.size() == kOrder.size());
    Entries out;
    for (const std::size_t group : kOrder) append(out, std::move(groups[group]));
    return out;
}

}  // namespace seatload::sheet
