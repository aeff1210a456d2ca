// SPDX-License-Identifier: MIT
// What a readings file says comes out as it was said; what is wrong in one is in tests/bad_input/readings.
#include <filesystem>
#include <fstream>

#include <seatload/io/readings_file.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;
namespace fs = std::filesystem;

namespace {

const std::string kHead =
    "[scale]\nstep = \"1 g\"\nadjusted_for = \"standard\"\n"
    "[gauge]\nstep = \"0.01 mm\"\n";
const std::string kSpring = "[[spring]]\nname = \"found\"\npreloads = 3\n";
const std::string kRows =
    "readings = [[\"18 mm\", \"50 g\"], [\"16 mm\", \"250 g\"], [\"14 mm\", \"450 g\"], [\"12 mm\", \"650 g\"]]\n";
const std::string kCsv = "height [mm],scale [g]\n18,50\n16,250\n14,450\n12,650\n";

bench::Readings read_readings_text(const std::string& text, const std::string& csv = kCsv) {
    const auto open = [&](const std::string&) { return Result<std::string>(csv); };
    auto result = read_readings(text, "x.toml", catalogue(), open);
    INFO(render(result.error()));
    REQUIRE(result.has_value());
    return std::move(result).value();
}

double grams(const bench::ScaleReading& reading) { return in_gram(std::get<Mass>(reading)); }

}  // namespace

TEST_CASE("The instruments of the bench come out as they were stated") {
    const auto session = read_readings_text(
        "[run]\ntitle = \"t\"\ndate = \"2026-11-20\"\nfixture = \"mill\"\ntemperature = \"66.2 °F ±1.8 °F\"\n"
        "coverage_factor = 3\n"
        "[scale]\nstep = \"0.1 oz\"\nspan = \"±0.1 %\"\nlinearity = \"+/-1 g\"\nzero = \"0.5 g\"\ntare = \"386 g\"\n"
        "latitude = \"54 deg\"\nabove_sea = \"40 m\"\n"
        "[gauge]\nstep = \"0.01 mm\"\nerror = \"±0.5 thou\"\nspan = \"±0.01 %\"\nzero = \"±0.02 mm\"\n"
        "[indicator]\nstep = \"0.01 mm\"\nerror = \"±0.01 mm\"\nspan = \"±0.02 %\"\n"
        "height_at_zero = \"20.00 mm ±0.01 mm\"\nbears_on_pan = \"presses it down\"\nforce_at_zero = \"0.42 N\"\n"
        "force_rise = \"0.031 N/mm\"\nforce_error = \"±0.02 N\"\ntare_travel = \"0 mm\"\n"
        "[load_path]\nstiffness = \"250 N/mm ±10 %\"\n"
        "[heights]\nfull_travel = \"9 mm\"\nseated = \"15.00 mm ±0.02 mm\"\nhalf_way = \"12 mm\"\n" +
        kSpring + "readings = [[\"18 mm\", \"436 g\"], [\"16 mm\", \"636 g\"], [\"14 mm\", \"836 g\"]]\n");
    CHECK(session.title == "t");
    CHECK(session.date == "2026-11-20");
    CHECK(session.fixture == "mill");
    CHECK(session.coverage_factor == 3.0);
    // (66.2 - 32) / 1.8 = 19 and 1.8 / 1.8 = 1
    CHECK_THAT(session.temperature.value, WithinAbs(19.0, 1e-9));
    CHECK_THAT(session.temperature.plus_minus, WithinAbs(1.0, 1e-9));
    // an ounce is 28.349523125 g by definition
    CHECK_THAT(grams(session.scale.resolution), WithinAbs(2.8349523125, 1e-9));
    CHECK_THAT(session.scale.span_error.value, WithinAbs(0.001, 1e-12));
    CHECK_THAT(grams(session.scale.linearity), WithinAbs(1.0, 1e-9));
    CHECK_THAT(grams(session.scale.zero), WithinAbs(0.5, 1e-9));
    CHECK_THAT(grams(*session.scale.tare), WithinAbs(386.0, 1e-9));
    const auto& site = std::get<bench::Site>(session.scale.adjusted_at);
    CHECK_THAT(in_base_unit(site.latitude), WithinAbs(54.0 * 3.14159265358979 / 180.0, 1e-12));
    CHECK_THAT(in_mm(site.height), WithinAbs(40000.0, 1e-9));
    CHECK_THAT(in_mm(session.gauge.error), WithinAbs(0.0127, 1e-12));  // a thou is 0.0254 mm
    CHECK_THAT(in_mm(session.gauge.zero), WithinAbs(0.02, 1e-12));
    CHECK(session.indicator.bearing == bench::Bearing::adds);
    const auto& plunger = std::get<bench::PlungerLine>(session.indicator.plunger);
    CHECK(in_newton(plunger.at_zero) == 0.42);
    CHECK(in_newton_per_mm(plunger.per_travel) == 0.031);
    CHECK(in_newton(session.indicator.plunger_error) == 0.02);
    CHECK(in_mm(session.indicator.height_at_zero->plus_minus) == 0.01);
    CHECK(in_mm(*session.indicator.tare_travel) == 0.0);
    CHECK(in_newton_per_mm(session.load_path.stiffness->value) == 250.0);
    CHECK(in_newton_per_mm(session.load_path.stiffness->plus_minus) == 25.0);
    REQUIRE(session.heights.size() == 3);
    CHECK(session.heights[0].name == "seated");
    CHECK(in_mm(session.heights[0].height.plus_minus) == 0.02);
    CHECK(session.heights[1].name == "half way");
    CHECK(session.heights[2].name == "full travel");
}

