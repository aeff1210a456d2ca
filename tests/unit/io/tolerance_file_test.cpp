// SPDX-License-Identifier: MIT
#include <seatload/io/tolerance_file.hpp>

#include <seatload/io/builtin.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;

namespace {

double plus_minus_mm(double D, double w, int grade) {
    static const tolerance::Tables tables = io::builtin_tolerances().value();
    const auto found = tolerance::diameter_tolerance(tables, D * mm, w, grade);
    REQUIRE(found.has_value());
    return in_mm(*found);
}

}  // namespace

TEST_CASE("The built-in coil-diameter tolerances run from 0.63 mm to 200 mm without a gap") {
    const auto read = io::builtin_tolerances();
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    const auto& rows = read->diameter;
    REQUIRE(rows.size() == 17);
    CHECK(in_mm(rows.front().over) == 0.63);
    CHECK(in_mm(rows.back().up_to) == 200.0);
}

TEST_CASE("Coil-diameter tolerances never fall with diameter, index or grade") {
    const auto tables = io::builtin_tolerances().value();
    for (std::size_t row = 0; row < tables.diameter.size(); ++row)
        for (std::size_t grade = 0; grade < 3; ++grade)
            for (std::size_t band = 0; band < 3; ++band) {
                CAPTURE(row, grade, band);
                const Length here = tables.diameter[row].plus_minus[grade][band];
                if (row > 0) CHECK(here >= tables.diameter[row - 1].plus_minus[grade][band]);
                if (grade > 0) CHECK(here > tables.diameter[row].plus_minus[grade - 1][band]);
                if (band > 0) CHECK(here >= tables.diameter[row].plus_minus[grade][band - 1]);
            }
}

// DIN 2095 table as a spring maker's page carries it, rows seen up to 63 mm.
TEST_CASE("Coil-diameter tolerances are those of the published table") {
    CHECK(plus_minus_mm(0.8, 5.0, 1) == 0.05);
    CHECK(plus_minus_mm(6.3, 7.5, 2) == 0.20);
    CHECK(plus_minus_mm(6.4, 7.5, 2) == 0.25);
    CHECK(plus_minus_mm(20.0, 6.25, 2) == 0.35);
    CHECK(plus_minus_mm(24.0, 10.0, 1) == 0.25);
    CHECK(plus_minus_mm(40.0, 16.0, 3) == 1.50);
    CHECK(plus_minus_mm(63.0, 4.0, 3) == 1.50);
    // grade 2 above 63 mm: DIN 2097, the identical table
    CHECK(plus_minus_mm(70.0, 6.0, 2) == 1.00);
    CHECK(plus_minus_mm(200.0, 20.0, 2) == 3.30);
}

TEST_CASE("Rows above 63 mm say which grades rest on memory") {
    const auto tables = io::builtin_tolerances().value();
    for (const auto& row : tables.diameter) {
        const auto outer = row.up_to <= 63.0 * mm ? wire::Evidence::standard : wire::Evidence::memory;
        CHECK(row.evidence[0] == outer);
        CHECK(row.evidence[1] == wire::Evidence::standard);
        CHECK(row.evidence[2] == outer);
    }
}

TEST_CASE("A tolerance file with a gap, a short row or a long row is refused") {
    const std::string nine =
        "\"0.1 mm\", \"0.1 mm\", \"0.1 mm\", \"0.2 mm\", \"0.2 mm\", \"0.2 mm\", \"0.3 mm\", \"0.3 mm\", \"0.3 mm\"";
    const std::string marks = "\"given\", \"given\", \"given\"";
    const auto rows = [](const std::string& text) {
        return io::read_tolerances("[coil_diameter]\nrows = [" + text + "]\n", "x.toml");
    };
    const std::string one = "[\"1 mm\", \"2 mm\", " + nine + ", " + marks + "]";
    CHECK(rows(one).has_value());
    CHECK_FALSE(rows(one + ", [\"3 mm\", \"4 mm\", " + nine + ", " + marks + "]").has_value());
    CHECK_FALSE(rows("[\"2 mm\", \"1 mm\", " + nine + ", " + marks + "]").has_value());
    CHECK_FALSE(rows("[\"1 mm\", \"2 mm\", " + nine + "]").has_value());
    CHECK_FALSE(rows("[\"1 mm\", \"2 mm\", " + nine + ", " + marks + ", 1]").has_value());
    CHECK_FALSE(io::read_tolerances("", "x.toml").has_value());
}
