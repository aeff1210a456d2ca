// SPDX-License-Identifier: MIT
#include <seatload/record/sought.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::record {
namespace {

constexpr double kSlackMm = 1e-9;  // so that a length meant to lie on its bound does
constexpr Celsius kCold{20.0};

/// What a requirement asks of the spring that is no limit: ends, hand and wire.
std::vector<std::string> remarks_on(const Spec& spec, const demand::Requirement& r) {
    std::vector<std::string> remarks;
    if (std::find(r.ends.begin(), r.ends.end(), spec.spring.ends) == r.ends.end())
        remarks.push_back("its ends are " + std::string(spring::word(spec.spring.ends)) +
                          ", which the requirement does not offer");
    if (spec.spring.hand != r.hand) remarks.emplace_back("it is wound the other way than the requirement asks for");
    const auto& grades = r.wire.grades;
    if (!grades.empty() && std::find(grades.begin(), grades.end(), spec.wire_grade) == grades.end())
        remarks.push_back("its wire, " + spec.wire_grade + ", is none of those the requirement names");
    return remarks;
}

/// The load at a length asked for by itself: "load at 18 mm, cold and new"; empty for what a requirement asks.
std::string load_name(const check::Rule& rule, const Sought& sought) {
    const bool is_seated = rule.id.starts_with("seated_load_");
    if (sought.requirement || sought.loads.empty() || !(is_seated || rule.id.starts_with("full_travel_load_")))
        return {};
    const WantedLoad& wanted = is_seated ? sought.loads.front() : sought.loads.back();
    const bool is_hot = sought.temperature && rule.id.ends_with("_least");
    return "load at " + shortest(in_mm(wanted.at)) + " mm, " + (is_hot ? "hot and after load loss" : "cold and new");
}

/// The reason of a verdict, in the words of what is looked for.
std::string miss_words(const check::Verdict& verdict, const Sought& sought) {
    const std::string name = load_name(*verdict.rule, sought);
    return name.empty() ? verdict.reason : name + verdict.reason.substr(verdict.rule->subject.size());
}

}  // namespace

bool LengthBand::has(Length length) const {
    const double value = in_mm(length);
    return !(at_least && value < in_mm(*at_least) - kSlackMm) && !(at_most && value > in_mm(*at_most) + kSlackMm);
}

demand::Requirement asked_of(const Spec& spec, const Sought& sought) {
    if (sought.requirement) return *sought.requirement;
    demand::Requirement r = requirement_of(spec);
    r.seated_load = {};
    r.full_travel_load = {};
    r.space.free_length.reset();
    if (sought.bore || sought.rod) {
        r.space.bore = sought.bore;
        r.space.rod = sought.rod;
        r.space.sideways_play.reset();
    }
    if (!sought.loads.empty()) {
        r.surroundings.temperature = sought.temperature.value_or(kCold);
        if (!sought.temperature) r.limits.load_loss.reset();
        r.space.seated_height = sought.loads.front().at;
        r.seated_load = sought.loads.front().load;
        r.space.full_travel_height = sought.loads.back().at;
        if (sought.loads.size() > 1) r.full_travel_load = sought.loads.back().load;
    }
    return r;
}

bool has_dimensions(const Spec& spec, const Sought& sought) {
    const spring::Spring& s = spec.spring;
    return (sought.wire.empty() || lower(spec.wire_grade).find(lower(sought.wire)) != std::string::npos) &&
           sought.wire_diameter.has(s.wire_diameter) &&
           sought.outside_diameter.has(s.mean_diameter + s.wire_diameter) && sought.free_length.has(s.free_length);
}

FoundSpring judged(const Spec& spec, const wire::Grade& grade, const Sought& sought, const tolerance::Tables& tables) {
    FoundSpring found;
    const demand::Requirement r = asked_of(spec, sought);
    auto evaluation = check::evaluate(spec.spring, grade, r, tables);
    if (!evaluation) {
        for (const Diagnostic& d : evaluation.error()) found.misses.push_back(d.message);
        found.shortfall = 1.0;
        return found;
    }
    // An upper bound of the load alone would be kept by a spring that does not reach.
    if (spec.spring.free_length < r.space.seated_height) {
        found.misses.push_back("it is " + significant(in_mm(spec.spring.free_length), 4) +
                               " mm long and does not reach " + significant(in_mm(r.space.seated_height), 4) + " mm");
        found.shortfall = r.space.seated_height / spec.spring.free_length - 1.0;
    }
    for (const check::Verdict& verdict : evaluation->verdicts) {
        if (verdict.passed) continue;
        found.misses.push_back(miss_words(verdict, sought));
        found.shortfall = std::max(found.shortfall, -verdict.margin);
    }
    if (sought.requirement) found.remarks = remarks_on(spec, r);
    found.fits = found.misses.empty() && found.remarks.empty();
    found.evaluation = std::move(evaluation).value();
    return found;
}

}  // namespace seatload::record