TEST_CASE("A spring comes out with its dimensions and each reading") {
    const auto session =
        read_readings_text(kHead + kSpring +
                           "role = \"good\"\nwire = \"astm-a401\"\nwire_diameter = \"0.70 mm ±0.005 mm\"\n"
                           "outside_diameter = \"8.40 mm ±1 %\"\ntotal_coils = \"6.5 ±0.1\"\nfree_length = \"18 mm\"\n"
                           "free_length_new = \"19 mm\"\nends = \"closed\"\npreload_height = \"9 mm\"\n"
                           "readings = [[\"18 mm\", \"50 g\"], [\"16 mm\", \"2.45 N\", \"loading\"], "
                           "[\"14 mm\", \"450 g\"], [\"12 mm\", \"650 g\"], [\"14 mm\", \"448 g\", \"unloading\"]]\n");
    REQUIRE(session.springs.size() == 1);
    const bench::SpringRun& run = session.springs[0];
    CHECK(run.role == bench::Role::good);
    CHECK(run.dimensions.grade == "ASTM-A401");
    CHECK(in_mm(run.dimensions.wire_diameter->plus_minus) == 0.005);
    CHECK_THAT(in_mm(run.dimensions.outside_diameter->plus_minus), WithinAbs(0.084, 1e-12));
    CHECK(run.dimensions.total_coils->value == 6.5);
    CHECK(run.dimensions.total_coils->plus_minus == 0.1);
    CHECK(in_mm(run.dimensions.free_length->value) == 18.0);
    CHECK(in_mm(run.dimensions.free_length_new->value) == 19.0);
    CHECK(run.dimensions.ends == spring::Ends::closed);
    CHECK(run.preload.count == 3);
    CHECK(in_mm(*run.preload.height) == 9.0);
    REQUIRE(run.readings.size() == 5);
    CHECK(in_mm(*run.readings[0].height) == 18.0);
    CHECK_FALSE(run.readings[0].travel.has_value());
    CHECK_THAT(grams(run.readings[0].scale), WithinAbs(50.0, 1e-9));
    CHECK(in_newton(std::get<Force>(run.readings[1].scale)) == 2.45);
    CHECK_FALSE(run.readings[1].unloading);
    CHECK(run.readings[4].unloading);
}

TEST_CASE("Columns of a list may stand in any order, and a height beside its travel") {
    const auto session =
        read_readings_text(kHead + kSpring +
                           "columns = [\"scale\", \"travel\", \"height\", \"direction\"]\n"
                           "readings = [[\"50 g\", \"1 mm\", \"18 mm\", \"loading\"], [\"250 g\", \"3 mm\", \"16 mm\", "
                           "\"loading\"], [\"450 g\", \"5 mm\", \"14 mm\", \"loading\"], [\"430 g\", \"5 mm\", \"14 "
                           "mm\", \"unloading\"]]\n");
    const auto& readings = session.springs[0].readings;
    CHECK(in_mm(*readings[1].travel) == 3.0);
    CHECK(in_mm(*readings[1].height) == 16.0);
    CHECK_THAT(grams(readings[1].scale), WithinAbs(250.0, 1e-9));
    CHECK(readings[3].unloading);
}

TEST_CASE("A CSV table gives the same readings as a list, whatever its quotes, line ends, order and units") {
    const auto same = [](const bench::Readings& a, const bench::Readings& b) {
        const auto &x = a.springs[0].readings, &y = b.springs[0].readings;
        REQUIRE(x.size() == y.size());
        for (std::size_t i = 0; i < x.size(); ++i) {
            CHECK_THAT(in_mm(*x[i].height), WithinAbs(in_mm(*y[i].height), 1e-12));
            CHECK_THAT(grams(x[i].scale), WithinAbs(grams(y[i].scale), 1e-9));
            CHECK(x[i].unloading == y[i].unloading);
        }
    };
    const auto wanted = read_readings_text(kHead + kSpring + kRows);
    const std::string text = kHead + kSpring + "table = \"t.csv\"\n";
    same(read_readings_text(text), wanted);
    same(read_readings_text(
             text, "\xEF\xBB\xBF\"height [mm]\",\"scale [g]\"\r\n\"18\",\"50\"\r\n16,250\r\n14,450\r\n\r\n12,650"),
         wanted);
    same(read_readings_text(
             text,
             "scale (kg), remark, height (cm), direction\n0.05,\"a, b\",1.8,loading\n0.25,,1.6,\n0.45,,1.4,\n"
             "0.65,,1.2,loading\n"),
         wanted);
}

