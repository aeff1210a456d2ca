// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/bench/comparison.hpp>
#include <seatload/bench/wire_inference.hpp>

namespace seatload::cli {

/// A spring of a session, measured.
struct BenchedSpring {
    const bench::SpringRun& run;
    bench::MeasuredSpring measured;
    bench::WireAnswer wire;
    std::vector<bench::Weakening> weakenings;
};

/// What is shown of one session at the bench.
struct BenchView {
    std::string file;
    const bench::Readings& session;
    const std::vector<BenchedSpring>& springs;
    const std::vector<bench::Comparison>& comparisons;
    bool details = false;  ///< for people: every reading, all wires that fit and what each ± is made of, too
};

/// For people, in lines of at most `width` columns.
std::string bench_text(const BenchView& view, int width);
/// What ± means, and that there is more to tell: below all sessions told without details.
std::string bench_more_text(int width);

/// For programs: keys with unit suffixes, numbers in full precision.
nlohmann::ordered_json bench_json(const BenchView& view);

}  // namespace seatload::cli
