// SPDX-License-Identifier: MIT
#include <seatload/io/spring_table.hpp>

#include <array>

#include <seatload/core/text.hpp>
#include <seatload/io/own_wire.hpp>
#include <seatload/io/wire_choice_check.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::io {
namespace {

constexpr Span kCoilRange{0.0, 10000.0, true, "more than 0 and at most 10000"};
constexpr std::array<std::string_view, 3> kDiameters{"mean_diameter", "outside_diameter", "inside_diameter"};

// The keys of [spring] stand in two field tables, between which the writer puts the coil diameter; readers take it in
// three forms.

template <class Fields, class Table>
void visit_wire(Fields& f, Table& table) {
    f.field("wire", table.wire_grade, kAny, "");
    f.needed("wire_diameter", "\"0.80 mm\"", table.spring.wire_diameter, kSize, "d");
}

template <class Fields, class Spring>
void visit_coils(Fields& f, Spring& spring) {
    f.needed("total_coils", "8.5", spring.total_coils, kCoilRange, "nt");
    f.needed("free_length", "\"24 mm\"", spring.free_length, kSize, "L0");
    f.needed("ends", "\"closed and ground\"", spring.ends, kAny, "");
    f.field("hand", spring.hand, kAny, "which way it winds");
}

/// Complains of a second coil diameter.
void expect_one_diameter(Reader& reader) {
    std::string_view first;
    for (const std::string_view key : kDiameters) {
        if (!reader.has(key)) continue;
        if (!first.empty())
            reader.document().contradiction(reader.at(key), "given-twice"_id, "the coil diameter is given twice",
                                            "keep one of the two", reader.at(first),
                                            std::string(first) + " stands here");
        first = key;
    }
    if (first.empty()) reader.missing("mean_diameter", "\"6.20 mm\" (or outside_diameter, or inside_diameter)");
}

void read_coil_diameter(Reader& reader, spring::Spring& spring) {
    expect_one_diameter(reader);
    const Length d = spring.wire_diameter;
    Length D;
    if (const auto mean = reader.find<Length>("mean_diameter", kSize)) D = *mean;
    if (const auto outside = reader.find<Length>("outside_diameter", kSize)) D = *outside - d;
    if (const auto inside = reader.find<Length>("inside_diameter", kSize)) D = *inside + d;
    spring.mean_diameter = D;
    if (d <= 0.0 * mm || (D > d)) return;
    for (const std::string_view key : {kDiameters[0], kDiameters[1]})
        if (reader.has(key) && reader.find<Length>(key))
            reader.document().contradiction(reader.at(key), "wire-too-thick"_id, "no coil of this wire can be so small",
                                            "the mean diameter must be larger than the wire",
                                            reader.at("wire_diameter"), "the wire");
}

const wire::Grade* find_grade(const SpringTable& table, const wire::Catalogue& catalogue) {
    if (table.own_grade && lower(table.own_grade->id) == lower(table.wire_grade)) return &*table.own_grade;
    return catalogue.find(table.wire_grade);
}

/// Checks the wire, and spells its id as the catalogue does.
void check_wire(Reader& reader, SpringTable& table, const wire::Catalogue& catalogue) {
    if (table.wire_grade.empty()) return;
    const wire::Grade* grade = find_grade(table, catalogue);
    if (grade == nullptr) {
        std::vector<std::string> own_ids;
        if (table.own_grade) own_ids.push_back(table.own_grade->id);
        reader.error("wire", "unknown-grade"_id, "unknown wire grade \"" + table.wire_grade + "\"",
                     unknown_grade_hint(table.wire_grade, own_ids, catalogue));
        return;
    }
    table.wire_grade = grade->id;
    const Length d = table.spring.wire_diameter;
    if (d <= 0.0 * mm || wire::strength_at(*grade, d)) return;
    const wire::DiameterRange range = wire::strength_range(*grade);
    reader.error("wire_diameter", "no-strength"_id, grade->id + " has no strength for wire of " + units::shown_wire(d),
                 "its strengths are known from " + units::shown_wire(range.smallest) + " to " +
                     units::shown_wire(range.largest) + " and are never extrapolated");
}

}  // namespace

SpringTable read_spring_table(Reader& root, const wire::Catalogue& catalogue) {
    SpringTable table;
    if (auto own = root.table("own_wire")) table.own_grade = read_own_wire(*own);
    auto reader = root.need_table("spring", "wire = \"EN10270-1-SH\"");
    if (!reader) return table;
    FieldReader fields(*reader);
    visit_wire(fields, table);
    visit_coils(fields, table.spring);
    if (!reader->has("wire")) {
        if (table.own_grade) table.wire_grade = table.own_grade->id;
        if (!table.own_grade) reader->missing("wire", "\"EN10270-1-SH\"");
    }
    read_coil_diameter(*reader, table.spring);
    check_wire(*reader, table, catalogue);
    return table;
}

void write_spring_table(TomlWriter& writer, const SpringTable& table) {
    writer.table("spring");
    FieldWriter fields(writer);
    visit_wire(fields, table);
    fields.field("mean_diameter", table.spring.mean_diameter, kSize, "D");
    visit_coils(fields, table.spring);
    if (!table.own_grade) return;
    writer.table("own_wire");
    write_own_wire(writer, *table.own_grade);
}

}  // namespace seatload::io
