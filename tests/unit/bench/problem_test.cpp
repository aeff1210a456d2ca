// SPDX-License-Identifier: MIT
#include <utility>

#include <seatload/bench/measured.hpp>
#include <seatload/bench/problem.hpp>
#include <support/check.hpp>
#include <unit/bench/simulated_bench.hpp>

using namespace seatload;
using namespace seatload::bench;

namespace {

using Heights = std::vector<double>;

std::vector<Reading> pressed(const Heights& heights, double rate = 0.4) {
    std::vector<Reading> all;
    test::TrueSpring spring;
    spring.rate_n_mm = rate;
    for (const double height : heights) all.push_back(test::sound_reading(spring, height));
    return all;
}

Readings bench_of_grams() {
    Readings session = test::usual_bench();
    session.scale.zero = 0.0 * gram;
    session.load_path = {};
    return session;
}

/// The one problem of a run, which must then not be measured when it is an error.
RunProblem only_problem(const Readings& session, std::vector<Reading> readings) {
    const auto run = test::run_of(std::move(readings));
    const auto all = problems_of(session, run);
    REQUIRE(all.size() == 1);
    CHECK(measure(session, run).spring.has_value() == (all[0].severity == Severity::warning));
    CHECK_FALSE(all[0].hint.empty());
    return all[0];
}

void check_error(const RunProblem& problem, const std::string& text, std::optional<std::size_t> reading = {}) {
    CHECK(problem.severity == Severity::error);
    CHECK(problem.message == text);
    CHECK(problem.reading == reading);
}

}  // namespace

TEST_CASE("a sound run has no problem") {
    CHECK(problems_of(bench_of_grams(), test::run_of(pressed({21.0, 17.0, 13.0, 9.0}))).empty());
}

TEST_CASE("too few readings, or too few heights, make no line") {
    const Readings session = bench_of_grams();
    check_error(only_problem(session, {}), "0 loading readings: a line with a check on it needs 3 at least");
    check_error(only_problem(session, pressed({20.0})),
                "1 loading reading: a line with a check on it needs 3 at least");
    check_error(only_problem(session, pressed({20.0, 10.0})),
                "2 loading readings: a line with a check on it needs 3 at least");
    check_error(only_problem(session, pressed({12.0, 12.0, 12.0})), "all loading readings are at one height, 12 mm");
    check_error(only_problem(session, pressed({12.0, 10.0, 12.0})),
                "3 loading readings at two heights only: a line with a check on it needs three");
    auto unloading = pressed({20.0, 18.0, 16.0});
    for (Reading& r : unloading) r.unloading = true;
    check_error(only_problem(session, unloading), "0 loading readings: a line with a check on it needs 3 at least");
}

TEST_CASE("more readings than the search can take are refused") {
    Heights heights;
    for (int i = 0; i < 501; ++i) heights.push_back(20.0 - 0.02 * i);
    const RunProblem problem = only_problem(bench_of_grams(), pressed(heights));
    check_error(problem, "501 readings: at most 500 are taken");
    CHECK(problem.id == "readings-too-many"_id);
}

TEST_CASE("loads that grow with the height are heights and travels mistaken") {
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    for (Reading& r : readings) r.height = 30.0 * mm - *r.height;
    const auto problem = only_problem(bench_of_grams(), readings);
    check_error(problem, "the load does not rise as the height falls: a spring pressed shorter must push harder");
    CHECK_THAT(problem.hint, ContainsSubstring("travel"));
}

TEST_CASE("a load that dips is pointed at, and the run is measured all the same") {
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    readings[2].scale = 2.0 * newton;
    const auto problem = only_problem(bench_of_grams(), readings);
    CHECK(problem.severity == Severity::warning);
    CHECK(problem.message ==
          "the load falls from 2.4 N at 17 mm to 2 N at 13 mm, though the spring is pressed further");
    CHECK(problem.reading == std::size_t{2});
}

TEST_CASE("one reading so far off that the loads fall on the whole is pointed at") {
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    readings[1].scale = 934.0 * newton;  // 210 lbf among grams
    const auto problem = only_problem(bench_of_grams(), readings);
    check_error(problem, "the load falls from 934 N at 17 mm to 4 N at 13 mm, though the spring is pressed further", 2);
    CHECK_THAT(problem.hint, ContainsSubstring("the one before it"));
}

TEST_CASE("loads that stay the same do not rise") {
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    for (Reading& r : readings) r.scale = 2.0 * newton;
    check_error(only_problem(bench_of_grams(), readings),
                "the load does not rise as the height falls: a spring pressed shorter must push harder");
}

TEST_CASE("travels that no height belongs to are told once") {
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    for (Reading& r : readings) r.travel = 25.0 * mm - *std::exchange(r.height, std::nullopt);
    const auto problem = only_problem(bench_of_grams(), readings);
    CHECK(problem.reading == std::size_t{0});
    CHECK_THAT(problem.hint, ContainsSubstring("height_at_zero"));
}

