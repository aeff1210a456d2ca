// SPDX-License-Identifier: MIT
#include <seatload/io/plunger_requirement.hpp>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>

namespace seatload::io {
namespace {

std::string newtons(Force load) { return significant(in_newton(load), 4) + " N"; }

void remark(TomlWriter& writer, const demand::BudgetLimit& limit) {
    const bool is_least = limit.bound == demand::Bound::at_least;
    writer.comment(std::string(limit.place == demand::LoadPlace::seated ? "seated" : "full travel") +
                   (is_least ? ", at least " : ", at most ") + newtons(limit.value) + ", so that the plunger " +
                   std::string(limit.title) + ":");
    writer.comment("  " + limit.formula);
    writer.comment("  = " + limit.numbers);
    if (!limit.where.empty()) {
        constexpr int kWidth = 112;
        const std::string where = wrapped("", limit.where, kWidth, 0);
        for (const std::string_view line : split(std::string_view(where).substr(0, where.size() - 1), '\n'))
            writer.comment("  " + std::string(line));
    }
    if (const std::string weakest = demand::trust_words(limit.evidence); !weakest.empty())
        writer.comment("  " + weakest);
}

void write_identity(TomlWriter& writer, const demand::Identity& identity) {
    writer.table("identity");
    FieldWriter fields(writer);
    visit_identity(fields, identity);
    if (!identity.date.empty()) fields.field("date", DateText{identity.date}, kAny, "of issue");
}

void write_space(TomlWriter& writer, const record::PlungerFile& plunger) {
    if (plunger.space) {
        writer.table("space");
        FieldWriter fields(writer);
        visit_space(fields, *plunger.space);
        return;
    }
    writer.comment("");
    writer.comment("[space]  to be filled in: the two heights differ by the stroke, " +
                   quantity_text(units::dimension_of<Length>(), in_mm(plunger.plunger.stroke)));
    writer.comment("bore               = \"9.00 mm .. 9.05 mm\"");
    writer.comment("seated_height      = \"15.00 mm\"");
    writer.comment("full_travel_height = \"9.00 mm\"");
    writer.comment("seats              = \"slides\"");
}

void write_load(TomlWriter& writer, const demand::Budget& budget) {
    writer.table("load");
    writer.comment("Worked out for all corners of what the plunger file states, and rounded inwards.");
    for (const demand::BudgetLimit& limit : budget.limits)
        if (limit.bites) remark(writer, limit);
    FieldWriter fields(writer);
    fields.field("seated", budget.seated_rounded, kNotNegative, "");
    fields.field("full_travel", budget.full_travel_rounded, kNotNegative, "");
}

void write_surroundings(TomlWriter& writer, const std::optional<demand::Surroundings>& surroundings) {
    if (surroundings) {
        writer.table("surroundings");
        FieldWriter fields(writer);
        visit_surroundings(fields, *surroundings);
        return;
    }
    writer.comment("");
    writer.comment("[surroundings]  to be filled in: where it gets hot, the spring loses load");
    writer.comment("temperature = \"120 °C\"");
}

}  // namespace

std::string write_budget_requirement(const record::PlungerFile& plunger, const demand::Budget& budget,
                                     const std::string& source) {
    TomlWriter writer;
    writer.comment("Requirement, its loads worked out by `seatload budget` from " + source + ".");
    writer.comment("Add what else is known: wire, coil, limits, order (`seatload start requirement` writes a file that shows the keys).");
    writer.comment("");
    writer.entry("format", quoted_text(kRequirementFormat));
    write_identity(writer, plunger.identity);
    write_space(writer, plunger);
    write_load(writer, budget);
    write_surroundings(writer, plunger.surroundings);
    return std::move(writer).text();
}

}  // namespace seatload::io
