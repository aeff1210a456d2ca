// SPDX-License-Identifier: MIT
#include <seatload/sheet/enquiry_tables.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

constexpr std::size_t kColumns = 5;  ///< alternatives side by side on upright A4
constexpr double kNameWidth = 42.0;
constexpr double kWritingHeight = 9.0;    ///< of a row for a number written by hand
constexpr double kSentenceHeight = 15.0;  ///< for two lines written by hand

/// The load's name, with its length when that is the same in all alternatives; else the length goes with each value.
struct LoadRow {
    std::string name;
    bool length_in_name;
};

LoadRow load_row(std::span<const Facts> alternatives, record::LoadAtLength record::Spec::*load,
                 std::string_view index) {
    const Length length = (alternatives.front().spec.*load).length;
    const bool alike = std::all_of(alternatives.begin(), alternatives.end(),
                                   [&](const Facts& f) { return (f.spec.*load).length == length; });
    const std::string name = "load " + symbol("F", index);
    return alike ? LoadRow{name + " at " + number(length) + " mm", true} : LoadRow{name, false};
}

/// Whether the same coil diameter, De or Di, rules in all.
bool rule_alike(std::span<const Facts> alternatives) {
    return std::all_of(alternatives.begin(), alternatives.end(),
                       [&](const Facts& f) { return f.spec.bore_rules == alternatives.front().spec.bore_rules; });
}

std::string coil_name(std::span<const Facts> alternatives) {
    if (!rule_alike(alternatives)) return "coil diameter";
    const Facts& f = alternatives.front();
    return std::string(f.spec.bore_rules ? "outside " : "inside ") + coil_symbol(f);
}

RuledTable form(std::span<const Facts> alternatives, double width, std::vector<std::string> heads,
                std::vector<double> widths, double row_height) {
    RuledTable table;
    double rest = width;
    for (const double w : widths) rest -= w;
    widths.push_back(rest);
    table.widths = std::move(widths);
    table.least_row_height = row_height;
    table.rows.push_back(std::move(heads));
    for (std::size_t i = 0; i < alternatives.size(); ++i) {
        table.rows.emplace_back(table.widths.size());
        table.rows.back().front() = letter(alternatives, i);
    }
    return table;
}

}  // namespace

bool Comparison::is_common() const {
    return std::all_of(values.begin(), values.end(), [&](const std::string& value) { return value == values.front(); });
}

std::vector<Comparison> comparisons(std::span<const Facts> alternatives) {
    std::vector<Comparison> out;
    const auto row = [&](const std::string& name, const std::string& unit, auto value_of) {
        Comparison comparison{name, unit, {}};
        for (const Facts& facts : alternatives) comparison.values.push_back(value_of(facts));
        out.push_back(std::move(comparison));
    };
    const auto marked = [](bool adjustable, const std::string& value) { return adjustable ? reference(value) : value; };
    row("wire", "", [](const Facts& f) { return wire_name(f.grade); });
    row("wire diameter d", "mm",
        [&](const Facts& f) { return marked(f.wire_is_adjustable(), wire_number(f.spec.spring.wire_diameter)); });
    row(coil_name(alternatives), "mm", [&](const Facts& f) {
        const std::string value = marked(f.diameter_is_adjustable(), coil_diameter(f));
        return rule_alike(alternatives) ? value : coil_symbol(f) + " " + value;
    });
    row("total coils " + symbol("n", "t"), "",
        [](const Facts& f) { return reference(trimmed(f.spec.spring.total_coils, 2)); });
    row("free length " + symbol("L", "0"), "mm", [&](const Facts& f) {
        return marked(f.may_adjust(record::Adjustable::free_length), number(f.spec.spring.free_length));
    });
    row("ends", "", [](const Facts& f) { return ends(f.spec.spring); });
    row("hand of coiling", "", [](const Facts& f) { return std::string(spring::word(f.spec.spring.hand)); });
    const auto add_load = [&](record::LoadAtLength record::Spec::*load, std::string_view index) {
        const LoadRow named = load_row(alternatives, load, index);
        row(named.name, "N", [&](const Facts& f) {
            const std::string value = toleranced(f.spec.*load);
            return named.length_in_name ? value : value + " at " + number((f.spec.*load).length) + " mm";
        });
    };
    add_load(&record::Spec::seated, "1");
    add_load(&record::Spec::full_travel, "2");
    row("loads correspond to", "", [](const Facts& f) { return reference(load_grades(f.spec)); });
    row("rate R", "N/mm", [](const Facts& f) { return reference(significant(in_newton_per_mm(f.values.rate), 4)); });
    row("solid " + symbol("L", "c") + " at most", "mm",
        [](const Facts& f) { return reference(trimmed(in_mm(f.values.solid_length), 2)); });
    row("wire a piece", "mm", [](const Facts& f) { return reference(significant(in_mm(f.values.wire_length), 3)); });
    row("finish", "",
        [](const Facts& f) { return f.spec.finish.empty() ? std::string("(none, lightly oiled)") : f.spec.finish; });
    return out;
}

std::string letter(std::span<const Facts> alternatives, std::size_t index) {
    const std::string& given = alternatives[index].spec.alternative;
    return given.empty() ? std::to_string(index + 1) : given;
}

std::vector<RuledTable> comparison_tables(std::span<const Facts> alternatives, double width) {
    const std::vector<Comparison> all = comparisons(alternatives);
    std::vector<RuledTable> tables;
    for (std::size_t first = 0; first < alternatives.size(); first += kColumns) {
        const std::size_t count = std::min(kColumns, alternatives.size() - first);
        RuledTable table;
        table.widths.assign(count + 1, (width - kNameWidth) / static_cast<double>(std::max<std::size_t>(count, 3)));
        table.widths[0] = kNameWidth;
        table.rows.push_back({"alternative"});
        for (std::size_t i = 0; i < count; ++i) table.rows[0].push_back(letter(alternatives, first + i));
        for (const Comparison& comparison : all) {
            if (alternatives.size() > 1 && comparison.is_common()) continue;
            table.rows.push_back(
                {comparison.unit.empty() ? comparison.name : comparison.name + " [" + comparison.unit + "]"});
            for (std::size_t i = 0; i < count; ++i) table.rows.back().push_back(comparison.values[first + i]);
        }
        tables.push_back(std::move(table));
    }
    return tables;
}

std::string common_words(std::span<const Facts> alternatives) {
    std::string words;
    if (alternatives.size() < 2) return words;
    for (const Comparison& comparison : comparisons(alternatives))
        if (comparison.is_common())
            words += (words.empty() ? "" : "; ") + comparison.name + " " + comparison.values.front() +
                     (comparison.unit.empty() ? "" : "\u00a0" + comparison.unit);
    return words;
}

RuledTable price_table(std::span<const Facts> alternatives, double width) {
    return form(alternatives, width, {"alt.", "price a piece", "tooling", "lead time", "remarks"},
                {14.0, 36.0, 36.0, 36.0}, kWritingHeight);
}

RuledTable change_table(std::span<const Facts> alternatives, double width) {
    return form(alternatives, width,
                {"alt.", "wire you hold: grade, d", "its " + symbol("R", "m"), "changes you ask for"},
                {14.0, 48.0, 24.0}, kSentenceHeight);
}

}  // namespace seatload::sheet
