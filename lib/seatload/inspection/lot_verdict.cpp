// SPDX-License-Identifier: MIT
#include <seatload/inspection/lot_verdict.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/inspection/counted.hpp>
#include <seatload/inspection/sentences.hpp>

namespace seatload::inspection {
namespace {

/// The value as it is held to the limits: whole turns taken off where they are free.
double judged_value(const Characteristic& c, double value) {
    if (!c.whole_turns_free) return value;
    const double off = value - c.nominal;
    return c.nominal + off - std::round(off);
}

void count(Judged& judged, Finding finding) {
    ++(finding == Finding::inside ? judged.inside : finding == Finding::outside ? judged.outside : judged.unproven);
}

int wanted_of(const Characteristic& c, const LotPlan& plan, int lot_size) {
    if (c.role == Role::load) return plan.size;
    return c.role == Role::dimension ? std::min(kPiecesForDimensions, lot_size) : 0;
}

/// What the coils of a piece say of its end tips being so close to half a turn apart; nothing: not measured.
std::optional<Finding> tips_within(double degrees, const Piece& piece, const Samples& samples,
                                   const std::vector<Characteristic>& all) {
    const auto coils = std::find_if(all.begin(), all.end(), [](const Characteristic& c) { return c.whole_turns_free; });
    if (coils == all.end()) return std::nullopt;
    const auto value = piece.values.find(coils->kind);
    if (value == piece.values.end()) return std::nullopt;
    const auto u = samples.expanded.find(coils->kind);
    const double off = 360.0 * (judged_value(*coils, value->second) - coils->nominal);
    return judge(off, {-degrees, degrees}, u == samples.expanded.end() ? 0.0 : 360.0 * u->second);
}

/// A value that has a further limit on pieces with close tips. Where the tips leave open which limit holds, it is
/// unproven unless both say the same.
Finding judge_by_tips(Judged& j, double value, std::optional<Finding> tips) {
    const Characteristic& c = j.characteristic;
    const Finding nearer = judge(value, c.limits, j.expanded);
    const Finding further = judge(value, {c.limits.least, c.further_by_tips->most}, j.expanded);
    if (nearer == further || tips == Finding::outside) return nearer;
    if (tips == Finding::inside) {
        if (further == Finding::inside) ++j.by_tips;
        return further;
    }
    ++j.want_tips;
    return Finding::unproven;
}

/// Why a value is open that the end tips would decide.
std::string tips_wanted(const Judged& j) {
    const Characteristic& c = j.characteristic;
    return pieces(j.want_tips) + " not proven to be at or below " + shortest(*c.limits.most) + ' ' +
           std::string(unit(c.kind)) + ", and longer ones pass only with end tips measured within " +
           degrees_words(c.further_by_tips->degrees);
}

std::string too_few(const Judged& judged) {
    return "measured on " + std::to_string(judged.measured()) + " of the " + pieces(judged.wanted) + " it takes";
}

/// All pieces must be inside.
void judge_all_inside(Judged& j) {
    if (j.outside > 0) {
        j.verdict = Verdict::reject;
        j.why = pieces(j.outside) + " outside";
    } else if (j.unproven > 0) {
        const int near = j.unproven - j.want_tips;
        if (near > 0) j.why = pieces(near) + " nearer to a limit than U";
        if (j.want_tips > 0) j.why += (near > 0 ? ", and " : "") + tips_wanted(j);
    } else if (j.measured() < j.wanted) {
        j.why = too_few(j);
    } else {
        j.verdict = Verdict::accept;
    }
}

/// So many pieces may be bad.
void judge_by_plan(Judged& j, const LotPlan& plan) {
    const std::string allowed = ", and at most " + std::to_string(plan.accept) + " may be bad";
    if (j.outside >= plan.reject) {
        j.verdict = Verdict::reject;
        j.why = pieces(j.outside) + " outside" + allowed;
    } else if (j.outside + j.unproven >= plan.reject) {
        j.why = pieces(j.outside + j.unproven) + " not proven to be inside" + allowed;
    } else if (j.measured() < j.wanted) {
        j.why = too_few(j);
    } else {
        j.verdict = Verdict::accept;
    }
}

Judged judge_one(const Characteristic& c, const Samples& samples, const LotPlan& plan,
                 const std::vector<Characteristic>& all) {
    Judged j;
    j.characteristic = c;
    j.wanted = wanted_of(c, plan, samples.lot_size);
    if (const auto u = samples.expanded.find(c.kind); u != samples.expanded.end()) j.expanded = u->second;
    for (const Piece& piece : samples.pieces) {
        const auto value = piece.values.find(c.kind);
        j.findings.emplace_back();
        if (value == piece.values.end()) continue;
        j.values.push_back(value->second);
        j.findings.back() =
            c.further_by_tips
                ? judge_by_tips(j, value->second, tips_within(c.further_by_tips->degrees, piece, samples, all))
                : judge(judged_value(c, value->second), c.limits, j.expanded);
        count(j, *j.findings.back());
    }
    if (c.role == Role::load && !plan.every_piece)
        judge_by_plan(j, plan);
    else
        judge_all_inside(j);
    if (!j.values.empty()) j.summary = summarise(j.values, c.whole_turns_free ? Limits{} : c.limits);
    j.sequence = sequence_of(j.values);
    return j;
}

bool has_finding(const LotInspection& lot, std::size_t piece, Finding wanted) {
    return std::any_of(lot.characteristics.begin(), lot.characteristics.end(), [&](const Judged& j) {
        return j.characteristic.role == Role::load && j.findings[piece] == wanted;
    });
}

void sort_pieces(LotInspection& lot) {
    for (std::size_t i = 0; i < lot.samples.pieces.size(); ++i) {
        if (has_finding(lot, i, Finding::outside))
            lot.bad.push_back(i);
        else if (has_finding(lot, i, Finding::unproven))
            lot.unproven.push_back(i);
    }
}

/// What sampling says of pieces: they are bad by either load, so that two loads together may be bad where each is not.
void judge_pieces(LotInspection& lot) {
    if (lot.plan.every_piece) return;
    const int bad = static_cast<int>(lot.bad.size());
    const int open = static_cast<int>(lot.unproven.size());
    if (bad >= lot.plan.reject)
        lot.reasons.push_back(pieces(bad) + " bad by one load or the other; the lot is rejected from " +
                              std::to_string(lot.plan.reject) + " on");
    else if (bad + open >= lot.plan.reject)
        lot.reasons.push_back(pieces(bad + open) + " not proven good by both loads; at most " +
                              std::to_string(lot.plan.reject - 1) + " may be");
    if (bad >= lot.plan.reject) lot.verdict = Verdict::reject;
    if (bad < lot.plan.reject && bad > lot.plan.accept)
        lot.remarks.push_back("More than " + std::to_string(lot.plan.accept) + " and fewer than " +
                              std::to_string(lot.plan.reject) +
                              " are bad: the lot is accepted, and the next one is inspected under the normal table.");
}

void judge_lot(LotInspection& lot) {
    bool rejected = false;
    for (const Judged& j : lot.characteristics) {
        if (!j.decides() || j.verdict == Verdict::accept) continue;
        rejected = rejected || j.verdict == Verdict::reject;
        lot.reasons.push_back(named(j.characteristic) + ": " + j.why);
    }
    judge_pieces(lot);
    if (rejected) lot.verdict = Verdict::reject;
    if (lot.verdict != Verdict::reject) lot.verdict = lot.reasons.empty() ? Verdict::accept : Verdict::not_proven;
}

std::string condition_words(const Characteristic& c) {
    if (c.whole_turns_free) return "end tips stand within " + degrees_words(c.ordered_tip_degrees());
    return named(c.kind) + " is at most " + shortest(*c.limits.most) + ' ' + std::string(unit(c.kind));
}

/// What the sheet asks of five pieces, and few have measured when they come from the bench.
void add_conditions(LotInspection& lot) {
    if (lot.verdict != Verdict::accept) return;
    const int wanted = std::min(kPiecesForDimensions, lot.samples.lot_size);
    for (const Judged& j : lot.characteristics) {
        if (j.characteristic.role != Role::condition || j.measured() >= wanted) continue;
        lot.conditions.push_back(condition_words(j.characteristic));
        lot.remarks.push_back("The lot is accepted on condition that its " + lot.conditions.back() + ": measured on " +
                              std::to_string(j.measured()) + " of the " + pieces(wanted) + " it takes.");
    }
}

std::string names_of(const LotInspection& lot, const std::vector<std::size_t>& places) {
    std::vector<std::string> names;
    for (const std::size_t place : places) names.push_back(lot.samples.pieces[place].name);
    return join(names, ", ");
}

void remark_on_sorting(LotInspection& lot) {
    if (!lot.plan.every_piece || lot.bad.size() + lot.unproven.size() == 0) return;
    const std::size_t good = lot.samples.pieces.size() - lot.bad.size() - lot.unproven.size();
    std::string words = "By their loads ";
    if (!lot.bad.empty()) words += names_of(lot, lot.bad) + (lot.bad.size() == 1 ? " is" : " are") + " bad";
    if (!lot.bad.empty() && !lot.unproven.empty()) words += " and ";
    if (!lot.unproven.empty())
        words += names_of(lot, lot.unproven) + (lot.unproven.size() == 1 ? " is" : " are") + " not proven either way";
    lot.remarks.push_back(words + "; the other " + std::to_string(good) +
                          " carry what they must and could be kept, if the maker agrees that the lot is sorted.");
}

void remark_on_sample(LotInspection& lot) {
    const auto measured = static_cast<int>(lot.samples.pieces.size());
    if (lot.plan.every_piece || measured <= lot.plan.size) return;
    lot.remarks.push_back("The plan takes " + pieces(lot.plan.size) + " and " + std::to_string(measured) +
                          " were measured: as no more of them may be bad, the lot is judged more strictly than the "
                          "plan asks.");
}

void remark_on_tips(LotInspection& lot) {
    for (const Judged& j : lot.characteristics) {
        if (j.by_tips == 0) continue;
        const Characteristic& c = j.characteristic;
        lot.remarks.push_back(pieces(j.by_tips) + (j.by_tips == 1 ? " is" : " are") + " not proven to have a " +
                              named(c.kind) + " at or below " + shortest(*c.limits.most) + ' ' +
                              std::string(unit(c.kind)) + ", and " + (j.by_tips == 1 ? "passes" : "pass") +
                              " by end tips within " + degrees_words(c.further_by_tips->degrees) + ".");
    }
}

void remark_on_order(LotInspection& lot) {
    for (const Judged& j : lot.characteristics) {
        if (!j.sequence) continue;
        const std::string name = named(j.characteristic.kind);
        if (j.sequence->trend < kSeldom)
            lot.remarks.push_back("The " + name + (j.sequence->s > 0 ? " rises" : " falls") +
                                  " from piece to piece in the order measured, more than chance explains (" +
                                  chance_text(j.sequence->trend) +
                                  "): look whether the bench drifts, or the winding did.");
        else if (j.sequence->few < kSeldom)
            lot.remarks.push_back("The " + name + " stays above and below its median for long stretches (" +
                                  std::to_string(j.sequence->runs) + " runs, by chance in " +
                                  chance_text(j.sequence->few) + " of lots): pieces of two settings may be mixed.");
    }
}

constexpr std::size_t kMostSlipsNamed = 5;

/// "Piece 3", "Pieces 1, 2, 3, 4, 5 and 15 more".
std::string slips_words(const std::vector<std::string>& names) {
    const std::vector<std::string> first(names.begin(),
                                         names.begin() + static_cast<long>(std::min(names.size(), kMostSlipsNamed)));
    return (names.size() == 1 ? "Piece " : "Pieces ") + join(first, ", ") +
           (names.size() > first.size() ? " and " + std::to_string(names.size() - first.size()) + " more" : "");
}

/// A spring pushes harder the further it is compressed: such readings are no property of a piece. They are judged all
/// the same, as nobody but who measured knows what was meant.
void remark_on_exchanged_loads(LotInspection& lot) {
    std::vector<std::string> names;
    for (const Piece& piece : lot.samples.pieces) {
        const auto seated = piece.values.find(Kind::seated_load), full = piece.values.find(Kind::full_travel_load);
        if (seated != piece.values.end() && full != piece.values.end() && seated->second > full->second)
            names.push_back(piece.name);
    }
    if (names.empty()) return;
    lot.remarks.push_back(slips_words(names) + ": the " + named(Kind::seated_load) + " is above the " +
                          named(Kind::full_travel_load) +
                          ", which no compression spring gives: are the columns exchanged?");
}

/// Springs of one lot do not differ twofold in a load or a length, slips of the decimal point and of the column differ
/// tenfold (common practice, no source). Squareness and parallelism may well, from nearly nothing.
constexpr double kFarOff = 2.0;

/// The median of all values but one; of an even number the lower of the two in the middle.
double median_without(std::vector<double> values, std::size_t left_out) {
    values.erase(values.begin() + static_cast<long>(left_out));
    const auto middle = values.begin() + static_cast<long>((values.size() - 1) / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// A value far off all others.
void remark_on_strays(LotInspection& lot) {
    constexpr std::size_t kFewestValues = 3;  // of two, neither is the odd one
    for (const Judged& j : lot.characteristics) {
        const Kind kind = j.characteristic.kind;
        if (j.values.size() < kFewestValues || kind == Kind::squareness || kind == Kind::parallelism) continue;
        std::size_t at = 0;
        for (const Piece& piece : lot.samples.pieces) {
            if (!piece.values.contains(kind)) continue;
            const double value = j.values[at], others = median_without(j.values, at);
            ++at;
            if (value < kFarOff * others && others < kFarOff * value) continue;
            lot.remarks.push_back(slips_words({piece.name}) + ": " + named(kind) + ' ' +
                                  shown(value, kind, decimals_of(j.expanded)) +
                                  " is far off the others, which lie by " +
                                  shown(others, kind, decimals_of(j.expanded)) + ": look at the reading.");
        }
    }
}

}  // namespace

std::optional<LotPlan> lot_plan(const PlanChoice& choice, int lot_size, const SamplingTables& tables) {
    LotPlan plan{true, lot_size, 0, 1, std::nullopt, choice};
    if (choice.every_piece) return plan;
    plan.sampling = find_plan(tables, lot_size, choice.level, choice.aql, choice.severity);
    if (!plan.sampling) return std::nullopt;
    plan.size = plan.sampling->size;
    plan.accept = plan.sampling->accept;
    plan.reject = plan.sampling->reject;
    plan.every_piece = false;
    return plan;
}

LotInspection inspect(const Samples& samples, const std::vector<Characteristic>& characteristics, const LotPlan& plan) {
    LotInspection lot{samples, plan, {}, {}, {}, Verdict::not_proven, {}, {}, {}};
    for (const Characteristic& c : characteristics)
        lot.characteristics.push_back(judge_one(c, samples, plan, characteristics));
    sort_pieces(lot);
    judge_lot(lot);
    add_conditions(lot);
    remark_on_sorting(lot);
    remark_on_sample(lot);
    remark_on_tips(lot);
    remark_on_order(lot);
    remark_on_exchanged_loads(lot);
    remark_on_strays(lot);
    return lot;
}

}  // namespace seatload::inspection
