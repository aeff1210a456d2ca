// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/demand/broken_limits.hpp>
#include <seatload/demand/budget.hpp>

#include <cli/budget_view.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using demand::Interval;
using Align = TextTable::Align;

constexpr int kDigits = 4;
constexpr int kMovingDigits = 3;  // of how it moves: friction is seldom known to more

std::string budget_number(double value, int digits = kDigits) { return significant(value, digits); }

/// Both ends of a range, or the one value.
std::string range(double low, double high, int digits = kDigits) {
    const std::string from = budget_number(low, digits);
    const std::string to = budget_number(high, digits);
    return from == to ? from : from + " .. " + to;
}
std::string range(const Interval<Force>& r) { return range(in_newton(r.low), in_newton(r.high)); }
std::string range(const Interval<Stress>& r) { return range(in_bar(r.low), in_bar(r.high)); }

std::string moving(double low, double high) { return range(low, high, kMovingDigits); }
std::string moving(const Interval<double>& r) { return moving(r.low, r.high); }
std::string moving(const Interval<Stress>& r) { return moving(in_bar(r.low), in_bar(r.high)); }
std::string percents(const Interval<double>& r) { return moving(100.0 * r.low, 100.0 * r.high) + " %"; }

std::string title(const BudgetView& v) {
    std::vector<std::string> names;
    for (const std::string& name : {v.plunger.identity.engine, v.plunger.identity.position})
        if (!name.empty()) names.push_back(name);
    return names.empty() ? v.file : join(names, ", ") + " (" + v.file + ")";
}

std::string face_words(const std::string& name, const demand::Face& face) {
    std::string words = name + ' ';
    if (face.diameter) words += range(in_mm(face.diameter->low), in_mm(face.diameter->high)) + " mm, ";
    return words + range(in_square_mm(face.area.low), in_square_mm(face.area.high)) + " mm²";
}

/// How a leak pressure that is not given was worked out.
std::string leak_words(const BudgetView& v) {
    const auto& pressures = v.plunger.plunger.pressures;
    if (pressures.leak || !pressures.leakage) return {};
    const bool orifices = std::holds_alternative<demand::LeakOrifices>(pressures.leakage->way);
    return "Leak pressure " + range(*v.budget.leak_pressure) + " bar out of a supply of " +
           range(pressures.leakage->supply) + " bar, " +
           (orifices ? "between two similar orifices: pL = ps·r²/(1 + r²), r the inlet's area over the outlet's"
                     : "between two gaps in laminar flow: pL = ps·g1/(g1 + g2), g = π·D·c³·(1 + 1.5·ε²)/(12·μ·L)");
}

std::string margin_words(const demand::BudgetMargins& margins) {
    std::vector<std::string> words;
    if (margins.hold.value > 0.0)
        words.push_back("mh = " + budget_number(100.0 * margins.hold.value) + " % on what pushes it off its seat");
    if (margins.release.value > 0.0)
        words.push_back("mr = " + budget_number(100.0 * margins.release.value) + " % off what the oil pushes with");
    return words.empty() ? "Margins: none" : "Margins: " + join(words, ", ");
}

std::string self_holding_words(const Interval<Angle>& angle) {
    // down to a tenth: a flank a little steeper does not hold
    const auto degrees = [](Angle a) {
        return fixed(std::floor(in_base_unit(a) * 1800.0 / std::numbers::pi + 1e-9) / 10.0, 1);
    };
    const std::string low = degrees(angle.low);
    const std::string high = degrees(angle.high);
    return "A flank holds by itself, whatever the side load, up to a half-angle of " + low + "°" +
           (low == high ? "" : " (friction at its least) or " + high + "° (at its most)");
}

std::string asked(const BudgetView& v, int width) {
    const demand::Plunger& p = v.plunger.plunger;
    const auto line = [&](const std::string& words) {
        return words.empty() ? "" : wrapped("  ", words + '.', width, 4);
    };
    std::string out = wrapped("", title(v), width, 2);
    out += line("Plunger: " + face_words("seat", p.seat) + "; " + face_words("full", p.full) + "; stroke " +
                budget_number(in_mm(p.stroke)) + " mm");
    out += line(leak_words(v)) + line(margin_words(p.margins));
    if (v.budget.self_holding) out += line(self_holding_words(*v.budget.self_holding));
    return out;
}

std::string bands(const BudgetView& v, int width) {
    if (!v.budget.is_possible()) return contradictions_text(v.budget, width);
    const auto line = [&](const std::string& name, const demand::LoadBand& round, const demand::LoadBand& exact) {
        return wrapped("  " + padded(name, 13),
                       band_text(round, 6) + "  (before rounding inwards: " + band_text(exact, kDigits) + ")", width,
                       4);
    };
    return wrapped("", "The loads its spring may have, over all corners of the ranges:", width, 2) +
           line("seated", v.budget.seated_rounded, v.budget.seated) +
           line("full travel", v.budget.full_travel_rounded, v.budget.full_travel);
}

std::string head_of(const demand::BudgetLimit& limit) {
    return std::string(limit.place == demand::LoadPlace::seated ? "Seated load F1" : "Full-travel load F2") +
           (limit.bound == demand::Bound::at_least ? ", at least" : ", at most");
}

std::string newtons(Force force) { return budget_number(in_newton(force)) + " N"; }

std::string limits(const BudgetView& v) {
    TextTable t({Align::left, Align::left, Align::right});
    std::string head;
    for (const demand::BudgetLimit& limit : v.budget.limits) {
        if (const std::string here = head_of(limit); here != head) t.add({here, "", ""});
        head = head_of(limit);
        t.add({(limit.bites ? "* " : "  ") + std::string(limit.title), "", newtons(limit.value)});
    }
    return t.text(0) + "* makes the end of its band\n";
}

