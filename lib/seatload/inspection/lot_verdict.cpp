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

std::string too_few(const Judged& judged) {
    return "measured on " + std::to_string(judged.measured()) + " of the " + pieces(judged.wanted) + " it takes";
}

/// All pieces must be inside.
void judge_all_inside(Judged& j) {
    if (j.outside > 0) {
        j.verdict = Verdict::reject;
        j.why = pieces(j.outside) + " outside";
    } else if (j.unproven > 0) {
        j.why = pieces(j.unproven) + " nearer to a limit than U";
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

Judged judge_one(const Characteristic& c, const Samples& samples, const LotPlan& plan) {
    Judged j;
    j.characteristic = c;
    j.wanted = wanted_of(c, plan, samples.lot_size);
    if (const auto u = samples.expanded.find(c.kind); u != samples.expanded.end()) j.expanded = u->second;
    for (const Piece& piece : samples.pieces) {
        const auto value = piece.values.find(c.kind);
        j.findings.emplace_back();
        if (value == piece.values.end()) continue;
        j.values.push_back(value->second);
        j.findings.back() = judge(judged_value(c, value->second), c.limits, j.expanded);
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
        lot.reasons.push_back(named(j.characteristic.kind) + ": " + j.why);
    }
    judge_pieces(lot);
    if (rejected) lot.verdict = Verdict::reject;
    if (lot.verdict != Verdict::reject) lot.verdict = lot.reasons.empty() ? Verdict::accept : Verdict::not_proven;
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
        const auto& asked = j.characteristic.tips_asked;
        if (!asked) continue;
        const auto count = std::count_if(j.values.begin(), j.values.end(),
                                         [&](double value) { return value > asked->above - j.expanded; });
        if (count == 0) continue;
        lot.remarks.push_back(pieces(static_cast<int>(count)) + " may have a " + named(j.characteristic.kind) +
                              " above " + shortest(asked->above) + ' ' + std::string(unit(j.characteristic.kind)) +
                              " and conform only with end tips within 180° ±" + significant(asked->degrees, 3) +
                              "°: look at them with a protractor.");
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
    LotInspection lot{samples, plan, {}, {}, {}, Verdict::not_proven, {}, {}};
    for (const Characteristic& c : characteristics) lot.characteristics.push_back(judge_one(c, samples, plan));
    sort_pieces(lot);
    judge_lot(lot);
    remark_on_sorting(lot);
    remark_on_sample(lot);
    remark_on_tips(lot);
    remark_on_order(lot);
    return lot;
}

}  // namespace seatload::inspection
