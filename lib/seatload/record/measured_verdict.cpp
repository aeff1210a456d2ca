// SPDX-License-Identifier: MIT
#include <seatload/record/measured_verdict.hpp>

#include <algorithm>

namespace seatload::record {
namespace {

constexpr Length kSameHeight = 0.005 * mm;  // heights are written to a hundredth

Length apart(const MeasuredLoad& load, Length height) {
    const Length difference = load.height - height;
    return difference < 0.0 * mm ? -difference : difference;
}

/// The load at a height, from the nearest load measured.
std::optional<bench::Stated<Force>> load_at(const Measured& measured, Length height) {
    const auto nearest =
        std::min_element(measured.loads.begin(), measured.loads.end(),
                         [&](const auto& a, const auto& b) { return apart(a, height) < apart(b, height); });
    if (nearest == measured.loads.end()) return std::nullopt;
    if (apart(*nearest, height) <= kSameHeight) return nearest->load;
    if (!measured.rate) return std::nullopt;
    return bench::Stated<Force>{nearest->load.value + measured.rate->value * (nearest->height - height),
                                nearest->load.plus_minus + measured.rate->plus_minus * apart(*nearest, height)};
}

Proof proof_of(const bench::Stated<Force>& load, Force limit, check::Sense sense) {
    const Force inside = sense == check::Sense::at_least ? load.value - limit : limit - load.value;
    if (inside >= load.plus_minus) return Proof::kept;
    return inside < -load.plus_minus ? Proof::broken : Proof::unsure;
}

MeasuredVerdict verdict(std::string name, const bench::Stated<Force>& load, Force limit, check::Sense sense) {
    return {std::move(name), load, limit, sense, proof_of(load, limit, sense)};
}

/// The share of its load that the spring keeps hot and after load loss.
double kept_in_service(const check::AtLength& at) {
    if (at.load <= 0.0 * newton) return 1.0;
    return at.load_in_service / at.load;
}

void judge(std::vector<MeasuredVerdict>& verdicts, const std::string& name, const Measured& measured,
           const check::AtLength& at, const demand::LoadBand& wanted) {
    const auto load = load_at(measured, at.length);
    if (!load) return;
    const double kept = kept_in_service(at);
    if (wanted.at_least)
        verdicts.push_back(verdict(name + " as measured, less what heat and load loss take",
                                   {kept * load->value, kept * load->plus_minus}, *wanted.at_least,
                                   check::Sense::at_least));
    if (wanted.at_most)
        verdicts.push_back(verdict(name + " as measured, cold", *load, *wanted.at_most, check::Sense::at_most));
}

}  // namespace

std::vector<MeasuredVerdict> judge_measured(const Measured& measured, const check::Evaluation& evaluation,
                                            const demand::Requirement& requirement) {
    std::vector<MeasuredVerdict> verdicts;
    if (evaluation.seated) judge(verdicts, "seated load", measured, *evaluation.seated, requirement.seated_load);
    if (evaluation.full_travel)
        judge(verdicts, "full-travel load", measured, *evaluation.full_travel, requirement.full_travel_load);
    return verdicts;
}

}  // namespace seatload::record
