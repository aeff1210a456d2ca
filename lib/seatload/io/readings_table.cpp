// SPDX-License-Identifier: MIT
#include <seatload/io/readings_table.hpp>

#include <algorithm>

#include <seatload/io/readings_csv.hpp>
#include <seatload/io/readings_forms.hpp>

namespace seatload::io {
namespace {

constexpr std::size_t kNoColumn = static_cast<std::size_t>(-1);

std::size_t place_of(const std::vector<Column>& columns, Column column) {
    const auto found = std::find(columns.begin(), columns.end(), column);
    return found == columns.end() ? kNoColumn : static_cast<std::size_t>(found - columns.begin());
}

/// The order of the cells in the rows; nothing when it is wrong (then complained of).
std::optional<std::vector<Column>> columns_of(Reader& table, const std::vector<Column>& usual) {
    if (!table.has("columns")) return usual;
    const std::size_t complaints = table.document().diagnostics().size();
    const std::vector<Column> columns = table.list<Column>("columns");
    if (table.document().diagnostics().size() != complaints) return std::nullopt;
    for (const Column column : columns)
        if (std::count(columns.begin(), columns.end(), column) > 1) {
            table.error("columns", "column-twice"_id,
                        "\"" + std::string(Form<Column>::text(column)) + "\" stands here twice");
            return std::nullopt;
        }
    if (const std::string lacking = lacking_columns(columns); !lacking.empty()) {
        table.error("columns", "column-missing"_id, lacking, "write for example columns = [\"height\", \"scale\"]");
        return std::nullopt;
    }
    return columns;
}

template <class T>
std::optional<T> cell(RowReader& row, const std::vector<Column>& columns, Column column, const Span& span) {
    const std::size_t place = place_of(columns, column);
    if (place == kNoColumn) return std::nullopt;
    return row.find<T>(place, Form<Column>::text(column), span);
}

bench::Reading read_row(RowReader& row, const std::vector<Column>& columns) {
    bench::Reading reading;
    reading.height = cell<Length>(row, columns, Column::height, kSize);
    reading.travel = cell<Length>(row, columns, Column::travel, kAny);
    reading.scale = cell<bench::ScaleReading>(row, columns, Column::scale, kAny).value_or(bench::ScaleReading{});
    const bool has_column = place_of(columns, Column::direction) != kNoColumn;
    const auto direction = has_column ? cell<Direction>(row, columns, Column::direction, kAny)
                                      : row.find<Direction>(columns.size(), "direction");
    reading.unloading = direction == Direction::unloading;
    return reading;
}

void read_rows(Reader& table, std::string_view key, const std::vector<Column>& usual, PlacedReadings& found) {
    const auto columns = columns_of(table, usual);
    std::vector<RowReader> rows = table.rows(key);
    found.at = table.at(key);
    if (!columns) return;
    const bool has_direction = place_of(*columns, Column::direction) != kNoColumn;
    for (RowReader& row : rows) {
        if (row.size() < columns->size())
            row.complain("row-length"_id, "this row has " + std::to_string(row.size()) + " of " +
                                              std::to_string(columns->size()) + " cells: " + column_list(*columns));
        row.expect_at_most(columns->size() + (has_direction ? 0 : 1));
        found.readings.push_back(read_row(row, *columns));
        found.places.push_back(row.at());
    }
}

void read_csv(Reader& table, const FileOpener& open, PlacedReadings& found) {
    found.at = table.at("table");
    const auto file = find_file_beside(table, "table", open, "a table lies",
                                       "write its name alone, of plain letters and digits: \"weak_spring.csv\"");
    if (!file) return;
    found.csv = std::make_shared<CsvText>(file->text, file->path);
    read_csv_readings(*found.csv, found.readings, found.places);
    if (found.csv->has_error()) found.is_sound = false;
}

}  // namespace

PlacedReadings read_readings_table(Reader& table, std::string_view rows_key, const std::vector<Column>& usual,
                                   const FileOpener& open) {
    PlacedReadings found;
    found.at = table.at();
    const std::size_t complaints = table.document().diagnostics().size();
    const bool has_rows = table.has(rows_key);
    if (has_rows && table.has("table"))
        table.document().contradiction(table.at("table"), "given-twice"_id, "the readings are given twice",
                                       "keep one of the two", table.at(rows_key),
                                       std::string(rows_key) + " stands here");
    if (has_rows) {
        read_rows(table, rows_key, usual, found);
        table.allow("table");
    } else {
        table.allow(rows_key);
        table.allow("columns");
        read_csv(table, open, found);
    }
    if (table.document().diagnostics().size() != complaints) found.is_sound = false;
    return found;
}

}  // namespace seatload::io
