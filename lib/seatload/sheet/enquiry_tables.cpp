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
constexpr double kNameWidth = 38.0;
constexpr double kWritingHeight = 9.0;

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

}  // namespace

bool Comparison::is_common() const {
    return std::all_of(values.begin(), values.end(), [&](const std::string& value) { return value == values.front(); });
}

std::vector<Comparison> comparisons(std::span<const Facts> alternatives) {
    std::vector<Comparison> out;
    const auto row = [&](const std::string& name, auto value_of) {
        Comparison comparison{name, {}};
        for (const Facts& facts : alternatives) comparison.values.push_back(value_of(facts));
        out.push_back(std::move(comparison));
    };
    const auto marked = [](bool adjustable, const std::string& value) { return adjustable ? reference(value) : value; };
    row("wire", [](const Facts& f) { return wire_name(f.grade); });
    row("wire diameter d", [&](const Facts& f) {
        return marked(f.wire_is_adjustable(), wire_number(f.spec.spring.wire_diameter) + " mm");
    });
    row("coil diameter", [&](const Facts& f) {
        return coil_symbol(f) + " " + marked(f.diameter_is_adjustable(), coil_diameter(f) + " mm");
    });
    row("total coils " + symbol("n", "t"),
        [](const Facts& f) { return reference(trimmed(f.spec.spring.total_coils, 2)); });
    row("free length " + symbol("L", "0"), [&](const Facts& f) {
        return marked(f.may_adjust(record::Adjustable::free_length), number(f.spec.spring.free_length) + " mm");
    });
    row("ends", [](const Facts& f) { return std::string(spring::word(f.spec.spring.ends)); });
    row("hand of coiling", [](const Facts& f) { return std::string(spring::word(f.spec.spring.hand)); });
    const auto add_load = [&](record::LoadAtLength record::Spec::*load, std::string_view index) {
        const LoadRow named = load_row(alternatives, load, index);
        row(named.name, [&](const Facts& f) {
            const std::string value = toleranced(f.spec.*load) + " N";
            return named.length_in_name ? value : value + " at " + number((f.spec.*load).length) + " mm";
        });
    };
    add_load(&record::Spec::seated, "1");
    add_load(&record::Spec::full_travel, "2");
    row("load tolerances correspond to", [](const Facts& f) { return load_grades(f.spec); });
    row("rate R", [](const Facts& f) { return reference(significant(in_newton_per_mm(f.values.rate), 4) + " N/mm"); });
    row("solid length " + symbol("L", "c") + " at most",
        [](const Facts& f) { return reference(trimmed(in_mm(f.values.solid_length), 2) + " mm"); });
    row("finish",
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
            table.rows.push_back({comparison.name});
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
            words += (words.empty() ? "" : "; ") + comparison.name + " " + comparison.values.front();
    return words;
}

RuledTable reply_table(std::span<const Facts> alternatives, double width) {
    RuledTable table;
    table.widths = {14.0, 26.0, 26.0, 24.0, 30.0};
    double rest = width;
    for (const double w : table.widths) rest -= w;
    table.widths.push_back(rest);
    table.least_row_height = kWritingHeight;
    table.rows.push_back({"alt.", "price a piece", "tooling", "lead time", "wire you hold", "changes you ask for"});
    for (std::size_t i = 0; i < alternatives.size(); ++i)
        table.rows.push_back({letter(alternatives, i), "", "", "", "", ""});
    return table;
}

}  // namespace seatload::sheet
