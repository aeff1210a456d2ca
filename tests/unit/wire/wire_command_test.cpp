// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <sstream>

#include <nlohmann/json.hpp>

#include <cli/wire_command.hpp>
#include <seatload/core/text.hpp>

using namespace seatload;
using seatload::cli::WireOptions;

namespace {

struct Answer {
    int exit_code = 0;
    std::string out;
    std::string err;
};

Answer run(const WireOptions& options) {
    std::ostringstream out;
    std::ostringstream err;
    const int code = cli::run_wire(options, out, err);
    return {code, out.str(), err.str()};
}

std::size_t widest_line(const std::string& text) {
    std::size_t widest = 0;
    for (const std::string_view line : split(text, '\n')) widest = std::max(widest, length_in_code_points(line));
    return widest;
}

}  // namespace

TEST_CASE("the list of grades fits 80 columns and names all of them") {
    const Answer answer = run({});
    CHECK(answer.exit_code == 0);
    CHECK(answer.err.empty());
    CHECK(widest_line(answer.out) <= 80);
    CHECK_THAT(answer.out, ContainsSubstring("EN10270-1-SL"));
    CHECK_THAT(answer.out, ContainsSubstring("EN12166-CuSn6-spring"));
}

TEST_CASE("one grade is shown within 80 columns with its sizes, sources and the load-loss warning") {
    for (const char* id :
         {"EN10270-1-SH", "ASTM-A228", "ASTM-A313-302", "EN10270-3-1.4568-C", "X750-No1", "EN10270-2-TDCrV"}) {
        WireOptions options;
        options.grade = id;
        const Answer answer = run(options);
        CAPTURE(id);
        CHECK(answer.exit_code == 0);
        CHECK(widest_line(answer.out) <= 80);
        CHECK_THAT(answer.out, ContainsSubstring("service limit"));
        CHECK_THAT(answer.out, ContainsSubstring("Sources"));
    }
    WireOptions options;
    options.grade = "en10270-1-sh";
    CHECK_THAT(run(options).out, ContainsSubstring("no load may be stated on it"));
    CHECK_THAT(run(options).out, ContainsSubstring("0.90 mm     2270-2510 m  ±0.015"));
}

TEST_CASE("gauge series are shown by their names") {
    WireOptions options;
    options.grade = "ASTM-A228";
    options.series = "music-wire";
    CHECK_THAT(run(options).out, ContainsSubstring("MW 32 (0.090 in)"));
}

TEST_CASE("the strength at one diameter is shown, or the range it is known in") {
    WireOptions options;
    options.grade = "EN10270-1-SM";
    options.diameter = "0.43 mm";
    CHECK_THAT(run(options).out, ContainsSubstring("2240 MPa"));
    options.diameter = "0.25 mm";
    const Answer outside = run(options);
    CHECK(outside.exit_code == 2);
    CHECK(outside.out.empty());
    CHECK_THAT(outside.err, ContainsSubstring("from 0.30 mm to 12.00 mm"));
    options.diameter = "0.8";
    CHECK(run(options).exit_code == 2);
}

TEST_CASE("all grades can be asked for one diameter") {
    WireOptions options;
    options.diameter = "0.43 mm";
    const Answer answer = run(options);
    CHECK(answer.exit_code == 0);
    CHECK_THAT(answer.out, ContainsSubstring("EN10270-1-SM"));
    CHECK_THAT(answer.out, !ContainsSubstring("ASTM-A227-I"));  // begins at 0.508 mm
}

TEST_CASE("wrong names end with exit code 2, a suggestion and no output") {
    WireOptions options;
    options.grade = "EN10270-1-SHH";
    options.series = "metrik";
    const Answer answer = run(options);
    CHECK(answer.exit_code == 2);
    CHECK(answer.out.empty());
    CHECK_THAT(answer.err, ContainsSubstring("did you mean \"EN10270-1-SH\"?"));
    CHECK_THAT(answer.err, ContainsSubstring("did you mean \"metric\"?"));
    WireOptions missing;
    missing.file = "no-such-folder/no-such-file.toml";
    CHECK(run(missing).exit_code == 2);
}

TEST_CASE("the JSON of a grade has unit suffixes and the numbers of the data") {
    WireOptions options;
    options.grade = "EN10270-3-1.4310-NS";
    options.json = true;
    const auto json = nlohmann::json::parse(run(options).out);
    CHECK(json["id"] == "EN10270-3-1.4310-NS");
    CHECK(json["strength"]["rows"].size() == 20);
    CHECK(json["strength"]["rows"][6]["wire_diameter_mm"] == 1.0);
    CHECK(json["strength"]["rows"][6]["minimum_mpa"] == 1900.0);
    CHECK(json["service_limit_c"] == 250.0);
    CHECK(json["moduli"][0]["shear_modulus_mpa"] == 73000.0);
    CHECK(json["stock"]["sizes"].size() == 77);
    options.grade.clear();
    CHECK(nlohmann::json::parse(run(options).out)["grades"].size() == 35);
}
