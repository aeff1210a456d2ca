// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include <seatload/bench/comparison.hpp>
#include <seatload/bench/measured.hpp>
#include <seatload/core/file.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/sheet/bench_sheet.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

// Invented bench runs: springs whose rate and free length are put in, read with errors put in too.

namespace seatload::test {

/// What a spring truly is, and how it is read.
struct TrueSpring {
    std::string name;
    bench::Role role = bench::Role::suspect;
    double rate_n_mm = 1.4;
    double free_length_mm = 18.9;
    double first_height_mm = 18.5;
    double last_height_mm = 10.0;
    int points = 12;
    double scatter_g = 1.0;
    double closing_from_mm = 0.0;  ///< below this height the rate is half as large again; 0: nowhere
    double loose_mm = 0.0;         ///< free length before end coils seat: readings above the line near no load
    bool unloading = false;
    int outlier = -1;  ///< a reading 40 g too high
};

/// Numbers that look like chance between -1 and 1, the same each time: the golden angle's fractions.
inline double scatter(int i) {
    const double x = 0.6180339887498949 * (i + 1);
    return 2.0 * (x - std::floor(x)) - 1.0;
}

inline double true_force(const TrueSpring& s, double height_mm) {
    double force = s.rate_n_mm * (s.free_length_mm - height_mm);
    if (height_mm < s.closing_from_mm) force += 0.5 * s.rate_n_mm * (s.closing_from_mm - height_mm);
    if (force < 0.0) force = 0.0;
    if (s.loose_mm > height_mm && force < 0.6) force = 0.3 * s.rate_n_mm * (s.loose_mm - height_mm);
    return force;
}

/// On a kitchen scale with a step of 1 g and 152 g of fixture, adjusted at 54 degrees north.
inline bench::Readings bench_session() {
    bench::Readings session;
    session.title = "Ahead latch springs, M14";
    session.date = "2026-11-20";
    session.fixture = "mill quill over a counter scale, steel cup on the pan, flat anvil in the quill";
    session.gauge = {0.01 * mm, 0.02 * mm, Share{0.0005}, 0.02 * mm};
    session.scale.resolution = 1.0 * gram;
    session.scale.span_error = Share{0.001};
    session.scale.linearity = 1.0 * gram;
    session.scale.zero = 1.0 * gram;
    session.scale.tare = 152.0 * gram;
    session.scale.adjusted_at = bench::Site{54.0 * std::numbers::pi / 180.0 * radian, 30.0e3 * mm};
    session.load_path.stiffness = bench::Stated<Rate>{160.0 * newton_per_mm, 15.0 * newton_per_mm};
    session.heights = {{"seated", {15.0 * mm, 0.05 * mm}}, {"full travel", {9.6 * mm, 0.05 * mm}}};
    return session;
}

inline bench::SpringRun run_of(const TrueSpring& s, const bench::Readings& session) {
    constexpr double kGravity = 9.8138;  // at 54 degrees north, by the WELMEC form worked by hand
    bench::SpringRun run;
    run.name = s.name;
    run.role = s.role;
    run.preload.count = 3;
    run.dimensions.wire_diameter = bench::Stated<Length>{0.8 * mm, 0.005 * mm};
    run.dimensions.outside_diameter = bench::Stated<Length>{8.2 * mm, 0.03 * mm};
    run.dimensions.total_coils = bench::Stated<double>{9.5, 0.1};
    run.dimensions.ends = spring::Ends::closed_ground;
    const double tare = in_gram(std::get<Mass>(*session.scale.tare));
    const auto read = [&](double height, int i, double more_g) {
        // The load path gives way, so that the spring is a little longer than the quill says.
        const double stiff = in_newton_per_mm(session.load_path.stiffness->value);
        double force = true_force(s, height);
        for (int k = 0; k < 20; ++k) force = true_force(s, height + force / stiff);
        const double shown = std::round(force / kGravity * 1000.0 + tare + s.scatter_g * scatter(i) + more_g);
        bench::Reading reading;
        reading.height = height * mm;
        reading.scale = shown * gram;
        run.readings.push_back(reading);
    };
    const double step = (s.first_height_mm - s.last_height_mm) / (s.points - 1);
    for (int i = 0; i < s.points; ++i) read(s.first_height_mm - i * step, i, i == s.outlier ? 40.0 : 0.0);
    for (int i = s.points - 2; s.unloading && i > 0; i -= 2) {
        read(s.first_height_mm - i * step, i + 100, -3.0);
        run.readings.back().unloading = true;
    }
    return run;
}

inline bench::Readings with_runs(bench::Readings session, const std::vector<TrueSpring>& springs) {
    for (const TrueSpring& s : springs) session.springs.push_back(run_of(s, session));
    return session;
}

/// The same session on a scale that shows newtons.
inline bench::Readings in_newtons(bench::Readings session) {
    const auto to_force = [](bench::ScaleReading& reading) {
        reading = in_gram(std::get<Mass>(reading)) * 0.0098138 * newton;
    };
    for (bench::ScaleReading* part : {&session.scale.resolution, &session.scale.linearity, &session.scale.zero})
        to_force(*part);
    to_force(*session.scale.tare);
    for (bench::SpringRun& run : session.springs)
        for (bench::Reading& reading : run.readings) to_force(reading.scale);
    return session;
}

inline bench::Readings template_readings(const std::string& name) {
    const std::string path = std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name;
    const auto readings = io::read_readings(read_text_file(path).value(), path, wires());
    REQUIRE(readings.has_value());
    return *readings;
}

/// Springs measured in one session, with what a sheet is made of.
struct BenchSpecimen {
    std::string name;
    bench::Readings session;
    std::vector<bench::MeasuredSpring> measured;
    std::vector<bench::Comparison> comparisons;