TEST_CASE("loads below nothing point at the tare and at the plunger's sign") {
    Readings session = bench_of_grams();
    session.scale.tare = 3.0 * newton;
    const auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    auto all = problems_of(session, test::run_of(readings));
    REQUIRE(all.size() == 2);
    check_error(all[0], "the spring would carry -2.2 N here, less than nothing", 0);
    check_error(all[1], "the spring would carry -0.6 N here, less than nothing", 1);
    CHECK(all[0].hint == "look at the tare");
    session.scale.tare.reset();
    session.indicator.bearing = Bearing::adds;
    session.indicator.plunger = 1.0 * newton;
    const auto problem = only_problem(session, readings);
    check_error(problem, "the spring would carry -0.2 N here, less than nothing", 0);
    CHECK_THAT(problem.hint, ContainsSubstring("adds to the pan or relieves it"));
}

TEST_CASE("a run without any load shows that nothing was pressed") {
    check_error(only_problem(bench_of_grams(), pressed({30.0, 28.0, 26.0})), "no reading shows a load");
}

TEST_CASE("readings without place are pointed at") {
    Readings session = bench_of_grams();
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    readings[1].height.reset();
    check_error(only_problem(session, readings), "this reading has neither a height nor a travel", 1);
    readings[1].travel = 3.0 * mm;
    check_error(only_problem(session, readings),
                "this reading has a travel, and nothing says at which height the indicator shows zero", 1);
    session.indicator.height_at_zero = {2.0 * mm, {}};
    check_error(only_problem(session, readings),
                "this travel is longer than the height at which the indicator shows zero", 1);
    readings[1].height = 0.0 * mm;
    check_error(only_problem(session, readings), "a height between the plates must be above zero", 1);
}

TEST_CASE("a plunger whose force changes needs its travel, inside the table of its forces") {
    Readings session = bench_of_grams();
    session.indicator.bearing = Bearing::adds;
    session.indicator.plunger = PlungerTable{{0.0 * mm, 0.1 * newton}, {10.0 * mm, 0.2 * newton}};
    auto readings = pressed({21.0, 17.0, 13.0, 9.0});
    auto all = problems_of(session, test::run_of(readings));
    REQUIRE(all.size() == 4);
    check_error(all[3], "the plunger's force changes with travel, and this reading has none", 3);
    session.indicator.height_at_zero = {21.0 * mm, {}};
    check_error(only_problem(session, readings), "the travel of this reading lies outside the table of plunger forces",
                3);
}

TEST_CASE("a bench of which nothing is known gives no uncertainty, and is refused") {
    Readings session;
    check_error(only_problem(session, pressed({21.0, 17.0, 13.0, 9.0})),
                "no uncertainty is stated of scale and heights");
}

TEST_CASE("a load path without stiffness is refused") {
    Readings session = bench_of_grams();
    session.load_path.stiffness = {Rate{}, {}};
    check_error(only_problem(session, pressed({21.0, 17.0, 13.0, 9.0})),
                "the stiffness of the load path must be above zero");
}

TEST_CASE("a scale too coarse for the spring is warned of") {
    Readings session = bench_of_grams();
    session.scale.resolution = 50.0 * gram;
    const auto problem = only_problem(session, pressed({21.0, 17.0, 13.0, 9.0}));
    CHECK(problem.severity == Severity::warning);
    CHECK(problem.message == "the largest load is only 11 steps of the scale");
}

TEST_CASE("readings that rise within their own doubt only make no line") {
    Readings session = bench_of_grams();
    session.scale.resolution = 1.0 * gram;
    session.scale.linearity = Mass{};
    session.gauge.error = 8.0 * mm;
    const auto measurement = measure(session, test::run_of(pressed({10.0, 9.8, 9.6})));
    CHECK_FALSE(measurement.spring);
    REQUIRE(measurement.problems.size() == 1);
    check_error(measurement.problems[0],
                "no three readings in a row make a line that rises clearly above its uncertainty");
    const RunProblem& problem = measurement.problems[0];
    CHECK(render({seatload::error(problem.id, problem.message, problem.hint)}) ==
          "error: no three readings in a row make a line that rises clearly above its uncertainty [no-line]\n"
          "    hint: press the spring further, or state how well scale and heights are known\n");
}

TEST_CASE("a run on a rigid block is looked at too") {
    Readings session;
    session.indicator.resolution = 0.001 * mm;
    auto& block = session.load_path.block_run;
    CHECK(block_problems_of(session).empty());
    block = {{0.0 * mm, 0.0 * newton}, {0.1 * mm, 10.0 * newton}};
    REQUIRE(block_problems_of(session).size() == 1);
    check_error(block_problems_of(session)[0], "the run on a rigid block has fewer than three readings");
    block.push_back({0.05 * mm, 20.0 * newton});
    REQUIRE(block_problems_of(session).size() == 1);
    check_error(block_problems_of(session)[0], "the travel on the rigid block falls as its load rises", 2);
    block[2].travel = 0.2 * mm;
    CHECK(block_problems_of(session).empty());
    for (auto& reading : block) reading.scale = 10.0 * newton;
    check_error(block_problems_of(session).at(0), "all readings of the run on a rigid block are at one load");
    session.indicator.resolution = Length{};
    check_error(block_problems_of(session).at(0),
                "the run on a rigid block needs the resolution of what read its travel");
}
