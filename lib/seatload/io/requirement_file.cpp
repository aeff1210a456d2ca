// SPDX-License-Identifier: MIT
#include <seatload/io/requirement_file.hpp>

#include <seatload/core/text.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/correspondence_fields.hpp>
#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/identity_table.hpp>
#include <seatload/io/own_wire.hpp>
#include <seatload/io/plunger_table.hpp>
#include <seatload/io/preference_table.hpp>
#include <seatload/io/requirement_check.hpp>
#include <seatload/io/revision_tables.hpp>
#include <seatload/io/space_check.hpp>

namespace seatload::io {
namespace {

constexpr Span kAlternatives{1.0, 26.0, false, "1 to 26, one for each letter of the alphabet"};
constexpr Span kCoils{0.0, 10000.0, true, "more than 0 and at most 10000"};
constexpr Span kLengthStep{0.001, 10000.0, false, "0.001 mm or more, and at most 10 m"};
constexpr Span kCoilsStep{0.01, 10000.0, false, "0.01 or more"};

template <class Loads>
void visit_loads(FieldReader& f, Loads& loads) {
    f.needed("seated", "\"4.8 N .. 6.5 N\"", loads.seated_load, kNotNegative, "");
    f.field("full_travel", loads.full_travel_load, kNotNegative, "");
}

void visit_wire(FieldReader& f, demand::WireChoice& wire) {
    f.field("grades", wire.grades, kAny, "");
    f.field("diameters", wire.diameters, kSize, "");
    f.field("series", wire.series, kAny, "");
}

void visit_coil(FieldReader& f, demand::Requirement& requirement) {
    f.field("ends", requirement.ends, kAny, "");
    f.field("hand", requirement.hand, kAny, "");
    f.field("finish", requirement.finish, kAny, "");
}

void visit_grid(FieldReader& f, demand::Grid& grid) {
    f.field("mean_diameter_step", grid.mean_diameter_step, kLengthStep, "");
    f.field("total_coils_step", grid.total_coils_step, kCoilsStep, "");
    f.field("free_length_step", grid.free_length_step, kLengthStep, "");
    f.field("mean_diameter", grid.mean_diameter, kSize, "");
    f.field("total_coils", grid.total_coils, kCoils, "");
    f.field("free_length", grid.free_length, kSize, "");
}

void visit_order(FieldReader& f, demand::Requirement& requirement) {
    f.field("quantities", requirement.quantities, kAtLeastOne, "");
    f.field("maker", requirement.maker, kAny, "");
    f.field("load_grade", requirement.load_grade, kGrade, "");
    f.field("alternatives", requirement.alternatives, kAlternatives, "");
    f.field("certificate", requirement.certificate, kAny, "");
    f.field("notes", requirement.notes, kAny, "");
}

/// Own wire; when no grades are named, it alone is meant.
void read_own_wires(Reader& root, demand::WireChoice& wire) {
    const bool names_grades = !wire.grades.empty();
    for (Reader& table : root.tables("own_wire")) {
        wire.own_grades.push_back(read_own_wire(table));
        if (!names_grades) wire.grades.push_back(wire.own_grades.back().id);
    }
}

/// Ids as the catalogue spells them, so that they can be compared.
void spell_as_catalogue(std::vector<std::string>& ids, const wire::Catalogue& catalogue) {
    for (std::string& id : ids)
        if (const wire::Grade* grade = catalogue.find(id)) id = grade->id;
}

/// The loads as they are given, or as the budget of a plunger makes them.
void read_loads(Reader& root, demand::Requirement& requirement) {
    auto plunger = root.table("plunger");
    if (plunger && root.has("load"))
        root.document().contradiction(
            root.at("load"), "given-twice"_id, "the loads are given, and to be worked out as well",
            "keep [load] for loads that are known, [plunger] to have them worked out", plunger->at(), "the plunger");
    auto load = plunger ? root.table("load") : root.need_table("load", "seated = \"4.8 N .. 6.5 N\"");
    if (load) {
        FieldReader fields(*load);
        visit_loads(fields, requirement);
    }
    if (plunger) requirement.plunger = read_plunger_table(*plunger, travel_of(requirement.space));
}

/// What the plunger of a requirement asks of its spring.
void work_out_loads(demand::Requirement& requirement) {
    if (!requirement.plunger) return;
    const demand::Budget budget = demand::plunger_budget(*requirement.plunger);
    requirement.seated_load = budget.seated_rounded;
    requirement.full_travel_load = budget.full_travel_rounded;
}

/// The maker whose limits count; nothing when he is not known (then complained of).
const demand::Maker* find_maker(Reader& root, const std::string& name, const demand::Makers& makers) {
    if (makers.instead) return &makers.all[*makers.instead];
    if (name.empty()) return makers.all.empty() ? nullptr : &makers.all.front();
    const demand::Maker* maker = makers.find(name);
    if (maker != nullptr) return maker;
    std::vector<std::string> names;
    for (const demand::Maker& each : makers.all) names.push_back(each.name);
    const std::string near = did_you_mean(name, names);
    root.document().error(root.document().at("order.maker"), "unknown-maker"_id, "unknown maker \"" + name + '"',
                          (near.empty() ? "known: " + join(names, ", ") + ';' : near) +
                              " limits of a maker of your own go into a file for --maker-file");
    return nullptr;
}

/// The maker's steps of coils are looked at, unless the grid states others.
void read_grid(Reader& root, const demand::Maker* maker, demand::Grid& grid) {
    if (maker != nullptr && maker->coil_step) grid.total_coils_step = *maker->coil_step;
    auto table = root.table("grid");
    if (!table) return;
    FieldReader fields(*table);
    visit_grid(fields, grid);
}

demand::Limits read_limits_of(Reader& root, const demand::Maker* maker) {
    if (auto table = root.table("limits")) return read_limits(*table, maker);
    demand::Limits limits = demand::school_defaults(spring::School::en_13906);
    if (maker != nullptr) demand::lay_on(limits, *maker);
    return limits;
}

demand::Requirement read_requirement_tables(Reader& root, const demand::Makers& makers) {
    demand::Requirement requirement;
    const auto visit = [](std::optional<Reader> table, const auto& visitor) {
        if (!table) return;
        FieldReader fields(*table);
        visitor(fields);
    };
    if (auto table = root.table("identity")) requirement.identity = read_identity(*table);
    requirement.revisions = read_revisions(root, requirement.identity);
    visit(root.need_table("space", "seated_height = \"15 mm\""), [&](auto& f) { visit_space(f, requirement.space); });
    read_loads(root, requirement);
    visit(root.table("duty"), [&](auto& f) { visit_duty(f, requirement.duty); });
    visit(root.table("surroundings"), [&](auto& f) { visit_surroundings(f, requirement.surroundings); });
    visit(root.table("wire"), [&](auto& f) { visit_wire(f, requirement.wire); });
    read_own_wires(root, requirement.wire);
    visit(root.table("coil"), [&](auto& f) { visit_coil(f, requirement); });
    if (auto table = root.table("prefer")) requirement.preference = read_preference(*table);
    visit(root.table("order"), [&](auto& f) { visit_order(f, requirement); });
    const demand::Maker* maker = find_maker(root, requirement.maker, makers);
    read_grid(root, maker, requirement.grid);
    requirement.limits = read_limits_of(root, maker);
    if (maker != nullptr) requirement.maker = maker->name;
    visit(root.table("enquiry"), [&](auto& f) { visit_correspondence(f, requirement.correspondence); });
    return requirement;
}

void expect_time_to_reply(Document& document, const demand::Requirement& requirement) {
    const std::string& issued = requirement.identity.date;
    const std::string& wanted = requirement.correspondence.reply_by;
    if (issued.empty() || wanted.empty() || issued <= wanted) return;
    document.contradiction(document.at("enquiry.reply_by"), "date-out-of-order"_id,
                           "the reply is wanted before the date of issue", "", document.at("identity.date"),
                           "the date of issue");
}

}  // namespace

Result<demand::Requirement> read_requirement(std::string_view text, const std::string& file_name,
                                             const wire::Catalogue& catalogue) {
    return read_requirement(text, file_name, catalogue, builtin_makers());
}

Result<demand::Requirement> read_requirement(std::string_view text, const std::string& file_name,
                                             const wire::Catalogue& catalogue, const demand::Makers& makers) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    demand::Requirement requirement;
    {
        Reader root(document);
        if (!read_format(root, {kRequirementFormat})) return document.diagnostics();
        requirement = read_requirement_tables(root, makers);
    }
    check_requirement(document, requirement, catalogue);
    check_preference(document, requirement, catalogue);
    expect_time_to_reply(document, requirement);
    if (document.has_error()) return document.diagnostics();
    work_out_loads(requirement);
    spell_as_catalogue(requirement.wire.grades, catalogue);
    spell_as_catalogue(requirement.preference.grades, catalogue);
    return {std::move(requirement), document.diagnostics()};
}

}  // namespace seatload::io