    BenchSpecimen(std::string title, bench::Readings readings, const std::vector<TrueSpring>& springs)
        : BenchSpecimen(std::move(title), with_runs(std::move(readings), springs)) {}

    /// Every other spring is compared with the first.
    BenchSpecimen(std::string title, bench::Readings readings) : name(std::move(title)), session(std::move(readings)) {
        for (const bench::SpringRun& run : session.springs) {
            const bench::Measurement found = bench::measure(session, run);
            for (const bench::RunProblem& problem : found.problems) UNSCOPED_INFO(problem.message);
            REQUIRE(found.spring.has_value());
            measured.push_back(*found.spring);
        }
        for (std::size_t i = 1; i < measured.size(); ++i)
            comparisons.push_back(bench::compare(measured[i], measured[0]));
    }

    sheet::BenchSheetInput input(const sheet::Wording& words) const {
        sheet::BenchSheetInput out{{}, comparisons, words, sheet::PaperSize::a4};
        for (std::size_t i = 0; i < measured.size(); ++i) {
            const bench::SpringRun& run = session.springs[i];
            std::vector<bench::Weakening> weakenings;
            if (i > 0) weakenings.push_back(bench::explain(run, measured[i], session.springs[0], measured[0]));
            out.springs.push_back({session, run, measured[i], bench::infer_wire(session, run, measured[i], wires()),
                                   std::move(weakenings)});
        }
        return out;
    }
};

inline TrueSpring good_spring() {
    return {"good", bench::Role::good, 1.46, 19.4, 19.2, 9.5, 12, 1.0, 0.0, 19.9, true, -1};
}
inline TrueSpring weak_spring() {
    return {"weak", bench::Role::suspect, 1.38, 18.3, 18.8, 9.0, 14, 1.0, 9.9, 18.9, true, -1};
}

/// Runs as unlike as a bench may bring them.
inline std::vector<BenchSpecimen> bench_specimens() {
    const auto stiff = [] {
        bench::Readings s = bench_session();
        s.heights = {{"seated", {38.0 * mm, 0.05 * mm}}, {"full travel", {32.0 * mm, 0.05 * mm}}};
        return s;
    };
    std::vector<BenchSpecimen> out;
    out.emplace_back("one spring", bench_session(), std::vector{weak_spring()});
    out.emplace_back("two springs", bench_session(), std::vector{good_spring(), weak_spring()});
    out.emplace_back("template, with indicator and rigid block", template_readings("ahead_latch_readings.toml"));
    TrueSpring stout = good_spring();
    stout.first_height_mm = 19.9;  // above its free length: some readings carry nothing
    stout.scatter_g = 4.0;
    out.emplace_back("a scale that shows newtons", in_newtons(with_runs(bench_session(), {stout})));
    bench::Readings bare = bench_session();  // nothing known but the steps of the displays
    bare.title = bare.date = bare.fixture = "";
    bare.gauge = {0.1 * mm, 0.0 * mm, Share{}, 0.0 * mm};
    bare.scale = {1.0 * gram, Share{}, 0.0 * gram, 0.0 * gram, 0.0 * gram, std::monostate{}};
    bare.load_path.stiffness = bench::Stated<Rate>{1e6 * newton_per_mm, 0.0 * newton_per_mm};
    bare.heights.clear();
    TrueSpring three{"three points", bench::Role::suspect, 1.4, 18.9, 17.0, 12.0, 3};
    out.emplace_back("three points, no height asked", bare, std::vector{three});
    TrueSpring sixty{"sixty points", bench::Role::new_made, 9.2, 46.0, 45.5, 31.0, 60};
    sixty.scatter_g = 6.0;
    out.emplace_back("sixty points of a stiff spring", stiff(), std::vector{sixty});
    TrueSpring scattered = good_spring();
    scattered.name = "scattered";
    scattered.scatter_g = 12.0;
    scattered.outlier = 5;
    out.emplace_back("scatter and an outlier", bench_session(), std::vector{scattered});
    std::vector<TrueSpring> six;
    for (int i = 0; i < 6; ++i) {
        TrueSpring s = i % 2 == 0 ? good_spring() : weak_spring();
        s.rate_n_mm += 0.02 * i;
        s.name =
            "spring " + std::to_string(i + 1) + (i == 3 ? ", taken out of the second gearbox after 4000 hours" : "");
        if (i == 4) s.role = bench::Role::new_made;
        six.push_back(s);
    }
    bench::Readings wordy = bench_session();
    wordy.title = "Springs of the ahead and the astern latch of the reversing gearbox of the Ottermere M14 and M21";
    wordy.fixture =
        "Sixty characters of a note that must go on to a second line. "
        "Sixty characters of a note that must go on to a second line.";
    wordy.heights.push_back({"half way, where the ball of the detent climbs out of its groove", {12.0 * mm, 0.1 * mm}});
    wordy.heights.push_back({"cold start", {14.2 * mm, 0.05 * mm}});
    out.emplace_back("six springs, four heights, long names", wordy, six);
    return out;
}

}  // namespace seatload::test
