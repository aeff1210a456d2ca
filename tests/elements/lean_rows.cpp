// SPDX-License-Identifier: MIT
#include <cmath>
#include <elements/lean_rows.hpp>
#include <fstream>
#include <iomanip>
#include <seatload/spring/lean.hpp>
#include <sstream>
#include <stdexcept>

namespace seatload::test::elements {
namespace {

LeanRow parsed(const std::string& line) {
    std::istringstream cells(line);
    const auto next = [&] {
        std::string cell;
        if (!std::getline(cells, cell, ',')) throw std::runtime_error("too few cells: " + line);
        return cell;
    };
    LeanRow row;
    row.head = next() == "slides" ? Head::slides : Head::on_axis;
    for (double* value : {&row.moduli, &row.index, &row.slenderness, &row.n, &row.compression, &row.lean, &row.bow})
        *value = std::stod(next());
    return row;
}

}  // namespace

ActiveCoils LeanRow::coils() const {
    constexpr double kD = 10.0, kE = 200000.0;
    return {kD / index, kD, n, slenderness * kD / n, moduli * kE, kE};
}

double LeanRow::bound() const {
    const ActiveCoils c = coils();
    return spring::sideways_lean(c.pitch_mm, c.D_mm, n, deflection_mm(), moduli) / c.D_mm;
}

double LeanRow::over() const { return n - std::floor(n); }

std::vector<LeanRow> lean_rows() {
    std::ifstream file(std::string(SEATLOAD_SOURCE_DIR) + "/tests/elements/lean_table.csv");
    std::vector<LeanRow> all;
    for (std::string line; std::getline(file, line);)
        if (!line.empty() && line[0] != '#' && line != kLeanColumns) all.push_back(parsed(line));
    if (all.empty()) throw std::runtime_error("no rows in lean_table.csv");
    return all;
}

std::string text(const LeanRow& row) {
    std::ostringstream out;
    out << (row.head == Head::slides ? "slides" : "on axis") << ',' << row.moduli << ',' << row.index << ','
        << row.slenderness << ',' << row.n << std::fixed << std::setprecision(4) << ',' << row.compression
        << std::setprecision(5) << ',' << row.lean << ',' << row.bow;
    return out.str();
}

}  // namespace seatload::test::elements
