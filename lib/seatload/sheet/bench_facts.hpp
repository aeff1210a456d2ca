// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/bench/wire_inference.hpp>
#include <seatload/sheet/fact_lines.hpp>

namespace seatload::sheet {

/// How far the line can be believed: straightness, hysteresis, contact and closing coils, remarks.
std::vector<Fact> bench_verdict_facts(const bench::MeasuredSpring& spring);

/// What wire it seems to be, and what set or wear would explain.
std::vector<Fact> bench_wire_facts(const bench::WireAnswer& wire, const std::vector<bench::Weakening>& weakenings);

/// Fixture, instruments, gravity and load path; preloads of the spring and temperature.
std::vector<Fact> bench_session_facts(const bench::Readings& session);
Fact bench_preload_fact(const bench::Readings& session, const bench::SpringRun& run);

/// What U means and what it rests on.
Fact bench_trust_fact();

/// What stands on every page.
Fact bench_caution();

}  // namespace seatload::sheet