TEST_CASE("A run on a rigid block is read from a list or from a table") {
    const std::string list =
        "[load_path]\nblock = [[\"0 mm\", \"0 g\"], [\"0.02 mm\", \"400 g\"], [\"0.04 mm\", \"800 g\"]]\n";
    const std::string table = "[load_path]\ntable = \"block.csv\"\n";
    const std::string csv = "travel [mm],scale [g]\n0,0\n0.02,400\n0.04,800\n";
    for (const auto& session : {read_readings_text(kHead + list + kSpring + kRows),
                                read_readings_text(kHead + table + kSpring + kRows, csv)}) {
        const auto& block = session.load_path.block_run;
        REQUIRE(block.size() == 3);
        CHECK(in_mm(block[2].travel) == 0.04);
        CHECK_THAT(grams(block[2].scale), WithinAbs(800.0, 1e-9));
    }
}

TEST_CASE("The force of a plunger may be one, a line or a table") {
    const std::string scale = kHead + "[indicator]\nstep = \"0.01 mm\"\nbears_on_pan = \"lifts it\"\n";
    const std::string spring = kSpring +
                               "columns = [\"height\", \"travel\", \"scale\"]\nreadings = [[\"18 mm\", \"1 mm\", \"50 "
                               "g\"], [\"16 mm\", \"3 mm\", "
                               "\"250 g\"], [\"14 mm\", \"5 mm\", \"450 g\"]]\n";
    CHECK(in_newton(std::get<Force>(read_readings_text(scale + "force = \"60 gf\"\n" + spring).indicator.plunger)) ==
          60 * 0.00980665);
    const auto table = std::get<bench::PlungerTable>(
        read_readings_text(scale + "forces = [[\"0 mm\", \"0.4 N\"], [\"10 mm\", \"0.7 N\"]]\n" + spring)
            .indicator.plunger);
    REQUIRE(table.size() == 2);
    CHECK(in_mm(table[1].first) == 10.0);
    CHECK(in_newton(table[1].second) == 0.7);
}

TEST_CASE("A table is opened beside the file that names it, and never by a link that leads out") {
    const test::ScratchFolder scratch;
    const fs::path folder = scratch.path() / "bench";
    fs::create_directories(folder / "tables");
    std::ofstream(folder / "tables" / "spring.csv") << kCsv;
    std::ofstream(scratch.path() / "outside.csv") << kCsv;
    fs::create_symlink(scratch.path() / "outside.csv", folder / "link.csv");
    const std::string file = (folder / "readings.toml").string();
    const auto found = [&](const std::string& name) {
        return read_readings(kHead + kSpring + "table = \"" + name + "\"\n", file, catalogue());
    };
    CHECK(found("tables/spring.csv").has_value());
    CHECK_THAT(first(found("link.csv").error()), ContainsSubstring("a link leads out of the folder"));
    CHECK_THAT(first(found("../outside.csv").error()), ContainsSubstring("a table lies in the folder of this file"));
    CHECK_THAT(first(found("/etc/hostname").error()), ContainsSubstring("a table lies in the folder of this file"));
}

TEST_CASE("A single changed letter of sound readings never crashes and never passes with an error") {
    const std::string sound = kHead + "[heights]\nseated = \"15 mm ±0.1 mm\"\n" + kSpring + "table = \"t.csv\"\n" +
                              "[[spring]]\nname = \"b\"\n" + kRows;
    const auto changed = [](std::string text, std::size_t at, char letter) {
        text[at] = letter;
        return text;
    };
    const auto judge = [](const std::string& text, const std::string& csv) {
        const auto read =
            read_readings(text, "x.toml", catalogue(), [&](const std::string&) { return Result<std::string>(csv); });
        CHECK(read.has_value() != has_error(read.error()));
    };
    for (const char letter : {'\0', '"', '[', ']', '=', '.', ',', '\n', '#', '\xC3', '9', '-', '\r'}) {
        for (std::size_t at = 0; at < sound.size(); ++at) judge(changed(sound, at, letter), kCsv);
        for (std::size_t at = 0; at < kCsv.size(); ++at) judge(sound, changed(kCsv, at, letter));
    }
}
