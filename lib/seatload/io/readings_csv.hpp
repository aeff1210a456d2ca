// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/bench/readings.hpp>
#include <seatload/io/csv.hpp>
#include <seatload/io/words.hpp>

namespace seatload::io {

/// What the cells of a column of readings are.
enum class Column { height, travel, scale, direction, remark };

template <>
struct Form<Column> : WordForm<Column, Form<Column>> {
    static constexpr Word<Column> kWords[] = {
        {"height", Column::height},       {"travel", Column::travel}, {"scale", Column::scale},
        {"direction", Column::direction}, {"remark", Column::remark},
    };
};

/// What columns lack to make readings, in words; empty when they lack nothing.
std::string lacking_columns(const std::vector<Column>& columns);

/// "height, scale".
std::string column_list(const std::vector<Column>& columns);

/// Adds the readings of a CSV table, and where each stands. What is wrong is complained of there.
void read_csv_readings(CsvText& csv, std::vector<bench::Reading>& readings, std::vector<Position>& places);

}  // namespace seatload::io
