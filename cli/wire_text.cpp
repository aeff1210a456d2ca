// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

#include <cli/text_wrap.hpp>
#include <cli/wire_view.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kNameColumn = 24;  // grade ids and property names
constexpr const char* kMarks = "Marks: none = standard seen, f = fit, m = memory, e = estimate, o = your own.";

/// A name in the first column and a text beside it.
std::string line(const std::string& name, const std::string& text, int width) {
    return wrapped(padded(name, kNameColumn), text, width, kNameColumn);
}

const char* mark(wire::Evidence evidence) {
    switch (evidence) {
        case wire::Evidence::standard:
            return "";
        case wire::Evidence::fit:
            return "f";
        case wire::Evidence::memory:
            return "m";
        case wire::Evidence::estimate:
            return "e";
        case wire::Evidence::given:
            return "o";
    }
    return "";
}

std::string marked(const std::string& text, wire::Evidence evidence) {
    const std::string letter = mark(evidence);
    return letter.empty() ? text : text + ' ' + letter;
}

std::string mpa(Stress stress) { return fixed(in_mpa(stress), 0); }

std::string strength_text(const wire::StrengthAt& strength) {
    const std::string upper = strength.maximum ? "-" + mpa(*strength.maximum) : " min";
    return marked(mpa(strength.minimum) + upper, strength.evidence);
}

std::string two_decimals(Length length) { return fixed(in_mm(length), 2); }

std::string size_range(const wire::Grade& grade) {
    const wire::DiameterRange range = wire::strength_range(grade);
    if (std::isinf(in_mm(range.largest))) return "any";
    return two_decimals(range.smallest) + "-" + two_decimals(range.largest);
}

/// The minimum strengths at the largest and at the smallest size.
std::string strength_range_text(const wire::Grade& grade) {
    if (const auto* given = std::get_if<wire::StrengthGiven>(&grade.strength)) return mpa(given->minimum);
    const wire::DiameterRange range = wire::strength_range(grade);
    const auto thick = wire::strength_at(grade, range.largest);
    const auto thin = wire::strength_at(grade, range.smallest);
    if (thick->minimum == thin->minimum) return mpa(thin->minimum);
    return mpa(thick->minimum) + "-" + mpa(thin->minimum);
}

std::string shear_range(const wire::Grade& grade) {
    const std::string first = mpa(grade.moduli.front().shear);
    return grade.moduli.size() == 1 ? first : mpa(grade.moduli.back().shear) + "+";
}

/// How many strength rows stand on what: "seen 35, f 16, m 1".
std::string evidence_summary(const wire::Grade& grade) {
    const auto* table = std::get_if<wire::StrengthTable>(&grade.strength);
    if (table == nullptr) return "own";
    std::array<int, 5> counts{};
    for (const wire::StrengthRow& row : table->rows) ++counts.at(static_cast<std::size_t>(row.evidence));
    constexpr std::array<const char*, 5> kNames{"seen", "f", "m", "e", "o"};
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] != 0) parts.push_back(std::string(kNames[i]) + ' ' + std::to_string(counts[i]));
    return join(parts, ", ");
}

std::string list_line(const std::string& name, const std::string& sizes, const std::string& strength,
                      const std::string& shear, const std::string& limit, const std::string& evidence) {
    return padded(name, kNameColumn) + padded(sizes, 12) + padded(strength, 11) + padded(shear, 8) + padded(limit, 7) +
           evidence + '\n';
}

std::string list_line(const wire::Grade& grade, const std::optional<Length>& diameter) {
    std::string strength = strength_range_text(grade);
    std::string evidence = evidence_summary(grade);
    std::string shear = shear_range(grade);
    if (diameter) {
        const auto at = wire::strength_at(grade, *diameter);
        strength = mpa(at->minimum) + (at->maximum ? "-" + mpa(*at->maximum) : "");
        evidence = wire::word(at->evidence);
        shear = mpa(wire::moduli_at(grade, *diameter).shear);
    }
    return list_line("  " + grade.id, size_range(grade), strength, shear, units::shown(grade.service_limit), evidence);
}

std::string heading_of(const wire::Grade& grade) { return grade.standard.empty() ? "your own" : grade.standard; }

