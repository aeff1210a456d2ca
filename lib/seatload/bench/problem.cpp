// SPDX-License-Identifier: MIT
#include <seatload/bench/problem.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/bench/correction.hpp>
#include <seatload/bench/groups.hpp>
#include <seatload/core/text.hpp>

namespace seatload::bench {

namespace {

constexpr std::size_t kFewest = 3;
constexpr std::size_t kMost = 500;    // the search for the straight stretch grows with the third power
constexpr double kBeyondDoubt = 4.0;  // standard uncertainties
constexpr double kCoarse = 20.0;  // steps of the scale that the largest load should have (common practice, no source)

using Problems = std::vector<RunProblem>;

using At = std::optional<std::size_t>;

void error(Problems& all, At reading, DiagnosticId id, std::string message, std::string hint) {
    all.push_back({Severity::error, id, std::move(message), std::move(hint), reading});
}
void warning(Problems& all, At reading, DiagnosticId id, std::string message, std::string hint) {
    all.push_back({Severity::warning, id, std::move(message), std::move(hint), reading});
}

std::string mm_text(double value) { return significant(value, 6) + " mm"; }
std::string newton_text(double value) { return significant(value, 3) + " N"; }

bool needs_travel(const Indicator& indicator) {
    return indicator.bearing != Bearing::none && !std::holds_alternative<Force>(indicator.plunger);
}

// Travels that no height belongs to, told at the first of them.
void add_travel_without_zero(Problems& all, const Readings& session, const SpringRun& run) {
    if (session.indicator.height_at_zero) return;
    for (std::size_t i = 0; i < run.readings.size(); ++i)
        if (run.readings[i].travel && !run.readings[i].height)
            return error(all, i, "no-height"_id,
                         "this reading has a travel, and nothing says at which height the indicator shows zero",
                         "state it under [indicator], as in height_at_zero = \"20.00 mm ±0.01 mm\"; or read heights");
}

// What keeps one reading from being corrected.
void add_reading_faults(Problems& all, const Readings& session, const SpringRun& run, std::size_t i) {
    const Reading& reading = run.readings[i];
    const Indicator& indicator = session.indicator;
    if (!reading.height && !reading.travel)
        return error(all, i, "no-height"_id, "this reading has neither a height nor a travel",
                     "state the height between the plates");
    if (!reading.height && !indicator.height_at_zero) return;  // told once for all
    if (reading.height && *reading.height <= Length{})
        return error(all, i, "out-of-span"_id, "a height between the plates must be above zero",
                     "the way the indicator moved is stated as travel, not as height");
    if (needs_travel(indicator) && !reading.travel && !indicator.height_at_zero)
        return error(all, i, "no-height"_id, "the plunger's force changes with travel, and this reading has none",
                     "state the travel too, or the height at which the indicator shows zero");
    const auto c = corrected(session, reading);
    if (!c)
        return error(all, i, "no-plunger-force"_id,
                     "the travel of this reading lies outside the table of plunger forces",
                     "measure the plunger's force over the whole travel");
    if (c->stated_height_mm <= 0.0)
        error(all, i, "out-of-span"_id, "this travel is longer than the height at which the indicator shows zero",
              "the height would be " + mm_text(c->stated_height_mm));
}

double shared_doubt_n(const Readings& session) {
    double variance = 0.0;
    for (const CommonSource& s : common_sources(session))
        if (s.error == &CommonErrors::zero_n || s.error == &CommonErrors::plunger_n)
            variance += s.standard * s.standard;
    return std::sqrt(variance);
}

// Loads below nothing: a wrong tare, or the plunger taken off that should be added.
void add_negative_loads(Problems& all, const Readings& session, const SpringRun& run) {
    const double shared = shared_doubt_n(session);
    for (std::size_t i = 0; i < run.readings.size(); ++i) {
        const auto c = corrected(session, run.readings[i]);
        const OwnDoubt own = own_doubt(session, run.readings[i]);
        if (!c || c->force_n > -kBeyondDoubt * std::hypot(shared, own.scale_step_n, own.linearity_n)) continue;
        const bool plunger = session.indicator.bearing != Bearing::none;
        error(
            all, i, "load-below-nothing"_id,
            "the spring would carry " + newton_text(c->force_n) + " here, less than nothing",
            plunger ? "look at the tare, and whether the plunger adds to the pan or relieves it" : "look at the tare");
    }
}

// A load that falls while the spring is pressed further; the line shows it as an outlier, or it is a slip of the pen.
Problems falling_loads(const Readings& session, const SpringRun& run, const std::vector<Group>& loading) {
    Problems all;
    for (std::size_t i = 1; i < loading.size(); ++i) {
        const OwnDoubt own = own_doubt(session, run.readings[loading[i].readings.front()]);
        const double doubt = std::sqrt(2.0) * std::hypot(own.scale_step_n, own.linearity_n);
        if (loading[i].force_n > loading[i - 1].force_n - kBeyondDoubt * doubt) continue;
        warning(all, loading[i].readings.front(), "load-falls"_id,
                "the load falls from " + newton_text(loading[i - 1].force_n) + " at " +
                    mm_text(loading[i - 1].stated_height_mm) + " to " + newton_text(loading[i].force_n) + " at " +
                    mm_text(loading[i].stated_height_mm) + ", though the spring is pressed further",
                "look at this reading and the one before it again; unloading readings must be marked as such");
    }
    return all;
}

// Why the loads do not rise with the pressing: one reading far off, or heights that are none.
void add_no_rise(Problems& all, Problems falls, std::size_t steps) {
    if (falls.empty() || 2 * falls.size() >= steps)
        return error(
            all, {}, "load-falls"_id,
            "the load does not rise as the height falls: a spring pressed shorter must push harder",
            "heights are the distance between the plates; state travels as travel, and mark unloading readings");
    for (RunProblem& fall : falls) {
        fall.severity = Severity::error;
        all.push_back(std::move(fall));
    }
}

bool rises(const std::vector<Group>& loading) {
    std::vector<LinePoint> points;
    for (const Group& g : loading) points.push_back({g.height_mm, g.force_n, 0.0, 1.0});
    return refit(points, std::vector<double>(points.size(), 1.0)).slope < 0.0;
}

bool without_load(const Readings& session, const SpringRun& run, const std::vector<Group>& loading) {
    return std::all_of(loading.begin(), loading.end(), [&](const Group& g) {
        const OwnDoubt own = own_doubt(session, run.readings[g.readings.front()]);
        return std::abs(g.force_n) <= kBeyondDoubt * std::hypot(own.scale_step_n, own.linearity_n);
    });
}

bool no_doubt_stated(const Readings& session, const SpringRun& run) {
    return std::any_of(run.readings.begin(), run.readings.end(), [&](const Reading& r) {
        const OwnDoubt own = own_doubt(session, r);
        return own.scale_step_n + own.linearity_n + own.height_step_mm + own.height_error_mm <= 0.0;
    });
}

void add_too_few(Problems& all, const SpringRun& run, const std::vector<Group>& loading) {
    const auto pressed =
        std::count_if(run.readings.begin(), run.readings.end(), [](const auto& r) { return !r.unloading; });
    const std::string count = std::to_string(pressed) + (pressed == 1 ? " loading reading" : " loading readings");
    if (pressed < static_cast<std::ptrdiff_t>(kFewest))
        error(all, {}, "readings-too-few"_id,
              count + ": a line with a check on it needs " + std::to_string(kFewest) + " at least",
              "read the scale at five heights or more");
    else if (loading.size() == 1)
        error(all, {}, "readings-too-few"_id,
              "all loading readings are at one height, " + mm_text(loading[0].stated_height_mm),
              "a rate needs loads at different heights");
    else
        error(all, {}, "readings-too-few"_id, count + " at two heights only: a line with a check on it needs three",
              "read the scale at five heights or more");
}

void add_run_faults(Problems& all, const Readings& session, const SpringRun& run) {
    const auto loading = groups_of(session, run, false);
    if (run.readings.size() > kMost)
        return error(all, {}, "readings-too-many"_id,
                     std::to_string(run.readings.size()) + " readings: at most " + std::to_string(kMost) + " are taken",
                     "take every tenth, say");
    if (no_doubt_stated(session, run))
        return error(all, {}, "no-uncertainty"_id, "no uncertainty is stated of scale and heights",
                     "state the resolution of the scale and of what sets the heights");
    if (loading.size() < kFewest) return add_too_few(all, run, loading);
    if (without_load(session, run, loading))
        return error(all, {}, "no-load"_id, "no reading shows a load", "press the spring further, or look at the tare");
    Problems falls = falling_loads(session, run, loading);
    if (!rises(loading)) return add_no_rise(all, std::move(falls), loading.size() - 1);
    all.insert(all.end(), falls.begin(), falls.end());
    const double step =
        in_newton(Force::from_value(own_doubt(session, run.readings[0]).scale_step_n * std::sqrt(12.0)));
    if (const double largest = loading.back().force_n; step > 0.0 && largest < kCoarse * step)
        warning(all, {}, "too-coarse"_id,
                "the largest load is only " + significant(largest / step, 2) + " steps of the scale",
                "a scale with a finer display would tell more");
}

}  // namespace

std::vector<RunProblem> problems_of(const Readings& session, const SpringRun& run) {
    Problems all;
    if (const auto& k = session.load_path.stiffness; k && !(k->value > Rate{})) {
        error(all, {}, "out-of-span"_id, "the stiffness of the load path must be above zero",
              "state none where nothing gives way");
        return all;
    }
    add_travel_without_zero(all, session, run);
    for (std::size_t i = 0; i < run.readings.size(); ++i) add_reading_faults(all, session, run, i);
    if (all.empty()) add_negative_loads(all, session, run);
    if (all.empty()) add_run_faults(all, session, run);
    return all;
}

std::vector<RunProblem> block_problems_of(const Readings& session) {
    Problems all;
    const auto& block = session.load_path.block_run;
    if (block.empty() || session.load_path.stiffness) return all;
    const double steps =
        in_mm(session.indicator.resolution > Length{} ? session.indicator.resolution : session.gauge.resolution);
    if (block.size() < kFewest)
        error(all, {}, "readings-too-few"_id, "the run on a rigid block has fewer than three readings",
              "read it at five loads or more");
    else if (steps <= 0.0)
        error(all, {}, "no-uncertainty"_id, "the run on a rigid block needs the resolution of what read its travel",
              "state the resolution of the indicator or of the height gauge");
    else if (std::all_of(block.begin(), block.end(), [&](auto& r) { return r.scale == block[0].scale; }))
        error(all, {}, "readings-too-few"_id, "all readings of the run on a rigid block are at one load",
              "raise the load from one to the next");
    for (std::size_t i = 1; all.empty() && i < block.size(); ++i) {
        const bool more_load = block[i].scale > block[i - 1].scale;
        const Length doubt = 2.0 * steps * mm;
        if (more_load && block[i].travel < block[i - 1].travel - doubt)
            error(all, i, "travel-falls"_id, "the travel on the rigid block falls as its load rises",
                  "travel counts the way the gauge moves on, rising with load");
    }
    return all;
}

}  // namespace seatload::bench
