// SPDX-License-Identifier: MIT
#include <seatload/check/verdict.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::check {
namespace {

/// The key under which limits name the maker who sets them.
std::string_view key_of(const Rule& rule) {
    if (rule.id == "index_smallest") return "smallest_index";
    if (rule.id == "index_largest") return "largest_index";
    if (rule.id == "ground_wire") return "smallest_ground_wire";
    if (rule.id == "ground_index") return "largest_ground_index";
    if (rule.id == "made_length") return "longest_free_length";
    return rule.id;
}

Verdict judge(const Rule& rule, const Coil& coil, double free_length_mm) {
    Verdict verdict;
    verdict.rule = &rule;
    verdict.measure = rule.measure(coil, free_length_mm);
    verdict.margin = margin(rule.sense, verdict.measure);
    verdict.passed = passes(rule.sense, verdict.measure);
    verdict.source = source_of(rule, coil.demand.limits);
    verdict.reason = std::string(rule.subject) + ": " + shown(verdict.measure.value, rule.unit);
    if (rule.unit != kYesOrNo) verdict.reason += ", " + bound_in_words(rule, verdict.measure.limit);
    return verdict;
}

}  // namespace

std::string source_of(const Rule& rule, const demand::Limits& limits) {
    const auto origin = limits.origins.find(std::string(key_of(rule)));
    return origin == limits.origins.end() ? std::string(rule.source) : origin->second;
}

std::string bound_in_words(const Rule& rule, double limit) {
    std::string words = shown(limit, rule.unit);
    if (rule.unit == kYesOrNo) return words;
    return (rule.sense == Sense::at_least ? "at least " : "at most ") + words;
}

std::string shown(double value, std::string_view unit) {
    if (unit == kYesOrNo) return value > 0.5 ? "yes" : "no";
    if (std::isinf(value)) return value > 0.0 ? "beyond reach" : "none";
    std::string text = significant(value, 4);
    if (!unit.empty()) text += ' ' + std::string(unit);
    return text;
}

std::vector<Verdict> verdicts(const Coil& coil, double free_length_mm) {
    std::vector<Verdict> all;
    for (const Rule& rule : rules())
        if (rule.applies(coil.demand, coil.ends)) all.push_back(judge(rule, coil, free_length_mm));
    return all;
}

bool all_pass(const std::vector<Verdict>& all) {
    return std::all_of(all.begin(), all.end(), [](const Verdict& v) { return v.passed; });
}

}  // namespace seatload::check
