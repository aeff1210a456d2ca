// SPDX-License-Identifier: MIT
// Holds our mechanics against the numbers of tests/published/values. One case a file; see the README there.
#include <iostream>
#include <set>

#include "published/row_check.hpp"
#include "support/check.hpp"

using namespace seatload::published;

namespace {

std::set<std::string> used_tolerances(const Subject& subject) {
    std::set<std::string> used;
    for (const Case& one : subject.cases)
        for (const Row& row : one.rows)
            if (!row.tolerance.empty()) used.insert(row.tolerance);
    return used;
}

/// Checks every row; the worst one goes to the log, every failure to the report.
void check_subject(const std::string& file) {
    const Subject subject = read_subject(file);
    std::size_t rows = 0;
    Outcome worst;
    std::string failures;
    for (const Case& one : subject.cases)
        for (const Row& row : one.rows) {
            const Outcome outcome = check_row(subject, one, row);
            ++rows;
            if (!outcome.passed) failures += outcome.report + '\n';
            if (outcome.used >= worst.used) worst = outcome;
        }
    std::cout << file << ": " << rows << " rows; worst, " << static_cast<int>(100.0 * worst.used)
              << " % of its tolerance: " << worst.report << '\n';
    INFO(file << "\n" << failures);
    CHECK(failures.empty());
    CHECK(rows > 0);
    for (const auto& [name, tolerance] : subject.tolerances) {
        INFO("a tolerance no row uses: " << name);
        CHECK(used_tolerances(subject).contains(name));
    }
}

const std::set<std::string> kFiles{"bench.toml",           "bhandari.toml",
                                   "buckling.toml",        "coils_and_lengths.toml",
                                   "fatigue.toml",         "growth.toml",
                                   "inspection.toml",      "jindal.toml",
                                   "khurmi.toml",          "lateral.toml",
                                   "measured.toml",        "mott_norton.toml",
                                   "plunger.toml",         "rate.toml",
                                   "sadhu_singh.toml",     "shigley_checks.toml",
                                   "shigley_designs.toml", "strength_of_materials.toml",
                                   "stress.toml",          "surge.toml",
                                   "temperature.toml",     "tension_compression.toml",
                                   "tolerance.toml",       "units.toml"};

}  // namespace

TEST_CASE("every file of published values is checked") {
    const auto files = subject_files();
    CHECK(std::set<std::string>(files.begin(), files.end()) == kFiles);
}

TEST_CASE("spring rate, force and work match published values") { check_subject("rate.toml"); }
TEST_CASE("stresses match published values") { check_subject("stress.toml"); }
TEST_CASE("coils and lengths match published values") { check_subject("coils_and_lengths.toml"); }
TEST_CASE("diameter growth matches published values") { check_subject("growth.toml"); }
TEST_CASE("buckling matches published values") { check_subject("buckling.toml"); }
TEST_CASE("sideways loading matches published values") { check_subject("lateral.toml"); }
TEST_CASE("surge frequency and impact match published values") { check_subject("surge.toml"); }
TEST_CASE("moduli at temperature match published values") { check_subject("temperature.toml"); }
TEST_CASE("readings of a bench match published values") { check_subject("bench.toml"); }
TEST_CASE("guard bands, sampling and tolerance intervals match published values") { check_subject("inspection.toml"); }
TEST_CASE("fatigue factors match published values") { check_subject("fatigue.toml"); }
TEST_CASE("tolerances match published values") { check_subject("tolerance.toml"); }
TEST_CASE("plungers released by oil match published values") { check_subject("plunger.toml"); }
TEST_CASE("unit factors match published values") { check_subject("units.toml"); }
TEST_CASE("Shigley's examples of springs to be judged come out") { check_subject("shigley_checks.toml"); }
TEST_CASE("Shigley's examples of springs to be designed come out") { check_subject("shigley_designs.toml"); }
TEST_CASE("Bhandari's examples come out") { check_subject("bhandari.toml"); }
TEST_CASE("Jindal's examples come out") { check_subject("jindal.toml"); }
TEST_CASE("Sadhu Singh's examples come out") { check_subject("sadhu_singh.toml"); }
TEST_CASE("Khurmi's and NPTEL's examples come out") { check_subject("khurmi.toml"); }
TEST_CASE("Mott's, Norton's and Wentzell's examples come out") { check_subject("mott_norton.toml"); }
TEST_CASE("examples of books on strength of materials come out") { check_subject("strength_of_materials.toml"); }
TEST_CASE("measured springs come out within what their reports allow") { check_subject("measured.toml"); }
TEST_CASE("designs of the tension and compression spring have their published volumes") {
    check_subject("tension_compression.toml");
}
