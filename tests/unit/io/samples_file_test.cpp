// SPDX-License-Identifier: MIT
// What a samples file says comes out as it was said; what is wrong in one is in tests/bad_input/samples.
#include <seatload/io/samples_file.hpp>

#include <seatload/core/file.hpp>
#include <seatload/io/builtin.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;
using inspection::Kind;

namespace {

SamplesFile read_samples_text(const std::string& text, const std::string& beside = {}) {
    const auto tables = builtin_sampling();
    REQUIRE(tables.has_value());
    const auto open = [&](const std::string&) { return Result<std::string>(beside); };
    auto result = read_samples(text, "x.toml", *tables, catalogue(), open);
    INFO(render(result.error()));
    REQUIRE(result.has_value());
    return std::move(result).value();
}

const std::string kSamplesHead =
    "format = \"seatload samples 1\"\n[lot]\nname = \"first\"\ndate = 2026-12-14\nmaker = \"A\"\npieces = 20\n"
    "fixture = \"mill\"\n";
const std::string kDoubts =
    "[uncertainty]\nseated_load = \"±0.05 N\"\noutside_diameter = \"±1 thou\"\ntotal_coils = 0.05\n";

}  // namespace

TEST_CASE("Rows of samples come out in newtons and millimetres, empty cells as not measured") {
    const auto file =
        read_samples_text(kSamplesHead + kDoubts +
                          "[pieces]\ncolumns = [\"piece\", \"seated_load\", \"outside_diameter\", \"total_coils\"]\n"
                          "rows = [[1, \"600 gf\", \"8.45 mm\", 6.5], [\"b\", \"5.8 N\", \"\", 7]]\n");
    const inspection::Samples& s = file.samples;
    CHECK(s.name == "first");
    CHECK(s.date == "2026-12-14");
    CHECK(s.maker == "A");
    CHECK(s.lot_size == 20);
    CHECK_FALSE(s.plan.has_value());
    REQUIRE(s.pieces.size() == 2);
    CHECK(s.pieces[0].name == "1");
    // 600 x 9.80665 mN
    CHECK_THAT(s.pieces[0].values.at(Kind::seated_load), WithinAbs(5.88399, 1e-9));
    CHECK(s.pieces[1].values.at(Kind::total_coils) == 7.0);
    CHECK_FALSE(s.pieces[1].values.contains(Kind::outside_diameter));
    // a thousandth of an inch is 0.0254 mm
    CHECK_THAT(s.expanded.at(Kind::outside_diameter), WithinAbs(0.0254, 1e-9));
    CHECK(s.expanded.at(Kind::total_coils) == 0.05);
}

TEST_CASE("A CSV table says the same as rows, its units in the heading") {
    const auto file =
        read_samples_text(kSamplesHead +
                              "[uncertainty]\nseated_load = \"0.05 N\"\nfree_length = \"0.1 mm\"\n"
                              "[after]\ntreatment = \"heat\"\nconditions = \"24 h\"\n[pieces]\ntable = \"a.csv\"\n",
                          "\xEF\xBB\xBFpiece,seated_load [gf],free_length (in),free_length_after [mm],remark\r\n"
                          "1,600,0.8,20.30,\"a, b\"\r\n2,,0.8,,\r\n");
    const inspection::Samples& s = file.samples;
    REQUIRE(s.pieces.size() == 2);
    CHECK_THAT(s.pieces[0].values.at(Kind::seated_load), WithinAbs(5.88399, 1e-9));
    CHECK_THAT(s.pieces[0].values.at(Kind::free_length), WithinAbs(20.32, 1e-9));
    CHECK_THAT(s.pieces[0].after.at(Kind::free_length), WithinAbs(20.30, 1e-9));
    CHECK_FALSE(s.pieces[1].values.contains(Kind::seated_load));
    CHECK(s.pieces[1].after.empty());
    CHECK(s.treatment == "heat");
    CHECK(s.conditions == "24 h");
}

TEST_CASE("A plan for the loads comes out as chosen") {
    const auto file =
        read_samples_text(kSamplesHead + kDoubts +
                          "[plan]\ninspect = \"by sampling\"\nlevel = \"S-3\"\naql = 2.5\nseverity = \"tightened\"\n"
                          "[pieces]\ncolumns = [\"piece\", \"seated_load\"]\nrows = [[1, \"5.8 N\"]]\n");
    REQUIRE(file.samples.plan.has_value());
    CHECK_FALSE(file.samples.plan->every_piece);
    CHECK(file.samples.plan->level == inspection::Level::s3);
    CHECK(file.samples.plan->aql == 2.5);
    CHECK(file.samples.plan->severity == inspection::Severity::tightened);
}

TEST_CASE("Readings of a bench stand in for the uncertainty of loads, and scales may be given") {
    const auto readings = read_text_file(std::string(SEATLOAD_SOURCE_DIR) + "/templates/ahead_latch_readings.toml");
    REQUIRE(readings.has_value());
    const auto file = read_samples_text(kSamplesHead +
                                            "[uncertainty]\nreadings = \"bench.toml\"\n[pieces]\n"
                                            "columns = [\"piece\", \"seated_scale\"]\nrows = [[1, \"986 g\"]]\n",
                                        *readings);
    REQUIRE(file.bench.has_value());
    CHECK(file.bench_file == "bench.toml");
    CHECK(file.bench->springs.size() == 2);
    CHECK_THAT(in_gram(std::get<Mass>(file.samples.pieces[0].shown.at(Kind::seated_load))), WithinAbs(986.0, 1e-9));
}

TEST_CASE("A single changed letter of sound samples never crashes and never passes with an error") {
    const auto tables = builtin_sampling();
    REQUIRE(tables.has_value());
    const std::string sound = kSamplesHead + kDoubts +
                              "[plan]\ninspect = \"by sampling\"\naql = 2.5\n[pieces]\n"
                              "columns = [\"piece\", \"seated_load\"]\nrows = [[1, \"5.8 N\"], [2, \"\"]]\n";
    const std::string csv = "piece,seated_load [N]\n1,5.8\n2,\n";
    const std::string by_table = kSamplesHead + kDoubts + "[pieces]\ntable = \"a.csv\"\n";
    const auto opens = [](const std::string& text) {
        return [text](const std::string&) { return Result<std::string>(text); };
    };
    const auto try_out = [&](const std::string& text, const std::string& beside) {
        const auto read = read_samples(text, "x.toml", *tables, catalogue(), opens(beside));
        CHECK(read.has_value() != has_error(read.error()));
    };
    const std::string letters(
        "\0\"[]=.\n#\xC3"
        "9-,;",
        13);
    for (const char letter : letters) {
        for (std::size_t at = 0; at < sound.size(); ++at) {
            std::string changed = sound;
            changed[at] = letter;
            try_out(changed, csv);
        }
        for (std::size_t at = 0; at < csv.size(); ++at) {
            std::string changed = csv;
            changed[at] = letter;
            try_out(by_table, changed);
        }
    }
}
