// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_limits.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

#include <seatload/core/text.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {
namespace {

std::string margin(const check::Verdict& v) {
    if (!std::isfinite(v.margin)) return "endless";
    // Of a bound of nothing no share can be told.
    if (v.measure.limit == 0.0) return check::shown(v.margin, v.rule->unit);
    return fixed(100.0 * v.margin, 1) + " %";
}

/// A rule's source with its signs and indices as they are printed.
std::string printed_source(std::string_view source) {
    std::string words = with_indices(source);
    for (const auto& [plain, sign] : {std::pair{"<=", "≤"}, std::pair{">=", "≥"}})
        for (auto at = words.find(plain); at != std::string::npos; at = words.find(plain)) words.replace(at, 2, sign);
    return words;
}

}  // namespace

RuledTable limits_table(const ReportSubject& s, double width) {
    RuledTable table;
    table.widths = {47.0, 23.0, 28.0, 18.0, 12.0};
    double rest = width;
    for (const double w : table.widths) rest -= w;
    table.widths.push_back(rest);
    table.rows.push_back({"limit", "value", "must be", "margin", "kept", "source"});
    for (const check::Verdict& v : s.values.verdicts)
        table.rows.push_back({std::string(v.rule->subject), check::shown(v.measure.value, v.rule->unit),
                              check::bound_in_words(*v.rule, v.measure.limit), margin(v), v.passed ? "yes" : "NO",
                              printed_source(v.source)});
    return table;
}

std::string limits_in_words(const ReportSubject& s) {
    std::vector<std::string> broken;
    for (const check::Verdict& v : s.values.verdicts)
        if (!v.passed) broken.push_back(v.reason);
    if (broken.empty()) return "All " + std::to_string(s.values.verdicts.size()) + " limits in play are kept.";
    return "Broken: " + join(broken, "; ") + ".";
}

std::string lean_as_made(const ReportSubject& s) {
    if (!s.values.tips) return {};
    std::string words = check::tips_in_words(*s.values.tips);
    if (words.empty()) return words;
    const auto& bounds = s.values.lean_bounds;
    return "Lean is that of the turns drawn. " + words +
           (bounds ? ' ' + check::lean_bounds_in_words(*bounds, in_mm(s.values.spring.free_length)) : "");
}

std::string limits_not_in_play(const ReportSubject& s) {
    std::vector<std::string> idle;
    for (const check::Rule& rule : check::rules())
        if (s.verdict(rule.id) == nullptr) idle.emplace_back(rule.name);
    if (idle.empty()) return {};
    return "Not in play here: " + join(idle, "; ") + ".";
}

}  // namespace seatload::sheet
