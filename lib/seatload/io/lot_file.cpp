// SPDX-License-Identifier: MIT
#include <seatload/io/lot_file.hpp>

#include <seatload/io/date_form.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/inspection_forms.hpp>

namespace seatload::io {
namespace {

using inspection::Kind;
using record::LotCharacteristic;

constexpr Span kCount{0.0, 10'000'000.0, false, "0 or more, and at most 10000000"};

// Field tables for reading and writing both.

template <class Fields, class Spec>
void visit_spec(Fields& f, Spec& spec) {
    f.field("number", spec.number, kAny, "");
    f.field("revision", spec.revision, kAny, "");
    f.needed("sha256", "\"e3b0c442...\"", spec.sha256, kAny, "of the spec's file");
}

template <class Fields, class Lot>
void visit_lot(Fields& f, Lot& lot) {
    f.needed("name", "\"lot 1\"", lot.name, kAny, "");
    f.field("maker", lot.maker, kAny, "");
    f.needed("pieces", "20", lot.pieces, kPieces, "of the lot");
    f.needed("inspected", "20", lot.inspected, kCount, "pieces measured");
    f.field("plan", lot.plan, kAny, "for the loads");
}

template <class Fields, class Characteristic>
void visit_counts(Fields& f, Characteristic& c) {
    f.needed("decides", "true", c.decides, kAny, "counts for the verdict of the lot");
    f.needed("inside", "20", c.inside, kCount, "by U or more");
    f.needed("unproven", "0", c.unproven, kCount, "nearer to a limit than U");
    f.needed("outside", "0", c.outside, kCount, "by more than U");
    f.needed("verdict", "\"accept\"", c.verdict, kAny, "");
}

void write_value(TomlWriter& writer, std::string_view key, const std::optional<double>& value, Kind kind,
                 std::string_view comment) {
    if (value) writer.entry(key, write_measured(*value, kind), comment);
}

void write_characteristic(TomlWriter& writer, const LotCharacteristic& c) {
    writer.next_table("characteristic");
    writer.entry("of", Form<Kind>::write(c.kind));
    write_value(writer, "at_least", c.limits.least, c.kind, "");
    write_value(writer, "at_most", c.limits.most, c.kind, "");
    write_value(writer, "uncertainty", c.uncertainty, c.kind, "U, k = 2");
    write_value(writer, "mean", c.mean, c.kind, "");
    write_value(writer, "deviation", c.deviation, c.kind, "standard deviation s");
    FieldWriter fields(writer);
    visit_counts(fields, c);
}

LotCharacteristic read_characteristic(Reader& table) {
    LotCharacteristic c;
    const bool has_kind = table.has("of");
    c.kind = table.need<Kind>("of", "\"seated_load\"");
    if (!has_kind) {
        table.allow_all();
        return c;
    }
    c.limits.least = find_measured(table, "at_least", c.kind);
    c.limits.most = find_measured(table, "at_most", c.kind);
    c.uncertainty = find_measured(table, "uncertainty", c.kind, kNotNegative).value_or(0.0);
    c.mean = find_measured(table, "mean", c.kind);
    c.deviation = find_measured(table, "deviation", c.kind, kNotNegative);
    FieldReader fields(table);
    visit_counts(fields, c);
    return c;
}

record::Lot read_lot_tables(Reader& root) {
    record::Lot lot;
    if (!root.has("format")) root.missing("format", quoted_text(kLotFormat));
    if (!read_format(root, {kLotFormat})) return lot;
    lot.verdict = root.need<inspection::Verdict>("verdict", "\"accept\"");
    lot.reasons = root.list<std::string>("reasons");
    lot.conditions = root.list<std::string>("conditions");
    lot.remarks = root.list<std::string>("remarks");
    if (auto table = root.need_table("spec", "number = \"OM14-LAT-AHD\"")) {
        FieldReader fields(*table);
        visit_spec(fields, lot.spec);
    }
    if (auto table = root.need_table("lot", "name = \"lot 1\"")) {
        FieldReader fields(*table);
        visit_lot(fields, lot);
        if (const auto date = table->find<DateText>("date")) lot.date = date->iso;
    }
    for (Reader& table : root.tables("characteristic")) lot.characteristics.push_back(read_characteristic(table));
    return lot;
}

}  // namespace

std::string write_lot(const record::Lot& lot) {
    TomlWriter writer;
    writer.comment("What the inspection of a lot found.");
    writer.entry("format", quoted_text(kLotFormat));
    writer.entry("verdict", Form<inspection::Verdict>::write(lot.verdict));
    FieldWriter fields(writer);
    fields.field("reasons", lot.reasons, kAny, "");
    fields.field("conditions", lot.conditions, kAny, "accepted if each of them holds");
    fields.field("remarks", lot.remarks, kAny, "");
    writer.table("spec");
    visit_spec(fields, lot.spec);
    writer.table("lot");
    visit_lot(fields, lot);
    if (!lot.date.empty()) writer.entry("date", quoted_text(lot.date), "of the inspection");
    for (const LotCharacteristic& c : lot.characteristics) write_characteristic(writer, c);
    return std::move(writer).text();
}

Result<record::Lot> read_lot(std::string_view text, const std::string& file_name) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::Lot lot;
    {
        Reader root(document);
        lot = read_lot_tables(root);
    }
    if (document.has_error()) return document.diagnostics();
    return {std::move(lot), document.diagnostics()};
}

}  // namespace seatload::io
