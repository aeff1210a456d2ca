// SPDX-License-Identifier: MIT
#include <seatload/io/wire_grade.hpp>

#include <limits>

#include <seatload/core/text.hpp>
#include <seatload/io/wire_words.hpp>
#include <seatload/units/format.hpp>

namespace seatload::io {
namespace {

// Wide enough for any spring wire, narrow enough to catch a slip of the unit.
constexpr Span kWireDiameter{0.01, 50.0, false, "a wire diameter from 0.01 mm to 50 mm"};
constexpr Span kStrength{100.0, 6000.0, false, "a tensile strength from 100 MPa to 6000 MPa"};
constexpr Span kModulus{1e4, 5e5, false, "a modulus from 10 GPa to 500 GPa"};
constexpr Span kDensity{1e-9, 2.5e-8, false, "a density from 1000 kg/m3 to 25000 kg/m3"};
constexpr Span kExponent{0.0, 1.0, false, "an exponent from 0 to 1"};

const Length kNoLimit = Length::from_value(std::numeric_limits<double>::infinity());

/// The end of a row that may be left open.
struct UpTo {
    Length diameter;
};

/// A strength that may be absent, written "-".
struct StrengthOrDash {
    std::optional<Stress> strength;
};

}  // namespace

template <>
struct Form<UpTo> {
    static units::Parsed<UpTo> read(const Node& node) {
        if (const auto* text = std::get_if<std::string>(&node.value); text != nullptr && *text == "over")
            return {UpTo{kNoLimit}, {}};
        units::Parsed<Length> length = Form<Length>::read(node);
        if (!length.value) return {std::nullopt, std::move(length.problem)};
        return {UpTo{*length.value}, {}};
    }
    static std::vector<double> numbers(const UpTo&) { return {}; }
};

template <>
struct Form<StrengthOrDash> {
    static units::Parsed<StrengthOrDash> read(const Node& node) {
        if (const auto* text = std::get_if<std::string>(&node.value); text != nullptr && *text == "-")
            return {StrengthOrDash{}, {}};
        units::Parsed<Stress> strength = Form<Stress>::read(node);
        if (!strength.value) return {std::nullopt, std::move(strength.problem)};
        return {StrengthOrDash{strength.value}, {}};
    }
    static std::vector<double> numbers(const StrengthOrDash& s) {
        return s.strength ? std::vector<double>{in_mpa(*s.strength)} : std::vector<double>{};
    }
};

namespace {

wire::StrengthRow read_row(RowReader& row, Document& document) {
    wire::StrengthRow result;
    result.diameter = row.need<Length>(0, "diameter", kWireDiameter);
    result.minimum = row.need<Stress>(1, "minimum strength", kStrength);
    result.maximum = row.find<StrengthOrDash>(2, "maximum strength", kStrength).value_or(StrengthOrDash{}).strength;
    result.evidence = row.find<wire::Evidence>(3, "evidence").value_or(wire::Evidence::given);
    row.expect_at_most(4);
    if (result.maximum && in_mpa(result.minimum) > 0.0 && *result.maximum < result.minimum)
        document.error(row.at(), "upside-down"_id, "the minimum strength is above the maximum",
                       "write the row as [diameter, minimum, maximum, evidence]");
    return result;
}

wire::Strength read_table(Reader& table) {
    wire::StrengthTable result;
    result.lookup = table.need<wire::StrengthLookup>("lookup", "\"next larger\"");
    for (RowReader& row : table.rows("rows")) {
        const wire::StrengthRow next = read_row(row, table.document());
        const bool both_read = !result.rows.empty() && in_mm(next.diameter) > 0.0;
        if (both_read && next.diameter <= result.rows.back().diameter)
            table.document().error(row.at(), "rows-not-rising"_id,
                                   "the rows must rise in diameter, each size once; this one follows " +
                                       units::shown_wire(result.rows.back().diameter));
        result.rows.push_back(next);
    }
    if (result.rows.empty()) {
        table.error("rows", "too-few-rows"_id, "a strength table needs at least one row",
                    "write for example rows = [[\"0.80 mm\", \"2050 MPa\", \"2300 MPa\"]]");
        return result;
    }
    result.smallest = result.rows.front().diameter;
    if (table.set("smallest", result.smallest, kWireDiameter) && result.smallest > result.rows.front().diameter)
        table.error("smallest", "upside-down"_id, "must not be larger than the first row's diameter");
    return result;
}

struct Range {
    Length smallest;
    Length largest;
};

Range read_range(Reader& table, const units::Band<Length>& band) {
    if (!band.at_least || !band.at_most || band.single) {
        table.error("range", "bad-range"_id, "needs both ends", "write for example range = \"0.10 mm .. 6.5 mm\"");
        return {};
    }
    if (*band.at_least > *band.at_most) table.error("range", "upside-down"_id, "the first end must be the smaller");
    return {*band.at_least, *band.at_most};
}

wire::Strength read_law(Reader& table) {
    wire::StrengthLaw law;
    law.a_mpa = in_mpa(table.need<Stress>("A", "\"2211 MPa\"", kStrength));
    law.exponent = table.need<double>("m", "0.145", kExponent);
    if (!table.has("range")) table.missing("range", "\"0.10 mm .. 6.5 mm\"");
    if (const auto band = table.find<units::Band<Length>>("range", kWireDiameter)) {
        const Range range = read_range(table, *band);
        law.smallest = range.smallest;
        law.largest = range.largest;
    }
    return law;
}

wire::Strength read_given(Reader& table) {
    wire::StrengthGiven given{table.need<Stress>("Rm", "\"1900 MPa\"", kStrength), {}, kNoLimit};
    if (const auto band = table.find<units::Band<Length>>("range", kWireDiameter)) {
        const Range range = read_range(table, *band);
        given.smallest = range.smallest;
        given.largest = range.largest;
    }
    return given;
}

std::vector<wire::ModuliRow> read_moduli_rows(Reader& table) {
    std::vector<wire::ModuliRow> rows;
    for (RowReader& row : table.rows("moduli")) {
        const wire::ModuliRow next{row.need<UpTo>(0, "diameter").diameter,
                                   row.need<Stress>(1, "shear modulus", kModulus),
                                   row.need<Stress>(2, "Young's modulus", kModulus)};
        row.expect_at_most(3);
        if (!rows.empty() && in_mm(next.up_to) > 0.0 && next.up_to <= rows.back().up_to)
            table.document().error(row.at(), "rows-not-rising"_id, "the rows must rise in diameter");
        rows.push_back(next);
    }
    if (rows.empty() || rows.back().up_to != kNoLimit)
        table.error("moduli", "too-few-rows"_id, "the last row must hold for all larger sizes",
                    "begin it with \"over\": [\"over\", \"80.0 GPa\", \"193 GPa\"]");
    return rows;
}

std::vector<wire::ModuliRow> read_moduli(Reader& table) {
    std::vector<wire::ModuliRow> rows;
    table.allow("moduli");  // known, so that it is suggested for a misspelt one
    if (table.has("moduli"))
        rows = read_moduli_rows(table);
    else
        rows.push_back({kNoLimit, table.need<Stress>("shear_modulus", "\"81500 MPa\"", kModulus),
                        table.need<Stress>("young_modulus", "\"206000 MPa\"", kModulus)});
    for (const wire::ModuliRow& row : rows)
        if (in_mpa(row.young) > 0.0 && row.shear >= row.young)
            table.error(table.has("moduli") ? "moduli" : "shear_modulus", "moduli-exchanged"_id,
                        "the shear modulus must be below Young's modulus", "are the two exchanged?");
    return rows;
}

std::vector<wire::Provenance> read_provenance(Reader& table) {
    std::vector<wire::Provenance> entries;
    for (RowReader& row : table.rows("provenance")) {
        entries.push_back({row.need<std::string>(0, "property"), row.need<std::string>(2, "source"),
                           row.need<wire::Evidence>(1, "evidence")});
        row.expect_at_most(3);
    }
    return entries;
}

/// The one of `things` whose name is the value of `key`, or null and a complaint.
template <class Thing, class NameOf>
const Thing* named(Reader& table, std::string_view key, const std::string& name, const std::vector<Thing>& things,
                   NameOf name_of) {
    std::vector<std::string> names;
    for (const Thing& thing : things) {
        if (name_of(thing) == name) return &thing;
        names.push_back(name_of(thing));
    }
    std::string hint = did_you_mean(name, names);
    if (hint.empty()) hint = "known here: " + join(names, "; ");
    table.error(key, "unknown-name"_id, "nothing has the name \"" + name + "\"", std::move(hint));
    return nullptr;
}

void read_tolerance(Reader& table, const wire::Catalogue& known, wire::Grade& grade) {
    const auto name = table.find<std::string>("diameter_tolerance");
    if (!name) return;
    const auto* found = named(table, "diameter_tolerance", *name, known.tolerance_tables,
                              [](const wire::ToleranceTable& t) { return t.id; });
    if (found == nullptr) return;
    grade.diameter_tolerance = found->rows;
    wire::Evidence evidence = wire::Evidence::given;
    for (const wire::ToleranceRow& row : found->rows) evidence = weaker(evidence, row.evidence);
    grade.provenance.push_back({"diameter tolerance", found->source, evidence});
}

/// `key = { row = "...", analogy = "..." }`: the row, with the analogy filled in, and its provenance.
template <class Thing>
std::optional<Thing> read_row_of(Reader& table, std::string_view key, std::string_view property,
                                 const std::vector<Thing>& rows, wire::Grade& grade) {
    auto reference = table.table(key);
    if (!reference) return std::nullopt;
    const auto name = reference->need<std::string>("row", "\"A228 / SH / DH\"");
    const auto analogy = reference->find<std::string>("analogy");
    if (!reference->has("row")) return std::nullopt;
    const Thing* found = named(*reference, "row", name, rows, [](const Thing& row) { return row.material; });
    if (found == nullptr) return std::nullopt;
    Thing result = *found;
    result.analogy = analogy.value_or("");
    std::string source = result.source + " (row " + result.material + ")";
    if (analogy) source += "; " + *analogy;
    grade.provenance.push_back({std::string(property), std::move(source), result.evidence});
    return result;
}

}  // namespace

wire::Strength read_strength(Reader& table) {
    if (table.has("A") || table.has("m")) return read_law(table);
    if (table.has("Rm")) return read_given(table);
    return read_table(table);
}

wire::Grade read_grade(Reader& table, const wire::Catalogue& known) {
    wire::Grade grade;
    grade.id = table.need<std::string>("id", "\"our-wire\"");
    if (table.has("id") && trim(grade.id).empty()) table.error("id", "empty"_id, "must not be empty");
    table.set("standard", grade.standard);
    table.set("designation", grade.designation);
    table.set("supplied_as", grade.supplied_as);
    if (auto supplied = table.table("supplied_strength")) {
        const Stress least = supplied->need<Stress>("Rm", "\"1310 MPa\"", kStrength);
        wire::Evidence evidence = wire::Evidence::given;
        supplied->set("evidence", evidence);
        grade.supplied_strength = std::pair(least, evidence);
    }
    grade.family = table.need<wire::Family>("family", "\"cold-drawn carbon\"");
    if (!table.set("family_text", grade.family_text)) grade.family_text = Form<wire::Family>::text(grade.family);
    table.set("material_number", grade.material_number);
    grade.provenance = read_provenance(table);
    grade.moduli = read_moduli(table);
    grade.density = table.need<Density>("density", "\"7850 kg/m3\"", kDensity);
    grade.shear_modulus_loss_per_kelvin =
        table.need<Share>("shear_modulus_loss_per_100_kelvin", "\"2.5 %\"", kShare).value / 100.0;
    grade.service_limit = table.need<Celsius>("service_limit", "\"120 °C\"", kTemperature);
    table.set("static_duty_only", grade.static_duty_only);
    table.set("relative_cost", grade.relative_cost, kPositive);
    read_tolerance(table, known, grade);
    grade.load_loss = read_row_of(table, "load_loss", "load loss", known.load_loss_guides, grade);
    grade.stress_relief = read_row_of(table, "stress_relief", "stress relief", known.stress_reliefs, grade);
    table.set("note", grade.note);
    if (auto strength = table.need_table("strength", "Rm = \"1900 MPa\"")) grade.strength = read_strength(*strength);
    return grade;
}

}  // namespace seatload::io
