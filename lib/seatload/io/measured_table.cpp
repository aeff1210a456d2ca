// SPDX-License-Identifier: MIT
#include <seatload/io/measured_table.hpp>

#include <seatload/io/date_form.hpp>
#include <seatload/io/stated_form.hpp>

namespace seatload::io {
namespace {

template <class Fields, class Measured>
void visit_measured(Fields& f, Measured& measured) {
    f.field("readings", measured.readings, kAny, "");
    f.field("rate", measured.rate, kPositive, "± is the expanded uncertainty");
}

}  // namespace

record::Measured read_measured(Reader& table) {
    record::Measured measured;
    if (const auto date = table.find<DateText>("date")) measured.date = date->iso;
    FieldReader fields(table);
    visit_measured(fields, measured);
    fields.field("wire_guessed", measured.wire_is_guessed, kAny, "");
    for (RowReader& row : table.rows("loads")) {
        const Length height = row.need<Length>(0, "height", kSize);
        measured.loads.push_back({height, row.need<bench::Stated<Force>>(1, "load", kNotNegative)});
        row.expect_at_most(2);
    }
    return measured;
}

void write_measured(TomlWriter& writer, const record::Measured& measured) {
    writer.table("measured");
    FieldWriter fields(writer);
    fields.field("date", measured.date, kAny, "");
    visit_measured(fields, measured);
    std::string rows;
    for (const record::MeasuredLoad& load : measured.loads)
        rows += (rows.empty() ? "" : ", ") + ('[' + Form<Length>::write(load.height) + ", ") +
                Form<bench::Stated<Force>>::write(load.load) + ']';
    if (measured.wire_is_guessed)
        fields.field("wire_guessed", measured.wire_is_guessed, kAny, "taken by the stiffness: not known");
    if (!rows.empty()) writer.entry("loads", '[' + rows + ']', "at heights");
}

}  // namespace seatload::io
