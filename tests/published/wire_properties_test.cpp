// SPDX-License-Identifier: MIT
// Moduli, tolerances and gauge sizes of the built-in wire data against published tables.
#include <support/check.hpp>

#include <cmath>

#include <seatload/io/builtin.hpp>
#include <seatload/wire/strength.hpp>

#include "published/inch.hpp"

using namespace seatload;
using namespace seatload::wire;

namespace {

const Catalogue& catalogue() {
    static const Catalogue builtin = io::builtin_catalogue().value();
    return builtin;
}

const Grade& grade(std::string_view id) {
    const Grade* found = catalogue().find(id);
    REQUIRE(found != nullptr);
    return *found;
}

constexpr double kMpsi = 6894.757293168361;

}  // namespace

// Shigley, Mechanical Engineering Design, 9th ed., Table 10-5 (p. 526), GPa.
TEST_CASE("moduli of A228 and A227 depend on the size as in Shigley Table 10-5") {
    const struct {
        double inches, g228, e228, g227, e227;
    } rows[] = {{0.032, 82.7, 203.4, 80.7, 198.6}, {0.033, 81.7, 200.0, 80.0, 197.9},
                {0.063, 81.7, 200.0, 80.0, 197.9}, {0.064, 81.0, 196.5, 79.3, 197.2},
                {0.125, 81.0, 196.5, 79.3, 197.2}, {0.126, 80.0, 193.0, 78.6, 196.5}};
    for (const auto& row : rows) {
        CAPTURE(row.inches);
        const Moduli music = moduli_at(grade("ASTM-A228"), row.inches * published::kInch * mm);
        const Moduli drawn = moduli_at(grade("ASTM-A227-I"), row.inches * published::kInch * mm);
        CHECK_THAT(in_mpa(music.shear) / 1000.0, WithinAbs(row.g228, 0.05));
        CHECK_THAT(in_mpa(music.young) / 1000.0, WithinAbs(row.e228, 0.05));
        CHECK_THAT(in_mpa(drawn.shear) / 1000.0, WithinAbs(row.g227, 0.05));
        CHECK_THAT(in_mpa(drawn.young) / 1000.0, WithinAbs(row.e227, 0.05));
    }
}

// Machinery's Handbook, 31st ed., p. 346 Table 20, Mpsi, printed to 0.1 or 0.5.
TEST_CASE("moduli agree with Machinery's Handbook") {
    const struct {
        const char* id;
        double shear_mpsi;
    } rows[] = {{"ASTM-A229-I", 11.2},   {"ASTM-A231", 11.2},       {"ASTM-A401", 11.2},
                {"ASTM-A313-302", 10.0}, {"ASTM-A313-631-C", 10.5}, {"ASTM-B159-C51000-H08", 6.0}};
    for (const auto& row : rows) {
        CAPTURE(row.id);
        CHECK_THAT(in_mpa(moduli_at(grade(row.id), 1.0 * mm).shear) / kMpsi, WithinAbs(row.shear_mpsi, 0.05));
    }
}

// Summary of DIN EN 10270-1 in a handbook of DIN standards: E 206 GPa, G 81.5 GPa, 7.85 kg/dm3.
TEST_CASE("EN 10270-1 wire has the moduli and density of the standard's summary") {
    for (const char* id : {"EN10270-1-SL", "EN10270-1-SM", "EN10270-1-DM", "EN10270-1-SH", "EN10270-1-DH"}) {
        CHECK(in_mpa(moduli_at(grade(id), 1.0 * mm).shear) == 81500.0);
        CHECK(in_mpa(moduli_at(grade(id), 1.0 * mm).young) == 206000.0);
        CHECK_THAT(in_kg_per_m3(grade(id).density), WithinRel(7850.0, 1e-12));
    }
}

// Wire supplier's page of EN 10270-1 sizes and tolerances (0.05 to 0.38 mm) and the summary of DIN EN 10270-1 beyond.
// The pattern is about 0.010 sqrt(d) below 0.8 mm, 0.015 sqrt(d) to 11 mm and 0.0225 sqrt(d) above.
TEST_CASE("EN 10270-1 diameter tolerances are the printed steps") {
    const double rows[][2] = {{0.05, 0.003}, {0.10, 0.004}, {0.16, 0.004}, {0.18, 0.005}, {0.25, 0.005},
                              {0.28, 0.008}, {0.38, 0.008}, {0.80, 0.015}, {1.00, 0.015}, {2.00, 0.025},
                              {3.00, 0.030}, {5.00, 0.035}, {10.0, 0.050}, {12.0, 0.080}};
    for (const auto& [d, printed] : rows) {
        CAPTURE(d);
        CHECK(in_mm(*diameter_tolerance_at(grade("EN10270-1-DH"), d * mm)) == printed);
    }
}

// Wire stockist's page quoting ASTM A228: 0.0002 in to 0.010 in, 0.0003 to 0.028, 0.0004 to 0.063, 0.0005 to 0.080,
// 0.001 to 0.250.
TEST_CASE("ASTM A228 diameter tolerances are the printed steps in inches") {
    const double rows[][2] = {{0.010, 0.0002}, {0.011, 0.0003}, {0.028, 0.0003}, {0.063, 0.0004},
                              {0.080, 0.0005}, {0.081, 0.001},  {0.250, 0.001}};
    for (const auto& [inches, printed] : rows) {
        CAPTURE(inches);
        CHECK_THAT(in_mm(*diameter_tolerance_at(grade("ASTM-A228"), inches * published::kInch * mm)),
                   WithinAbs(printed * published::kInch, 1e-9));
    }
    CHECK_FALSE(diameter_tolerance_at(grade("ASTM-A228"), 0.251 * published::kInch * mm));
}

// Two open pages of gauge tables, which agree.
TEST_CASE("gauge sizes are those of the published tables") {
    const struct {
        const char* series;
        const char* name;
        double inches;
    } rows[] = {{"music-wire", "MW 6/0 (0.004 in)", 0.004},      {"music-wire", "MW 12 (0.029 in)", 0.029},
                {"music-wire", "MW 24 (0.055 in)", 0.055},       {"music-wire", "MW 36 (0.112 in)", 0.112},
                {"washburn-moen", "W&M 7/0 (0.490 in)", 0.490},  {"washburn-moen", "W&M 1 (0.283 in)", 0.283},
                {"washburn-moen", "W&M 16 (0.0625 in)", 0.0625}, {"washburn-moen", "W&M 24 (0.023 in)", 0.023}};
    for (const auto& row : rows) {
        CAPTURE(row.name);
        const StockSeries* series = catalogue().find_series(row.series);
        REQUIRE(series != nullptr);
        bool is_there = false;
        for (const StockSize& size : series->sizes)
            is_there = is_there ||
                       (size.name == row.name && std::abs(in_mm(size.diameter) - row.inches * published::kInch) < 1e-9);
        CHECK(is_there);
    }
}

// Preferred numbers R20 (ISO 3, from memory): each is the twentieth root of ten times the one before, rounded.
TEST_CASE("R20 and R40 sizes are rounded geometric series") {
    const auto check = [&](const char* id, double steps) {
        const StockSeries* series = catalogue().find_series(id);
        REQUIRE(series != nullptr);
        for (std::size_t i = 0; i < series->sizes.size(); ++i) {
            CAPTURE(id, i);
            // ISO 3 rounds its series by at most 1.26 % (memory)
            CHECK_THAT(in_mm(series->sizes[i].diameter),
                       WithinRel(std::pow(10.0, static_cast<double>(i) / steps), 0.0126));
        }
    };
    check("R20", 20.0);
    check("R40", 40.0);
}
