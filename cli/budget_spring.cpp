// SPDX-License-Identifier: MIT
#include <cli/budget_spring.hpp>

#include <cmath>
#include <optional>

#include <seatload/core/text.hpp>
#include <seatload/io/spring_file.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

using demand::Interval;

constexpr double kSameHeight = 1e-6;  // mm, far below what a bench can tell

std::optional<Interval<Force>> load_at(const record::Measured& measured, Length height) {
    for (const record::MeasuredLoad& m : measured.loads)
        if (std::abs(in_mm(m.height) - in_mm(height)) < kSameHeight)
            return Interval<Force>{m.load.value - m.load.plus_minus, m.load.value + m.load.plus_minus};
    return std::nullopt;
}

Diagnostics not_measured(const std::string& spring_file, Length height) {
    return Diagnostics{error_in(spring_file, "no-measured-load"_id,
                                "no load of this spring was measured at " + shortest(in_mm(height)) + " mm",
                                "name that height in the readings and put them to `seatload bench` again")};
}

}  // namespace

Diagnostics look_at_spring(const std::string& spring_file, record::PlungerFile& plunger) {
    const auto references = load_references("");
    if (!references) return references.error();
    const auto read = [&](std::string_view text, const std::string& name) {
        return io::read_spring(text, name, references->wires);
    };
    const auto spring = read_file(spring_file, read);
    if (!spring) return spring.error();
    if (!spring->measured)
        return Diagnostics{
            error_in(spring_file, "not-measured"_id, "this spring was not measured",
                     "`seatload bench` writes a file of one that was; loads known otherwise are stated in the "
                     "plunger file, under [spring]")};
    if (!plunger.space)
        return Diagnostics{error_in(spring_file, "missing-key"_id,
                                    "the plunger does not tell at which heights its spring stands",
                                    "state seated_height and full_travel_height under [space]")};
    const auto seated = load_at(*spring->measured, plunger.space->seated_height);
    if (!seated) return not_measured(spring_file, plunger.space->seated_height);
    const auto full_travel = load_at(*spring->measured, plunger.space->full_travel_height);
    if (!full_travel) return not_measured(spring_file, plunger.space->full_travel_height);
    plunger.spring = demand::SpringLoads{*seated, *full_travel};
    return {};
}

}  // namespace seatload::cli
