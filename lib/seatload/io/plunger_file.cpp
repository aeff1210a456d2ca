// SPDX-License-Identifier: MIT
#include <seatload/io/plunger_file.hpp>

#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/identity_table.hpp>
#include <seatload/io/plunger_forms.hpp>
#include <seatload/io/plunger_table.hpp>
#include <seatload/io/space_check.hpp>

namespace seatload::io {
namespace {

using demand::Interval;

/// The loads of a spring; a spring pushes no less at full travel than at its seat.
demand::SpringLoads read_spring_loads(Reader& table) {
    demand::SpringLoads loads;
    loads.seated = table.need<Interval<Force>>("seated", "\"5.6 N\"", kNotNegative);
    loads.full_travel = table.need<Interval<Force>>("full_travel", "\"12 N\"", kNotNegative);
    if (loads.full_travel.high < loads.seated.low)
        table.document().contradiction(table.at("full_travel"), "loads-exchanged"_id,
                                       "the load at full travel is below the load at the seat",
                                       "a spring pushes harder the further it is compressed; are the two exchanged?",
                                       table.at("seated"), "the load at the seat");
    return loads;
}

record::PlungerFile read_plunger_tables(Reader& root) {
    record::PlungerFile file;
    const auto format = read_format(root, {kPlungerFormat, kRequirementFormat});
    if (!format) return file;
    if (*format == kRequirementFormat) root.allow_all();
    if (auto table = root.table("identity")) file.identity = read_identity(*table);
    if (auto table = root.table("space")) {
        FieldReader fields(*table);
        visit_space(fields, file.space.emplace());
    }
    if (auto table = root.table("surroundings")) {
        FieldReader fields(*table);
        visit_surroundings(fields, file.surroundings.emplace());
    }
    if (*format == kRequirementFormat && !root.has("plunger"))
        root.document().error(root.at(), "missing-table"_id,
                              "this requirement has no [plunger] to work its loads out of",
                              "it states its loads itself, and `seatload size` finds springs for them; a plunger is "
                              "described as in the file that `seatload start plunger` writes");
    else if (auto table = root.need_table("plunger", "seat_diameter = \"7.9 mm\""))
        file.plunger = read_plunger_table(*table, file.space ? travel_of(*file.space) : std::nullopt);
    if (*format == kRequirementFormat) return file;
    if (auto table = root.table("spring")) file.spring = read_spring_loads(*table);
    return file;
}

}  // namespace

Result<record::PlungerFile> read_plunger(std::string_view text, const std::string& file_name) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::PlungerFile file;
    {
        Reader root(document);
        file = read_plunger_tables(root);
    }
    if (file.space) check_space(document, *file.space);
    if (document.has_error()) return document.diagnostics();
    return {std::move(file), document.diagnostics()};
}

}  // namespace seatload::io
