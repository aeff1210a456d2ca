// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_tables.hpp>

#include <algorithm>
#include <functional>
#include <utility>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/pressure_words.hpp>

namespace seatload::sheet {
namespace {

using demand::PlungerBehaviour;

constexpr double kBudgetNameWidth = 58.0;

std::string snap_words(const PlungerBehaviour& b) {
    if (b.always_snaps) return "snaps open";
    return b.never_snaps ? "opens as the pressure rises" : "snaps or not, by the corner";
}

constexpr int kTimeDigits = 3;  // friction is seldom known to more

std::string time_words(const PlungerBehaviour& b) {
    if (!b.cold_return) return "may never come home";
    return range_words(in_second(b.cold_return->low), in_second(b.cold_return->high), kTimeDigits);
}

std::string corner_words(const demand::BudgetLimit& limit) {
    std::vector<std::string> out;
    for (const demand::CornerValue& c : limit.corner) {
        if (!c.is_range) continue;
        std::string words = with_symbols(c.symbol) + " " + c.text + (c.is_high ? " high" : " low");
        for (auto at = words.find(' '); at != std::string::npos; at = words.find(' ', at))
            words.replace(at, 1, "\u00a0");
        out.push_back(std::move(words));
    }
    return out.empty() ? "–" : join(out, ", ");
}

/// What symbols are made of, once: a limit that has it as one before points there.
std::string where_words(const demand::Budget& budget, std::size_t index) {
    const std::string& where = budget.limits[index].where;
    if (where.empty()) return "";
    for (std::size_t i = 0; i < index; ++i)
        if (budget.limits[i].where == where) return "\nwhere as for " + std::to_string(i + 1);
    return "\n" + with_symbols(with_units_kept(where));
}

std::string formula_words(const demand::Budget& budget, std::size_t index) {
    const demand::BudgetLimit& limit = budget.limits[index];
    return with_symbols(limit.formula) + "\n= " + with_units_kept(limit.numbers) + where_words(budget, index);
}

}  // namespace

RuledTable behaviour_table(const demand::Budget& budget, double width) {
    RuledTable table;
    table.rows.push_back({"how it moves, over all corners"});
    for (const PlungerBehaviour& b : budget.behaviours) table.rows[0].push_back(b.words);
    const auto row = [&](const std::string& name, const std::function<std::string(const PlungerBehaviour&)>& words) {
        table.rows.push_back({name});
        for (const PlungerBehaviour& b : budget.behaviours) table.rows.back().push_back(words(b));
    };
    row("loads " + with_sub("F", "1") + "; " + with_sub("F", "2") + " [N]", [](const PlungerBehaviour& b) {
        return range_words(b.loads.seated) + "; " + range_words(b.loads.full_travel);
    });
    row("cracks; fully open [bar]",
        [](const PlungerBehaviour& b) { return range_words(b.crack) + "; " + range_words(b.fully_open); });
    row("falling: starts back; home [bar]",
        [](const PlungerBehaviour& b) { return range_words(b.return_start) + "; " + range_words(b.reseat); });
    row("area ratio; load ratio", [](const PlungerBehaviour& b) {
        return range_words(b.area_ratio.low, b.area_ratio.high) + "; " +
               range_words(b.load_ratio.low, b.load_ratio.high);
    });
    row("so it", snap_words);
    if (!budget.behaviours.empty() && budget.behaviours.front().cold_return) row("home with cold oil [s]", time_words);
    table.widths = {kBudgetNameWidth};
    for (std::size_t i = 0; i < budget.behaviours.size(); ++i)
        table.widths.push_back((width - kBudgetNameWidth) / static_cast<double>(budget.behaviours.size()));
    return table;
}

RuledTable budget_limits_table(const demand::Budget& budget, double width) {
    constexpr std::ptrdiff_t kFormulaAt = 2;
    RuledTable table;
    table.widths = {8.5, 34.0, 21.0, 29.0};
    double rest = width;
    for (const double w : table.widths) rest -= w;
    table.widths.insert(table.widths.begin() + kFormulaAt, rest);
    table.rows.push_back({"", "so that it", "formula, numbers put in", "value, trust", "hardest at"});
    for (std::size_t i = 0; i < budget.limits.size(); ++i) {
        const demand::BudgetLimit& limit = budget.limits[i];
        table.rows.push_back({std::to_string(i + 1) + (limit.bites ? "*" : ""), std::string(limit.title),
                              formula_words(budget, i),
                              pressure_number(in_newton(limit.value)) + "\u00a0N\n" + std::string(word(limit.evidence)),
                              corner_words(limit)});
    }
    return table;
}

std::string budget_sources(const demand::Budget& budget) {
    std::vector<std::pair<std::string, std::string>> sources;  // source, numbers
    for (std::size_t i = 0; i < budget.limits.size(); ++i) {
        const std::string source(budget.limits[i].source);
        const auto known =
            std::find_if(sources.begin(), sources.end(), [&](const auto& s) { return s.first == source; });
        if (known == sources.end())
            sources.emplace_back(source, std::to_string(i + 1));
        else
            known->second += ", " + std::to_string(i + 1);
    }
    std::vector<std::string> out;
    for (const auto& [source, numbers] : sources) out.push_back(numbers + ": " + source);
    return join(out, "; ") + ".";
}

}  // namespace seatload::sheet
