// SPDX-License-Identifier: MIT
#include <seatload/io/readings_csv.hpp>

#include <algorithm>
#include <array>
#include <charconv>

#include <seatload/core/text.hpp>
#include <seatload/io/readings_forms.hpp>
#include <seatload/io/span.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kHeaderExample =
    "the first row names each column with its unit in brackets, as height [mm],scale [g]";

/// A column of the table: what it holds and in which unit.
struct Header {
    Column column = Column::remark;
    std::string unit;
};

bool has_unit(Column column) { return column == Column::height || column == Column::travel || column == Column::scale; }

/// Whether a column is named after what people take the scale to show.
bool is_called_otherwise(const std::string& name) {
    static constexpr std::array<std::string_view, 6> kNames{"weight", "mass", "load", "force", "reading", "grams"};
    return std::find(kNames.begin(), kNames.end(), lower(name)) != kNames.end();
}

/// A value of a column as a node, so that it is read as the same value in a TOML file is.
Node node_of(const std::string& number, const std::string& unit, Position at) {
    return {at, unit.empty() ? number : number + ' ' + unit};
}

/// What is wrong with a unit for a column.
std::optional<units::Problem> problem_of_unit(Column column, const std::string& unit) {
    const Node one = node_of("1", unit, {});
    if (column == Column::scale) {
        auto read = Form<bench::ScaleReading>::read(one);
        if (!read.value) return std::move(read.problem);
    } else {
        auto read = Form<Length>::read(one);
        if (!read.value) return std::move(read.problem);
    }
    return std::nullopt;
}

/// Reads the header and the rows of a table.
class TableReader {
  public:
    explicit TableReader(CsvText& csv) : csv_(csv) {}

    void read(std::vector<bench::Reading>& readings, std::vector<Position>& places) {
        if (csv_.rows().empty()) {
            csv_.error({1, 1}, "empty"_id, "the table is empty", std::string(kHeaderExample));
            return;
        }
        if (!read_header()) return;
        for (std::size_t i = 1; i < csv_.rows().size(); ++i) {
            const CsvRow& row = csv_.rows()[i];
            if (!has_right_width(row)) continue;
            readings.push_back(reading_of(row));
            places.push_back(row.front().at);
        }
    }

  private:
    bool read_header() {
        const CsvRow& row = csv_.rows().front();
        if (!looks_like_header(row)) return false;
        for (const CsvCell& cell : row) headers_.push_back(header_of(cell));
        if (csv_.has_error()) return false;
        std::vector<Column> columns;
        for (const Header& header : headers_) columns.push_back(header.column);
        if (const std::string lacking = lacking_columns(columns); !lacking.empty())
            csv_.error(row.front().at, "column-missing"_id, lacking, std::string(kHeaderExample));
        return !csv_.has_error();
    }

    bool looks_like_header(const CsvRow& row) {
        const CsvCell& first = row.front();
        const std::size_t other = first.text.find_first_of(";\t");
        if (row.size() == 1 && other != std::string::npos) {
            const bool is_tab = first.text[other] == '\t';
            const auto before = static_cast<unsigned>(length_in_code_points(first.text.substr(0, other)));
            csv_.error(
                {first.at.line, first.at.column + before}, "not-commas"_id,
                std::string("the cells are parted by ") + (is_tab ? "tabs" : "semicolons") + ", commas are wanted",
                "save the table as CSV with commas between cells and a decimal point in numbers");
            return false;
        }
        double number = 0.0;
        const char* const end = first.text.data() + first.text.size();
        if (std::from_chars(first.text.data(), end, number).ec != std::errc{}) return true;
        csv_.error(first.at, "no-header"_id, "the table has no header", std::string(kHeaderExample));
        return false;
    }

    /// A column by its name and unit: "height [mm]"; round brackets serve too.
    Header header_of(const CsvCell& cell) {
        const std::size_t open = cell.text.find_first_of("[(");
        const std::string name(trim(std::string_view(cell.text).substr(0, open)));
        const auto column = Form<Column>::read({cell.at, name});
        if (!column.value) {
            csv_.error(cell.at, "unknown-column"_id, "unknown column \"" + name + '"',
                       is_called_otherwise(name) ? "what the scale shows stands in a column \"scale\", as scale [g]"
                                                 : column.problem.hint);
            return {};
        }
        for (const Header& before : headers_)
            if (before.column == *column.value && *column.value != Column::remark)
                csv_.error(cell.at, "column-twice"_id, "the column \"" + name + "\" stands here a second time",
                           "keep one of the two");
        Header header{*column.value, {}};
        if (!has_unit(header.column)) return header;
        read_unit(cell, name, open, header);
        return header;
    }

