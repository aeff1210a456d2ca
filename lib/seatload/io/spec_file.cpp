// SPDX-License-Identifier: MIT
#include <seatload/io/spec_file.hpp>

#include <seatload/io/date_form.hpp>
#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/identity_table.hpp>
#include <seatload/io/record_forms.hpp>
#include <seatload/io/revision_tables.hpp>
#include <seatload/io/spring_table.hpp>
#include <seatload/io/tips_form.hpp>

namespace seatload::io {
namespace {

template <class Fields, class Spec>
void visit_head(Fields& f, Spec& spec) {
    f.field("title", spec.title, kAny, "");
    f.field("alternative", spec.alternative, kAny, "");
    f.field("why", spec.why, kAny, "");
}

template <class Fields, class Load, class Band>
void visit_load(Fields& f, Load& load, Band& band) {
    f.needed("length", "\"15 mm\"", load.length, kPositive, "");
    f.needed("force", "\"5.6 N\"", load.nominal, kPositive, "cold and new");
    f.needed("plus", "\"0.5 N\"", load.plus, kNotNegative, "upper deviation");
    f.needed("minus", "\"0.5 N\"", load.minus, kNotNegative, "lower deviation");
    f.field("grade", load.grade, kGrade, "coarsest of EN 15800 that stays inside");
    f.field("needed", band, kNotNegative, "by the mechanism, all through its life");
}

template <class Fields, class Spec>
void visit_required(Fields& f, Spec& spec) {
    RequiredDiameter required = spec.bore_rules ? RequiredDiameter::outside : RequiredDiameter::inside;
    f.field("diameter", required, kAny, "the coil diameter that is inspected");
    if constexpr (!std::is_const_v<Spec>) spec.bore_rules = required == RequiredDiameter::outside;
    f.field("diameter_grade", spec.diameter_grade, kGrade, "EN 15800");
    f.field("squareness_grade", spec.squareness_grade, kGrade, "EN 15800, ground ends");
    visit_tips(spec.limits.tips_degrees,
               [&](auto& tips) { f.field("tips", tips, kTipsApart, "plus-minus, the end tips half a turn apart"); });
    f.field("adjustable", spec.adjustable, kAny, "what the maker may alter to bring the loads in");
}

template <class Fields, class Spec>
void visit_order(Fields& f, Spec& spec) {
    f.field("quantities", spec.quantities, kAtLeastOne, "");
    f.field("finish", spec.finish, kAny, "");
    f.field("certificate", spec.certificate, kAny, "of the wire, EN 10204");
    f.field("notes", spec.notes, kAny, "");
}

/// Begins a table and fills it.
template <class Visitor>
void write_table(TomlWriter& writer, std::string_view path, const Visitor& visitor) {
    writer.table(path);
    FieldWriter fields(writer);
    visitor(fields);
}

void write_identity(FieldWriter& f, const demand::Identity& identity) {
    visit_identity(f, identity);
    if (!identity.date.empty()) f.field("date", DateText{identity.date}, kAny, "of issue");
}

void write_limits(FieldWriter& f, const demand::Limits& limits) {
    f.field("school", limits.school, kAny, "");
    visit_limits(f, limits);
}

template <class Visitor>
void read_table(std::optional<Reader> table, const Visitor& visitor) {
    if (!table) return;
    FieldReader fields(*table);
    visitor(fields);
}

record::Spec read_spec_tables(Reader& root, const wire::Catalogue& catalogue) {
    record::Spec spec;
    if (!root.has("format")) root.missing("format", quoted_text(kSpecFormat));
    if (!read_format(root, {kSpecFormat})) return spec;
    root.allow("state");  // of a library; none of a spec's business
    FieldReader head(root);
    visit_head(head, spec);
    if (auto table = root.table("identity")) spec.identity = read_identity(*table);
    spec.revisions = read_revisions(root, spec.identity);
    SpringTable spring = read_spring_table(root, catalogue);
    spec.wire_grade = std::move(spring.wire_grade);
    spec.own_grade = std::move(spring.own_grade);
    spec.spring = spring.spring;
    read_table(root.need_table("seated_load", "force = \"5.6 N\""),
               [&](auto& f) { visit_load(f, spec.seated, spec.seated_demand); });
    read_table(root.need_table("full_travel_load", "force = \"12 N\""),
               [&](auto& f) { visit_load(f, spec.full_travel, spec.full_travel_demand); });
    read_table(root.need_table("space", "seated_height = \"15 mm\""), [&](auto& f) { visit_space(f, spec.space); });
    read_table(root.table("duty"), [&](auto& f) { visit_duty(f, spec.duty); });
    read_table(root.table("surroundings"), [&](auto& f) { visit_surroundings(f, spec.surroundings); });
    spec.limits = demand::school_defaults(spring::School::en_13906);
    if (auto table = root.table("limits")) spec.limits = read_limits(*table);
    // Behind the limits, as the tips it orders are one of them.
    read_table(root.table("required"), [&](auto& f) { visit_required(f, spec); });
    read_table(root.table("order"), [&](auto& f) { visit_order(f, spec); });
    return spec;
}

}  // namespace

std::string write_spec(const record::Spec& spec) {
    TomlWriter writer;
    writer.entry("format", quoted_text(kSpecFormat));
    FieldWriter head(writer);
    visit_head(head, spec);
    write_table(writer, "identity", [&](auto& f) { write_identity(f, spec.identity); });
    write_revisions(writer, spec.revisions);
    write_spring_table(writer, {spec.wire_grade, spec.own_grade, spec.spring});
    write_table(writer, "seated_load", [&](auto& f) { visit_load(f, spec.seated, spec.seated_demand); });
    write_table(writer, "full_travel_load", [&](auto& f) { visit_load(f, spec.full_travel, spec.full_travel_demand); });
    write_table(writer, "required", [&](auto& f) { visit_required(f, spec); });
    write_table(writer, "space", [&](auto& f) { visit_space(f, spec.space); });
    write_table(writer, "duty", [&](auto& f) { visit_duty(f, spec.duty); });
    write_table(writer, "surroundings", [&](auto& f) { visit_surroundings(f, spec.surroundings); });
    write_table(writer, "limits", [&](auto& f) { write_limits(f, spec.limits); });
    write_table(writer, "order", [&](auto& f) { visit_order(f, spec); });
    return std::move(writer).text();
}

Result<record::Spec> read_spec(std::string_view text, const std::string& file_name, const wire::Catalogue& catalogue) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::Spec spec;
    {
        Reader root(document);
        spec = read_spec_tables(root, catalogue);
    }
    if (document.has_error()) return document.diagnostics();
    return {std::move(spec), document.diagnostics()};
}

}  // namespace seatload::io