std::string share_words(const demand::BudgetLimit& limit) {
    std::vector<std::string> words;
    for (const demand::BudgetTerm& term : limit.terms)
        words.push_back(term.words + ' ' + (term.share < 0.0 ? "−" : "") + fixed(100.0 * std::abs(term.share), 0) +
                        " %");
    return limit.terms.size() < 2 ? std::string{} : "Shares: " + join(words, ", ");
}

std::string corner_words(const demand::BudgetLimit& limit) {
    std::vector<std::string> words;
    for (const demand::CornerValue& value : limit.corner) {
        if (!value.is_range) continue;
        words.push_back(value.words + ' ' + value.symbol + " = " + value.text +
                        (value.is_high ? " (highest)" : " (lowest)"));
    }
    return words.empty() ? std::string{} : "Hardest at " + join(words, ", ");
}

std::string trust_words(const demand::BudgetLimit& limit) {
    const std::string weakest = demand::trust_words(limit.evidence);
    return "By " + std::string(limit.source) + (weakest.empty() ? "" : "; " + weakest);
}

std::string derivation(const demand::BudgetLimit& limit, int width) {
    const auto line = [&](const std::string& words) { return words.empty() ? "" : wrapped("    ", words, width, 6); };
    return wrapped("  ", head_of(limit) + ' ' + newtons(limit.value) + ", so that it " + std::string(limit.title),
                   width, 4) +
           line(limit.formula) + line("= " + limit.numbers) + line(limit.where) + line(share_words(limit)) +
           line(corner_words(limit)) + line(trust_words(limit));
}

std::string snap_words(const demand::PlungerBehaviour& b) {
    if (b.always_snaps) return "yes";
    return b.never_snaps ? "no" : "at some corners";
}

std::string reseat_words(const Interval<Stress>& reseat) {
    if (reseat.high <= 0.0 * MPa) return "never";
    return moving(reseat);
}

std::string behaviours(const BudgetView& v, int width) {
    const auto& all = v.budget.behaviours;
    if (all.empty()) return {};
    std::vector<Align> columns{Align::left};
    columns.insert(columns.end(), all.size(), Align::right);
    TextTable t(columns);
    const auto row = [&](const std::string& name, const auto& text) {
        std::vector<std::string> cells{name};
        for (const demand::PlungerBehaviour& b : all) cells.push_back(text(b));
        t.add(std::move(cells));
    };
    row("How it moves", [](const auto& b) { return b.words; });
    row("loads F1, N", [](const auto& b) { return range(b.loads.seated); });
    row("loads F2, N", [](const auto& b) { return range(b.loads.full_travel); });
    row("cracks, bar", [](const auto& b) { return moving(b.crack); });
    row("fully open, bar", [](const auto& b) { return moving(b.fully_open); });
    row("falling: starts back, bar", [](const auto& b) { return moving(b.return_start); });
    row("falling: home again, bar", [](const auto& b) { return reseat_words(b.reseat); });
    row("blowdown", [](const auto& b) { return percents(b.blowdown); });
    row("area ratio", [](const auto& b) { return moving(b.area_ratio); });
    row("load ratio", [](const auto& b) { return moving(b.load_ratio); });
    row("snaps open", [](const auto& b) { return snap_words(b); });
    row("share on the ring to snap", [](const auto& b) { return percents(b.least_share); });
    if (v.plunger.plunger.drain)
        row("home with cold oil, s", [](const auto& b) {
            return b.cold_return ? moving(in_second(b.cold_return->low), in_second(b.cold_return->high)) : "never";
        });
    return t.text(0) +
           wrapped("",
                   "From the lowest to the highest over all corners. It snaps open when the area ratio (what the oil "
                   "bears on once cracked, over A1) is not below the load "
                   "ratio (F2 with friction and back pressure over F1 with them); else it opens as the pressure rises.",
                   width, 2);
}

std::string spring_given(const BudgetView& v, int width) {
    if (!v.plunger.spring) return {};
    const std::vector<std::string> broken = broken_titles(v);
    if (broken.empty()) return wrapped("", "The spring given keeps every limit.", width, 2);
    return wrapped("",
                   "The spring given FAILS: it is not sure that the plunger " + join(broken, ", nor that it ") + ".",
                   width, 2);
}

}  // namespace

std::string band_text(const demand::LoadBand& band, int digits) {
    const auto text = [&](Force force) { return significant(in_newton(force), digits) + " N"; };
    if (band.at_least && band.at_most) return text(*band.at_least) + " .. " + text(*band.at_most);
    if (band.at_least) return "at least " + text(*band.at_least);
    return band.at_most ? "at most " + text(*band.at_most) : "not limited";
}

std::string contradictions_text(const demand::Budget& budget, int width) {
    std::string out;
    for (const demand::Contradiction& each : budget.contradictions)
        out += wrapped("", each.words, width, 2) + wrapped("  ", each.ways_out, width, 2);
    return out;
}

std::vector<std::string> broken_titles(const BudgetView& v) {
    std::vector<std::string> titles;
    for (const std::size_t i : demand::broken_limits(v.plunger.plunger, v.budget, *v.plunger.spring))
        titles.emplace_back(v.budget.limits[i].title);
    return titles;
}

std::string budget_text(const BudgetView& v, int width) {
    std::string out = asked(v, width) + '\n' + bands(v, width) + '\n' + limits(v) + "\nHow each was found\n";
    for (const demand::BudgetLimit& limit : v.budget.limits) out += derivation(limit, width);
    const std::string moves = behaviours(v, width);
    if (!moves.empty()) out += '\n' + moves;
    const std::string given = spring_given(v, width);
    return given.empty() ? out : out + '\n' + given;
}

}  // namespace seatload::cli
