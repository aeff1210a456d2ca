// SPDX-License-Identifier: MIT
#include <seatload/io/wire_tables.hpp>

#include <algorithm>

#include <seatload/io/wire_words.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::io {
namespace {

/// A share that may be unknown, written "-".
struct ShareOrDash {
    std::optional<Share> share;
};

/// A size as a series lists it: "0.80 mm" or ["0.090 in", "MW 32"].
struct ListedSize {
    wire::StockSize size;
};

}  // namespace

template <>
struct Form<ShareOrDash> {
    static units::Parsed<ShareOrDash> read(const Node& node) {
        if (const auto* text = std::get_if<std::string>(&node.value); text != nullptr && *text == "-")
            return {ShareOrDash{}, {}};
        units::Parsed<Share> share = Form<Share>::read(node);
        if (!share.value) return {std::nullopt, std::move(share.problem)};
        return {ShareOrDash{share.value}, {}};
    }
    static std::vector<double> numbers(const ShareOrDash& s) {
        return s.share ? std::vector<double>{s.share->value} : std::vector<double>{};
    }
};

template <>
struct Form<ListedSize> {
    static units::Parsed<ListedSize> read(const Node& node) {
        const auto* pair = std::get_if<List>(&node.value);
        if (pair == nullptr) return named(node, {});
        const auto* name = pair->size() == 2 ? std::get_if<std::string>(&pair->back().value) : nullptr;
        if (name == nullptr)
            return {std::nullopt, wrong_kind(node, "a size", "\"0.80 mm\" or [\"0.090 in\", \"MW 32\"]")};
        return named(pair->front(), *name);
    }
    static std::vector<double> numbers(const ListedSize& listed) { return {in_mm(listed.size.diameter)}; }

  private:
    static units::Parsed<ListedSize> named(const Node& node, const std::string& name) {
        units::Parsed<Length> length = Form<Length>::read(node);
        if (!length.value) return {std::nullopt, std::move(length.problem)};
        const std::string& text = std::get<std::string>(node.value);  // a length is always a text
        return {ListedSize{{*length.value, name.empty() ? text : name + " (" + text + ")"}}, {}};
    }
};

namespace {

std::vector<wire::StockSize> read_sizes(Reader& table, wire::Evidence evidence) {
    std::vector<wire::StockSize> sizes;
    for (const ListedSize& listed : table.list<ListedSize>("sizes", kPositive)) {
        if (!sizes.empty() && listed.size.diameter <= sizes.back().diameter)
            table.error("sizes", "rows-not-rising"_id,
                        "must rise; " + listed.size.name + " follows " + sizes.back().name);
        sizes.push_back(listed.size);
        sizes.back().evidence = evidence;
    }
    if (sizes.empty())
        table.error("sizes", "too-few-rows"_id, "a series needs at least one size",
                    "write for example sizes = [\"0.80 mm\"]");
    return sizes;
}

std::string range_text(const wire::DiameterRange& range) {
    return "from " + units::shown_wire(range.smallest) + " to " + units::shown_wire(range.largest);
}

/// Complains of diameters in which the grade has no strength; a grade that failed to be read has none to go by.
void expect_strengths(Reader& table, const wire::Grade& grade, const std::vector<Length>& diameters) {
    if (const auto* rows = std::get_if<wire::StrengthTable>(&grade.strength); rows != nullptr && rows->rows.empty())
        return;
    for (const Length& diameter : diameters)
        if (!wire::strength_at(grade, diameter))
            table.error("diameters", "no-strength"_id,
                        units::shown_wire(diameter) + " is outside the strengths known of " + grade.id,
                        "they go " + range_text(wire::strength_range(grade)) + " and are not extrapolated");
}

}  // namespace

wire::ToleranceTable read_tolerance_table(Reader& table) {
    wire::ToleranceTable result;
    result.id = table.need<std::string>("id", "\"EN 10270-1\"");
    table.set("source", result.source);
    for (RowReader& row : table.rows("rows")) {
        const wire::ToleranceRow next{row.need<Length>(0, "diameter", kPositive),
                                      row.need<Length>(1, "tolerance", kPositive),
                                      row.find<wire::Evidence>(2, "evidence").value_or(wire::Evidence::given)};
        row.expect_at_most(3);
        const bool both_read = !result.rows.empty() && in_mm(next.up_to) > 0.0 && in_mm(next.plus_minus) > 0.0;
        if (both_read && next.up_to <= result.rows.back().up_to)
            table.document().error(row.at(), "rows-not-rising"_id, "the rows must rise in diameter, each size once");
        if (both_read && next.plus_minus < result.rows.back().plus_minus)
            table.document().error(row.at(), "rows-not-rising"_id, "the tolerance must not fall with the diameter");
        result.rows.push_back(next);
    }
    if (result.rows.empty())
        table.error("rows", "too-few-rows"_id, "a tolerance table needs at least one row",
                    "write for example rows = [[\"1.00 mm\", \"0.015 mm\"]]");
    return result;
}