std::string list_text(const WireView& view, int width) {
    std::string text =
        list_line("grade", "sizes mm", view.diameter ? "Rm MPa" : "min Rm MPa", "G MPa", "limit", "evidence");
    std::string heading;
    int shown = 0;
    for (const wire::Grade& grade : view.catalogue.grades) {
        if (view.diameter && !wire::strength_at(grade, *view.diameter)) continue;
        if (heading_of(grade) != heading) text += (heading = heading_of(grade)) + '\n';
        text += list_line(grade, view.diameter);
        ++shown;
    }
    text += '\n';
    if (view.diameter)
        text += wrapped("",
                        std::to_string(shown) + " of " + std::to_string(view.catalogue.grades.size()) +
                            " grades have a strength at " + units::shown_wire(*view.diameter) + ".",
                        width, 0);
    else
        text += wrapped("",
                        "Evidence counts strength rows: seen = on a page that carries the standard, f = fitted law, "
                        "m = memory, e = estimate, o = your own. A + means G differs with the size. The limit is the "
                        "highest service temperature.",
                        width, 0);
    return text;
}

std::string property_mark(const wire::Grade& grade, std::initializer_list<std::string_view> names) {
    for (const wire::Provenance& p : grade.provenance)
        for (const std::string_view name : names)
            if (p.property == name) return " (" + std::string(wire::word(p.evidence)) + ")";
    return {};
}

std::string moduli_text(const wire::Grade& grade, int width) {
    std::string text;
    Length from = 0.0 * mm;
    for (const wire::ModuliRow& row : grade.moduli) {
        std::string reach;
        if (grade.moduli.size() > 1)
            reach = std::isinf(in_mm(row.up_to)) ? "over " + units::shown_wire(from) + ": "
                                                 : "to " + units::shown_wire(row.up_to) + ": ";
        text += line(text.empty() ? "G, E at 20 °C" : "",
                     reach + mpa(row.shear) + ", " + mpa(row.young) + " MPa" +
                         (text.empty() ? property_mark(grade, {"moduli", "shear modulus"}) : ""),
                     width);
        from = row.up_to;
    }
    return text;
}

std::string load_loss_text(const wire::Grade& grade, int width) {
    if (!grade.load_loss) return line("load loss", "no guidance known", width);
    std::vector<std::string> points;
    for (const auto& [at, share] : grade.load_loss->points)
        if (share) points.push_back(units::shown(at) + " " + significant(100.0 * share->value, 3) + " %");
    std::string text =
        line("load loss", join(points, ", ") + " (" + std::string(wire::word(grade.load_loss->evidence)) + ")", width);
    text += line("",
                 grade.load_loss->basis + "; row \"" + grade.load_loss->material + "\"" +
                     (grade.load_loss->analogy.empty() ? "" : ", by analogy: " + grade.load_loss->analogy),
                 width);
    return text + line("", kLoadLossWarning, width);
}

std::string relief_text(const wire::Grade& grade, int width) {
    if (!grade.stress_relief) return line("stress relief", "not known", width);
    const wire::StressRelief& relief = *grade.stress_relief;
    std::string text =
        line("stress relief",
             relief.temperature + ", " + relief.time + " (" + std::string(wire::word(relief.evidence)) + ")", width);
    if (!relief.analogy.empty()) text += line("", "row \"" + relief.material + "\"; " + relief.analogy, width);
    return text;
}

std::string properties_text(const wire::Grade& grade, int width) {
    std::string text = line("kind", grade.family_text, width);
    if (!grade.material_number.empty()) text += line("material number", grade.material_number, width);
    text += moduli_text(grade, width);
    text += line("G falls by",
                 significant(1e4 * grade.shear_modulus_loss_per_kelvin, 3) + " % each 100 K" +
                     property_mark(grade, {"shear modulus loss"}),
                 width);
    text += line("density", significant(in_kg_per_m3(grade.density), 6) + " kg/m3" + property_mark(grade, {"density"}),
                 width);
    text += line("service limit", units::shown(grade.service_limit) + property_mark(grade, {"service limit"}), width);
    if (grade.static_duty_only) text += line("duty", "static loads only (class of its standard, memory)", width);
    const wire::TorsionalYield yield = wire::torsional_yield(grade.family);
    text += line("torsional yield",
                 significant(yield.share.value, 3) + " Rm, curvature in the stress  (" +
                     std::string(wire::word(yield.evidence)) + ")",
                 width);
    text += line("relative cost",
                 grade.relative_cost ? significant(*grade.relative_cost, 3) + "; hard-drawn wire is 1" +
                                           property_mark(grade, {"relative cost"})
                                     : "not known",
                 width);
    return text + relief_text(grade, width) + load_loss_text(grade, width);
}

std::optional<wire::Evidence> tolerance_evidence(const wire::Grade& grade, Length diameter) {
    for (const wire::ToleranceRow& row : grade.diameter_tolerance)
        if (diameter <= row.up_to + 1e-9 * mm) return row.evidence;
    return std::nullopt;
}

std::string tolerance_text(const wire::Grade& grade, Length diameter) {
    const auto tolerance = wire::diameter_tolerance_at(grade, diameter);
    if (!tolerance) return "not known";
    std::string number = fixed(in_mm(*tolerance), 4);
    if (number.back() == '0') number.pop_back();
    return marked("±" + number, *tolerance_evidence(grade, diameter));
}

