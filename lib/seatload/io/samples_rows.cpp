// SPDX-License-Identifier: MIT
#include <seatload/io/samples_rows.hpp>

#include <algorithm>
#include <charconv>

#include <seatload/core/text.hpp>
#include <seatload/io/inspection_forms.hpp>
#include <seatload/io/readings_forms.hpp>

namespace seatload::io {
namespace {

using Use = SampleColumn::Use;

constexpr std::string_view kHeadingExample =
    "the first row names each column with its unit in brackets, as piece,seated_load [N],outside_diameter [mm]";

bool is_empty(const Node& cell) {
    const auto* text = std::get_if<std::string>(&cell.value);
    return text != nullptr && trim(*text).empty();
}

/// The name of a piece: text, or a number as people count pieces.
std::string name_of(const Node& cell, const Complain& complain) {
    if (const auto* text = std::get_if<std::string>(&cell.value)) return std::string(trim(*text));
    if (const auto* number = std::get_if<std::int64_t>(&cell.value)) return std::to_string(*number);
    complain(cell.at, "wrong-kind"_id, "piece: a name or a number is wanted, this is " + std::string(kind_of(cell)),
             "");
    return {};
}

void put_value(const SampleColumn& column, const Node& cell, inspection::Values& values, const Complain& complain) {
    units::Parsed<double> read = read_measured(cell, column.kind);
    if (!read.value) {
        complain(cell.at, read.problem.id, column.name + ": " + read.problem.message, read.problem.hint);
        return;
    }
    if (*read.value < 0.0) complain(cell.at, "out-of-span"_id, column.name + ": must be zero or more", "");
    values[column.kind] = *read.value;
}

void put_shown(const SampleColumn& column, const Node& cell, inspection::Piece& piece, const Complain& complain) {
    auto read = Form<bench::ScaleReading>::read(cell);
    if (!read.value)
        complain(cell.at, read.problem.id, column.name + ": " + read.problem.message, read.problem.hint);
    else
        piece.shown[column.kind] = *read.value;
}

/// "seated_load [N]": the name, and the unit in its brackets.
std::pair<std::string, std::string> parted_heading(const std::string& text) {
    const std::size_t open = text.find_first_of("[(");
    std::string name(trim(std::string_view(text).substr(0, open)));
    if (open == std::string::npos || !(text.ends_with(']') || text.ends_with(')'))) return {name, ""};
    return {name, std::string(trim(std::string_view(text).substr(open + 1, text.size() - open - 2)))};
}

bool unit_is_right(const CsvCell& cell, SampleColumn& column, const std::string& unit, const Complain& complain) {
    if (!column.has_unit()) return true;
    const std::string example =
        column.name + " [" + (column.use == Use::shown ? "g" : std::string(inspection::unit(column.kind))) + "]";
    if (unit.empty()) {
        complain(cell.at, "column-without-unit"_id, "the column \"" + column.name + "\" has no unit",
                 "write \"" + example + '"');
        return false;
    }
    column.unit = unit;
    if (column.use == Use::shown) {
        const auto read = Form<bench::ScaleReading>::read({cell.at, "1 " + unit});
        if (!read.value)
            complain(cell.at, read.problem.id, column.name + ": " + read.problem.message, "write \"" + example + '"');
        return read.value.has_value();
    }
    const auto problem = problem_of_unit(column.kind, unit, cell.at);
    if (problem) complain(cell.at, problem->id, column.name + ": " + problem->message, "write \"" + example + '"');
    return !problem;
}

/// The cell of a CSV table as a TOML file would hold it; nothing when it is no number (then complained of).
std::optional<Node> node_of(const CsvCell& cell, const SampleColumn& column, const Complain& complain) {
    if (column.use == Use::name || column.use == Use::remark || cell.text.empty()) return Node{cell.at, cell.text};
    double value = 0.0;
    const char* const end = cell.text.data() + cell.text.size();
    const auto [stop, fault] = std::from_chars(cell.text.data(), end, value);
    if (fault == std::errc{} && stop == end) {
        if (column.has_unit()) return Node{cell.at, cell.text + ' ' + column.unit};
        return Node{cell.at, value};
    }
    complain(cell.at, "not-a-number"_id, column.name + ": no plain number",
             fault == std::errc{} && *stop == ',' ? "numbers are written with a decimal point"
                                                  : "the unit stands in the heading alone, the number here");
    return std::nullopt;
}

std::optional<std::vector<SampleColumn>> csv_columns(const CsvRow& heading, const Complain& complain) {
    if (heading.size() == 1 && heading.front().text.find_first_of(";\t") != std::string::npos) {
        complain(heading.front().at, "not-commas"_id, "the cells are parted by semicolons or tabs, commas are wanted",
                 "save the table as CSV with commas between cells and a decimal point in numbers");
        return std::nullopt;
    }
    std::vector<std::pair<std::string, Position>> names;
    for (const CsvCell& cell : heading) names.emplace_back(parted_heading(cell.text).first, cell.at);
    auto columns = sample_columns(names, heading.front().at, complain);
    if (!columns) return std::nullopt;
    bool right = true;
    for (std::size_t i = 0; i < heading.size(); ++i)
        right = unit_is_right(heading[i], (*columns)[i], parted_heading(heading[i].text).second, complain) && right;
    if (!right) return std::nullopt;
    return columns;
}

}  // namespace

std::optional<std::vector<SampleColumn>> sample_columns(const std::vector<std::pair<std::string, Position>>& names,
                                                        Position at, const Complain& complain) {
    std::vector<SampleColumn> columns;
    bool right = true;
    for (const auto& [name, place] : names) {
        const auto column = sample_column(name);
        if (!column) complain(place, "unknown-column"_id, "unknown column \"" + name + '"', sample_column_hint(name));
        const bool twice =
            column && column->use != Use::remark && std::find(columns.begin(), columns.end(), *column) != columns.end();
        if (twice)
            complain(place, "column-twice"_id, "the column \"" + name + "\" stands here a second time",
                     "keep one of the two");
        right = right && column && !twice;
        columns.push_back(column.value_or(SampleColumn{}));
    }
    if (!right) return std::nullopt;
    const auto has = [&](Use use) {
        return std::any_of(columns.begin(), columns.end(), [&](const SampleColumn& c) { return c.use == use; });
    };
    if (!has(Use::name))
        complain(at, "column-missing"_id, "a column \"piece\" is wanted: a name or number for each", "");
    if (!has(Use::value) && !has(Use::shown))
        complain(at, "column-missing"_id, "a column with something measured is wanted", sample_column_hint(""));
    if (!has(Use::name) || (!has(Use::value) && !has(Use::shown))) return std::nullopt;
    return columns;
}

inspection::Piece piece_of(const std::vector<SampleColumn>& columns, const std::vector<Node>& cells,
                           const Complain& complain) {
    inspection::Piece piece;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const SampleColumn& column = columns[i];
        if (column.use == Use::remark || (column.use != Use::name && is_empty(cells[i]))) continue;
        if (column.use == Use::name) piece.name = name_of(cells[i], complain);
        if (column.use == Use::value) put_value(column, cells[i], piece.values, complain);
        if (column.use == Use::after) put_value(column, cells[i], piece.after, complain);
        if (column.use == Use::shown) put_shown(column, cells[i], piece, complain);
    }
    return piece;
}