wire::LoadLossGuide read_load_loss(Reader& table) {
    wire::LoadLossGuide guide;
    guide.material = table.need<std::string>("row", "\"A228 / SH / DH\"");
    table.set("basis", guide.basis);
    table.set("source", guide.source);
    if (!table.set("evidence", guide.evidence)) guide.evidence = wire::Evidence::given;
    for (RowReader& row : table.rows("points")) {
        const auto at = row.need<Celsius>(0, "temperature", kTemperature);
        const auto share = row.need<ShareOrDash>(1, "share", kShare);
        row.expect_at_most(2);
        if (at <= (guide.points.empty() ? Celsius{20.0} : guide.points.back().first))
            table.document().error(row.at(), "rows-not-rising"_id,
                                   "the points must rise in temperature, from above 20 °C");
        guide.points.emplace_back(at, share.share);
    }
    if (guide.points.empty())
        table.error("points", "too-few-rows"_id, "guidance needs at least one point",
                    "write for example points = [[\"120 °C\", \"5 %\"]]");
    return guide;
}

wire::StressRelief read_stress_relief(Reader& table) {
    wire::StressRelief relief;
    relief.material = table.need<std::string>("row", "\"music A228\"");
    relief.temperature = table.need<std::string>("temperature", "\"260 °C\"");
    relief.time = table.need<std::string>("time", "\"30 min\"");
    table.set("source", relief.source);
    if (!table.set("evidence", relief.evidence)) relief.evidence = wire::Evidence::given;
    table.set("hardens", relief.hardens);
    return relief;
}

wire::StockSeries read_series(Reader& table) {
    wire::StockSeries series;
    series.id = table.need<std::string>("id", "\"our-rack\"");
    if (!table.set("title", series.title)) series.title = series.id;
    table.set("source", series.source);
    if (!table.set("evidence", series.evidence)) series.evidence = wire::Evidence::given;
    series.sizes = read_sizes(table, series.evidence);
    for (const Length& recalled : table.list<Length>("from_memory", kPositive)) {
        const auto size = std::find_if(series.sizes.begin(), series.sizes.end(),
                                       [&](const wire::StockSize& s) { return s.diameter == recalled; });
        if (size == series.sizes.end())
            table.error("from_memory", "unknown-name"_id, units::shown_wire(recalled) + " is not among the sizes");
        else
            size->evidence = wire::Evidence::memory;
    }
    return series;
}

wire::Source read_source(Reader& table) {
    return {table.need<std::string>("key", "\"handbook\""), table.need<std::string>("kind", "\"book\""),
            table.need<std::string>("title", "\"...\"")};
}

wire::StockHolding read_holding(Reader& table, const wire::Catalogue& known) {
    wire::StockHolding holding{table.need<std::string>("grade", "\"EN10270-1-DH\""),
                               table.list<Length>("diameters", kPositive)};
    if (!table.has("diameters"))
        table.missing("diameters", "[\"0.70 mm\", \"0.80 mm\"]");
    else if (holding.diameters.empty() && !table.document().has_error())
        table.error("diameters", "too-few-rows"_id, "a holding needs at least one diameter");
    std::vector<Length> rising = holding.diameters;
    std::sort(rising.begin(), rising.end());
    if (const auto twice = std::adjacent_find(rising.begin(), rising.end()); twice != rising.end())
        table.error("diameters", "named-twice"_id, units::shown_wire(*twice) + " is listed twice");
    if (!table.has("grade")) return holding;
    const wire::Grade* grade = known.find(holding.grade);
    if (grade == nullptr)
        table.error("grade", "unknown-grade"_id, "no wire grade is called \"" + holding.grade + "\"",
                    known.suggestion(holding.grade));
    else
        expect_strengths(table, *grade, holding.diameters);
    return holding;
}

}  // namespace seatload::io