    void read_unit(const CsvCell& cell, const std::string& name, std::size_t open, Header& header) {
        const std::string example = header.column == Column::scale ? "g" : "mm";
        if (open == std::string::npos || !(cell.text.ends_with(']') || cell.text.ends_with(')'))) {
            csv_.error(cell.at, "column-without-unit"_id, "the column \"" + name + "\" has no unit",
                       "write \"" + name + " [" + example + "]\"");
            return;
        }
        header.unit = trim(std::string_view(cell.text).substr(open + 1, cell.text.size() - open - 2));
        const auto problem = problem_of_unit(header.column, header.unit);
        if (!problem) return;
        const auto before = static_cast<unsigned>(length_in_code_points(cell.text.substr(0, open + 1)));
        csv_.error({cell.at.line, cell.at.column + before}, problem->id, name + ": " + problem->message,
                   "write for example \"" + name + " [" + example + "]\"");
    }

    static bool has_other_comma(const CsvRow& row) {
        return row.front().text.find_first_of(";\t") != std::string::npos;
    }

    bool has_right_width(const CsvRow& row) {
        if (row.size() == headers_.size()) return true;
        const bool is_long = row.size() > headers_.size();
        csv_.error(row.front().at, "row-length"_id,
                   "this row has " + std::to_string(row.size()) + (row.size() == 1 ? " cell" : " cells") +
                       ", the header has " + std::to_string(headers_.size()),
                   is_long                ? "numbers are written with a decimal point; commas part the cells"
                   : has_other_comma(row) ? "commas part the cells"
                                          : "a cell that is left empty still needs its comma");
        return false;
    }

    bench::Reading reading_of(const CsvRow& row) {
        bench::Reading reading;
        for (std::size_t c = 0; c < headers_.size(); ++c) {
            const CsvCell& cell = row[c];
            switch (headers_[c].column) {
                case Column::height:
                    reading.height = value_of<Length>(cell, headers_[c], kSize);
                    break;
                case Column::travel:
                    reading.travel = value_of<Length>(cell, headers_[c], kAny);
                    break;
                case Column::scale:
                    reading.scale =
                        value_of<bench::ScaleReading>(cell, headers_[c], kAny).value_or(bench::ScaleReading{});
                    break;
                case Column::direction:
                    reading.unloading = is_unloading(cell);
                    break;
                case Column::remark:
                    break;
            }
        }
        return reading;
    }

    template <class T>
    std::optional<T> value_of(const CsvCell& cell, const Header& header, const Span& span) {
        const std::string name(Form<Column>::text(header.column));
        if (!is_number(cell, name)) return std::nullopt;
        units::Parsed<T> value = Form<T>::read(node_of(cell.text, header.unit, cell.at));
        if (!value.value) {
            csv_.error(cell.at, value.problem.id, name + ": " + value.problem.message);
            return std::nullopt;
        }
        for (const double number : Form<T>::numbers(*value.value))
            if (!span.has(number)) csv_.error(cell.at, "out-of-span"_id, name + ": must be " + std::string(span.text));
        return value.value;
    }

    /// Complains of a cell that is no plain number.
    bool is_number(const CsvCell& cell, const std::string& name) {
        double value = 0.0;
        const char* const end = cell.text.data() + cell.text.size();
        const auto [stop, error] = std::from_chars(cell.text.data(), end, value);
        if (error == std::errc{} && stop == end) return true;
        if (cell.text.empty()) {
            csv_.error(cell.at, "empty-cell"_id, name + ": the cell is empty",
                       "give the reading, or take the whole row out");
        } else if (error == std::errc{} && *stop == ',') {
            std::string mended = cell.text;
            mended[mended.find(',')] = '.';
            csv_.error(cell.at, "decimal-comma"_id, name + ": decimal comma", "write a decimal point: " + mended);
        } else if (error == std::errc{}) {
            csv_.error(cell.at, "unit-misplaced"_id, name + ": there is more than a number here",
                       "the unit stands in the header alone");
        } else {
            csv_.error(cell.at, "not-a-number"_id, name + ": no number",
                       "the unit stands in the header alone, the number here");
        }
        return false;
    }

    bool is_unloading(const CsvCell& cell) {
        if (cell.text.empty()) return false;
        const auto direction = Form<Direction>::read({cell.at, cell.text});
        if (!direction.value)
            csv_.error(cell.at, direction.problem.id, "direction: " + direction.problem.message,
                       direction.problem.hint);
        return direction.value == Direction::unloading;
    }

    CsvText& csv_;
    std::vector<Header> headers_;
};

}  // namespace

std::string lacking_columns(const std::vector<Column>& columns) {
    const auto has = [&](Column column) { return std::find(columns.begin(), columns.end(), column) != columns.end(); };
    if (!has(Column::scale)) return "a column \"scale\" is wanted: what the scale shows";
    if (!has(Column::height) && !has(Column::travel))
        return "a column \"height\" or \"travel\" is wanted: how far the spring is pressed";
    return {};
}

std::string column_list(const std::vector<Column>& columns) {
    std::string list;
    for (const Column column : columns) list += (list.empty() ? "" : ", ") + std::string(Form<Column>::text(column));
    return list;
}

void read_csv_readings(CsvText& csv, std::vector<bench::Reading>& readings, std::vector<Position>& places) {
    if (!csv.is_readable()) return;
    TableReader(csv).read(readings, places);
}

}  // namespace seatload::io