std::vector<inspection::Piece> csv_pieces(CsvText& csv, std::vector<SampleColumn>& columns,
                                          std::vector<Position>& places) {
    std::vector<inspection::Piece> pieces;
    const Complain complain = [&](Position at, DiagnosticId id, std::string message, std::string hint) {
        csv.error(at, id, std::move(message), std::move(hint));
    };
    if (!csv.is_readable()) return pieces;
    if (csv.rows().empty()) {
        csv.error({1, 1}, "empty"_id, "the table is empty", std::string(kHeadingExample));
        return pieces;
    }
    const auto found = csv_columns(csv.rows().front(), complain);
    if (!found) return pieces;
    columns = *found;
    for (std::size_t r = 1; r < csv.rows().size(); ++r) {
        const CsvRow& row = csv.rows()[r];
        if (row.size() != columns.size()) {
            csv.error(row.front().at, "row-length"_id,
                      "this row has " + std::to_string(row.size()) + (row.size() == 1 ? " cell" : " cells") +
                          ", the heading has " + std::to_string(columns.size()),
                      "a cell that is left empty still needs its comma; numbers have a decimal point");
            continue;
        }
        std::vector<Node> cells;
        for (std::size_t c = 0; c < columns.size(); ++c)
            cells.push_back(node_of(row[c], columns[c], complain).value_or(Node{row[c].at, std::string{}}));
        pieces.push_back(piece_of(columns, cells, complain));
        places.push_back(row.front().at);
    }
    return pieces;
}

}  // namespace seatload::io
