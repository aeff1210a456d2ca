// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

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
    const check::AtLength at_solid = facts.at_longest_solid();
    Grid grid;
    for (const char* index : {"1", "2", "n", "c"})
        grid.heads.push_back(facts.say("load.at", {{"length", symbol("L", index)}}));
    add_row(grid, facts, "L", Unit::mm,
            {figures.length(spec.seated.length), figures.length(spec.full_travel.length), length(e.smallest_length),
             at_most(figures.length(at_solid.length, {2}))});
    add_row(grid, facts, facts.say("load.most"), Unit::newton, {one.most, two.most}, false);
    add_row(grid, facts, "F", Unit::newton, {one.nominal, two.nominal, load(e.at_smallest_length), load(at_solid)});
    add_row(grid, facts, facts.say("load.least"), Unit::newton, {one.least, two.least}, false);
    const auto stresses = [&](const std::string& name, Stress check::AtLength::*stress) {
        std::vector<std::optional<Amount>> row;
        for (const auto* at : {e.seated ? &*e.seated : nullptr, e.full_travel ? &*e.full_travel : nullptr,
                               &e.at_smallest_length, &at_solid})
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

}  // namespace

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

}  // namespace seatload::sheet
