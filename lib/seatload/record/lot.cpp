// SPDX-License-Identifier: MIT
#include <seatload/record/lot.hpp>

#include <array>
#include <charconv>

#include <seatload/core/text.hpp>

namespace seatload::record {
namespace {

/// The number to so many digits, finer than it is known, so that files stay readable.
double in_short(double value, int digits) {
    const std::string text = significant(value, digits);
    double number = value;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

LotCharacteristic in_brief(const inspection::Judged& judged) {
    LotCharacteristic c;
    c.kind = judged.characteristic.kind;
    c.limits = judged.characteristic.limits;
    c.uncertainty = in_short(judged.expanded, 3);
    c.decides = judged.decides();
    c.inside = judged.inside;
    c.unproven = judged.unproven;
    c.outside = judged.outside;
    if (judged.summary) c.mean = in_short(judged.summary->mean, 6);
    if (judged.summary && judged.summary->count > 1) c.deviation = in_short(judged.summary->deviation, 4);
    c.verdict = judged.verdict;
    return c;
}

}  // namespace

std::string plan_words(const inspection::LotPlan& plan) {
    if (plan.every_piece) return "every piece";
    constexpr std::array<std::string_view, inspection::kLevels> kNames{"S-1", "S-2", "S-3", "S-4", "I", "II", "III"};
    return "ISO 2859-1, level " + std::string(kNames[static_cast<std::size_t>(plan.choice.level)]) + ", AQL " +
           significant(plan.choice.aql, 4) + ", " + std::string(word(plan.choice.severity)) + ": " +
           std::to_string(plan.size) + " pieces, Ac " + std::to_string(plan.accept) + ", Re " +
           std::to_string(plan.reject);
}

Lot lot_of(const inspection::LotInspection& inspection, const Spec& spec, const std::string& spec_sha256) {
    Lot lot;
    lot.spec = {spec.identity.number, spec.identity.revision, spec_sha256};
    lot.name = inspection.samples.name;
    lot.date = inspection.samples.date;
    lot.maker = inspection.samples.maker;
    lot.pieces = inspection.samples.lot_size;
    lot.inspected = static_cast<int>(inspection.samples.pieces.size());
    lot.plan = plan_words(inspection.plan);
    lot.verdict = inspection.verdict;
    lot.reasons = inspection.reasons;
    lot.conditions = inspection.conditions;
    lot.remarks = inspection.remarks;
    for (const inspection::Judged& judged : inspection.characteristics)
        if (judged.measured() > 0 || judged.wanted > 0) lot.characteristics.push_back(in_brief(judged));
    return lot;
}

}  // namespace seatload::record