/// The cells side by side, read downwards, in as many columns as the width allows.
std::string in_columns(const std::string& head, const std::vector<std::string>& cells, int width) {
    constexpr std::size_t kGap = 4;
    std::size_t widest = length_in_code_points(head);
    for (const std::string& cell : cells) widest = std::max(widest, length_in_code_points(cell));
    const auto room = static_cast<std::size_t>(std::max(width, 40)) - 2;
    const std::size_t columns =
        std::clamp<std::size_t>((room + kGap) / (widest + kGap), 1, std::max<std::size_t>(1, cells.size()));
    const std::size_t rows = (cells.size() + columns - 1) / columns;
    std::string text;
    for (std::size_t row = 0; row <= rows; ++row) {
        std::string joined = "  ";
        for (std::size_t column = 0; column < columns; ++column) {
            const std::size_t index = column * rows + row - 1;
            if (row != 0 && index >= cells.size()) continue;
            if (row == 0 && column * rows >= cells.size()) continue;
            joined += padded(row == 0 ? head : cells[index], widest + kGap);
        }
        joined.erase(joined.find_last_not_of(' ') + 1);
        text += joined + '\n';
    }
    return text;
}

std::string sizes_text(const WireView& view, int width) {
    const wire::Grade& grade = *view.grade;
    const std::vector<wire::StockSize> sizes = wire::stock_sizes(view.catalogue, grade, view.series);
    const bool is_held = !view.catalogue.holdings.empty();
    std::string text = is_held ? "Sizes held" : "Stock sizes, series \"" + view.series + "\"";
    if (!is_held) text += " (" + view.catalogue.find_series(view.series)->title + ")";
    text += "; strength: " + lookup_words(grade) + ".";
    text = wrapped("", text, width, 0);
    if (sizes.empty()) return text + "  none\n";
    std::size_t widest = 4;
    for (const wire::StockSize& size : sizes) widest = std::max(widest, length_in_code_points(size.name) + 2);
    std::vector<std::string> cells;
    for (const wire::StockSize& size : sizes)
        cells.push_back(padded(marked(size.name, size.evidence), widest + 2) +
                        padded(strength_text(*wire::strength_at(grade, size.diameter)), 13) +
                        tolerance_text(grade, size.diameter));
    return text + in_columns(padded("size", widest + 2) + padded("Rm MPa", 13) + "d ± mm", cells, width);
}

std::string at_diameter_text(const WireView& view, int width) {
    const wire::Grade& grade = *view.grade;
    const auto strength = wire::strength_at(grade, *view.diameter);
    const wire::Moduli moduli = wire::moduli_at(grade, *view.diameter);
    std::string text = line("diameter", units::shown_wire(*view.diameter), width);
    text += line("Rm minimum",
                 units::shown(strength->minimum, 0) + " (" + std::string(wire::word(strength->evidence)) + ", " +
                     lookup_words(grade) + ")",
                 width);
    if (strength->maximum) text += line("Rm maximum", units::shown(*strength->maximum, 0), width);
    text += line("G, E at 20 °C", mpa(moduli.shear) + ", " + mpa(moduli.young) + " MPa", width);
    return text + line("diameter tolerance", tolerance_text(grade, *view.diameter), width);
}

std::string provenance_text(const WireView& view, int width) {
    std::string text = "Where the numbers come from\n";
    for (const wire::Provenance& p : view.grade->provenance)
        text += wrapped("  ", p.property + ": " + std::string(wire::word(p.evidence)) + "; " + p.source, width, 4);
    const auto sources = sources_of(view.catalogue, *view.grade);
    if (!sources.empty()) text += "\nSources\n";
    for (const wire::Source* source : sources)
        text += wrapped("  ", "[" + source->key + "] " + source->title, width, 4);
    return text;
}

std::string grade_text(const WireView& view, int width) {
    const wire::Grade& grade = *view.grade;
    std::string title = grade.id;
    if (!grade.standard.empty()) title += ": " + grade.standard + ", " + grade.designation;
    std::string text = wrapped("", title, width, 4) + '\n';
    if (view.diameter) return text + at_diameter_text(view, width) + '\n' + kMarks + '\n';
    text += properties_text(grade, width) + '\n' + sizes_text(view, width) + "  " + kMarks + "\n\n";
    if (!grade.note.empty()) text += "Note\n" + wrapped("  ", grade.note, width, 2) + '\n';
    return text + provenance_text(view, width);
}

}  // namespace

std::string wire_text(const WireView& view, int width) {
    return view.grade == nullptr ? list_text(view, width) : grade_text(view, width);
}

}  // namespace seatload::cli
