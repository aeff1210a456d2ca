// SPDX-License-Identifier: MIT
#include <seatload/bench/remarks.hpp>

#include <algorithm>

#include <seatload/units/format.hpp>

namespace seatload::bench {

namespace {

using Texts = std::vector<std::string>;

std::size_t count(const MeasuredSpring& spring, Use use) {
    return static_cast<std::size_t>(
        std::count_if(spring.points.begin(), spring.points.end(), [use](const Point& p) { return p.use == use; }));
}

void about_the_bench(Texts& all, const Readings& session, const SpringRun& run) {
    const bool masses = std::any_of(run.readings.begin(), run.readings.end(),
                                    [](const Reading& r) { return std::holds_alternative<Mass>(r.scale); });
    if (masses && std::holds_alternative<std::monostate>(session.scale.adjusted_at))
        all.push_back(
            "Where the scale was adjusted is not stated, so gravity may be that of any place on earth (0.27 %).");
    if (!session.load_path.stiffness && session.load_path.block_run.empty())
        all.push_back("Scale and frame are taken as rigid: what they give way makes the spring seem softer.");
    if (run.preload.count == 0)
        all.push_back("The spring was not pressed before the readings: the first pressing may have set it.");
}

void about_the_points(Texts& all, const MeasuredSpring& spring) {
    if (const std::size_t n = count(spring, Use::outlier); n > 0)
        all.push_back(n == 1 ? "1 reading lies too far off the line for chance and still counts: look at it again, or "
                               "measure again."
                             : std::to_string(n) +
                                   " readings lie too far off the line for chance and still count: look "
                                   "at them again, or measure again.");
    if (spring.repeatability)
        all.push_back("Readings scatter by " + units::shown(*spring.repeatability, 3) +
                      " (one standard deviation), as heights read again show.");
    for (const LoadAtHeight& load : spring.loads)
        if (load.outside)
            all.push_back("The height " + units::shown(load.asked.height.value, 2) + " (" + load.asked.name +
                          ") lies beyond the readings of the line: its load is reckoned, not measured.");
}

// A load asked for where coils already touch is more than the line says.
void about_closing(Texts& all, const MeasuredSpring& spring) {
    if (!spring.closing) return;
    for (const LoadAtHeight& load : spring.loads)
        if (load.asked.height.value < spring.closing->above)
            all.push_back("At " + units::shown(load.asked.height.value, 2) + " (" + load.asked.name +
                          ") coils may already touch: the load there may be more than the line says.");
}

}  // namespace

std::vector<std::string> remarks_on(const Readings& session, const SpringRun& run, const MeasuredSpring& spring) {
    Texts all;
    about_the_points(all, spring);
    about_closing(all, spring);
    about_the_bench(all, session, run);
    if (const auto& loose = run.dimensions.free_length)
        all.push_back("Loose, the spring is " + units::shown(loose->value, 2) +
                      " long; where the line meets no load it is " + units::shown(spring.free_length.value, 2) +
                      ". The two differ, as end coils seat and close little by little.");
    return all;
}

}  // namespace seatload::bench
