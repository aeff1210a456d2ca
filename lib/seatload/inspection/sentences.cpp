// SPDX-License-Identifier: MIT
#include <seatload/inspection/sentences.hpp>

#include <algorithm>
#include <cmath>
#include <map>

#include <seatload/core/text.hpp>
#include <seatload/inspection/counted.hpp>
#include <seatload/inspection/protection.hpp>

namespace seatload::inspection {
namespace {

constexpr double kCustomersRisk = 0.1;  ///< usual for the quality a plan is said to protect from (ISO 2859-2, memory)
constexpr double kUnlikely = 0.05;      ///< below it a spread is said to differ from the one foretold
constexpr int kMostDecimals = 6;

std::string percent(double share, int digits = 3) { return significant(100.0 * share, digits) + " %"; }

/// The words as a sentence begins with them.
std::string begun(std::string words) {
    if (words.front() >= 'a' && words.front() <= 'z') words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

std::string allowed(int accept) {
    return accept == 0 ? "none of which may be bad" : "at most " + std::to_string(accept) + " of which may be bad";
}

/// How well so many of a lot protect from bad ones.
std::string protection(int lot, int size, int accept, const std::string& what) {
    const int found = fewest_found_out(lot, size, accept, kCustomersRisk);
    const int tenth = std::max(1, static_cast<int>(std::lround(0.1 * lot)));
    std::string words = what + " " + std::to_string(size) + " of " + std::to_string(lot) + ", " + allowed(accept) +
                        ": a lot with " + std::to_string(tenth) + " bad (" + percent(static_cast<double>(tenth) / lot) +
                        ") passes with a chance of " + chance_text(chance_of_acceptance(lot, tenth, size, accept)) +
                        "; ";
    if (found > lot) return words + "not even a wholly bad lot is found out with 90 %.";
    return words + "only from " + std::to_string(found) + " bad on (" + percent(static_cast<double>(found) / lot) +
           ") is it found out with 90 % or more.";
}

/// How a kind that is all measured is spoken of, or by how many it is judged.
void add_protection(std::vector<std::string>& all, const LotInspection& lot, const Judged& j) {
    const int size = std::min(j.measured(), lot.samples.lot_size);
    if (size == 0 || size == lot.samples.lot_size || !j.decides()) return;
    const bool by_plan = j.characteristic.role == Role::load;
    const std::string words = protection(lot.samples.lot_size, size, by_plan ? lot.plan.accept : 0,
                                         by_plan ? "Loads:" : begun(named(j.characteristic)) + ":");
    if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(words);
}

/// A load that fell by more than is counted on.
std::string more_than_counted_on(const Samples& samples, double counted_on) {
    for (const SetLoss& loss : set_losses(samples))
        if (measure(loss.kind) == Measure::force && loss.mean - loss.doubt > counted_on)
            return "That is more than counted on. ";
    return {};
}

std::string counted_on_words(const Samples& samples, const Forecast& forecast) {
    if (!forecast.load_loss) return "What to count on in service is not known for this wire and temperature.";
    return more_than_counted_on(samples, *forecast.load_loss) + "Counted on in service is a loss of load of " +
           percent(*forecast.load_loss, 2) +
           (forecast.loss_is_stated ? ", as the spec states."
                                    : "; this is guidance, an estimate for some 100 h, and no limit.");
}

const Judged* judged(const LotInspection& lot, Kind kind) {
    for (const Judged& j : lot.characteristics)
        if (j.characteristic.kind == kind && j.measured() > 0) return &j;
    return nullptr;
}

std::string forecast_of(const Judged& j, const LoadForecast& f) {
    const Summary& s = *j.summary;
    const Kind kind = j.characteristic.kind;
    const int decimals = decimals_of(j.expanded);
    const double off = s.mean - f.mean;
    std::string words = begun(named(kind)) + ": mean " + shown(s.mean, kind, decimals) + " beside " +
                        shown(f.mean, kind, decimals) + " foretold, ";
    words += std::abs(off) <= s.mean_within ? "no difference to be told"
                                            : shown(std::abs(off), kind, decimals) + (off < 0.0 ? " less" : " more");
    words += "; s " + shown(s.deviation, kind, decimals + 1) + " beside " + shown(f.within_lot, kind, decimals + 1) +
             " within a lot";
    if (s.count < 2 || !(f.within_lot > 0.0)) return words + ".";
    const double chance = chance_of_deviation(s.deviation, s.count, f.within_lot);
    if (chance >= kUnlikely) return words + ", as foretold.";
    return words + (s.deviation > f.within_lot ? ", more than foretold" : ", less than foretold") + " (chance " +
           chance_text(chance) + ").";
}

}  // namespace

std::string shown(double value, Kind kind, int decimals) {
    const std::string number = fixed(value, decimals);
    return unit(kind).empty() ? number : number + ' ' + std::string(unit(kind));
}

int decimals_of(double expanded) {
    if (!(expanded > 0.0)) return 3;
    return std::clamp(1 - static_cast<int>(std::floor(std::log10(expanded) + 1e-9)), 0, kMostDecimals);
}

std::string limit_text(const Limits& limits, const std::optional<double>& limit) {
    if (!limit) return "-";
    int decimals = 0;
    for (const auto& each : {limits.least, limits.most}) {
        if (!each) continue;
        const std::string text = shortest(*each);
        const std::size_t point = text.find('.');
        if (point != std::string::npos) decimals = std::max(decimals, static_cast<int>(text.size() - point - 1));
    }
    // Turns of end tips in degrees have no end of decimals.
    constexpr int kMostPrinted = 5, kOfTurns = 4;
    return fixed(*limit, decimals > kMostPrinted ? kOfTurns : decimals);
}

std::string chance_text(double chance) {
    constexpr double kLeastTold = 1e-4;
    return chance < kLeastTold ? "under 0.01 %" : percent(chance, chance < 0.1 ? 2 : 3);
}

std::string doubt_text(double expanded) { return expanded > 0.0 ? fixed(expanded, decimals_of(expanded)) : "-"; }

std::vector<std::string> basis_sentences(const Samples& samples) {
    std::map<std::string, std::vector<std::string>> by_basis;
    for (const auto& [kind, basis] : samples.basis) by_basis[basis].emplace_back(symbol(kind));
    std::vector<std::string> all;
    for (const auto& [basis, symbols] : by_basis) all.push_back("U of " + join(symbols, " and ") + ": " + basis + ".");
    return all;
}

std::string rule_sentence() {
    return "A value passes when it lies inside its limits by U or more, and fails when it lies outside by more than U; "
           "between, nothing is proven (the sheet's rule, in the style of ISO 14253-1, U with k = 2). A value that "
           "just passes is wrong with a chance of at most " +
           percent(chance_of_false_acceptance(2.0), 2) + ".";
}

std::string tips_sentence(const LotInspection& lot) {
    for (const Judged& j : lot.characteristics) {
        const auto& further = j.characteristic.further_by_tips;
        if (!further || j.measured() == 0) continue;
        const Kind kind = j.characteristic.kind;
        return " A piece whose end tips are measured within 180° ±" + significant(further->degrees, 3) +
               "° is held to a " + named(kind) + " of " + shortest(further->most) + ' ' + std::string(unit(kind)) + ".";
    }
    return {};
}

std::string next_sentence(const LotInspection& lot) {
    switch (lot.verdict) {
        case Verdict::accept:
            return lot.conditions.empty()
                       ? ""
                       : "Measure on five pieces, before any is fitted, whether " + join(lot.conditions, " and ") + ".";
        case Verdict::reject:
            return "Keep the lot apart and fit none of it; send this report to the maker, and agree with him in "
                   "writing whether he reworks it, replaces it, or you keep what still serves by concession.";
        case Verdict::not_proven:
            break;
    }
    return "Fit none of it yet: measure what is open again or more finely, and what is missing; what stays open is "
           "agreed with the maker.";
}

std::vector<std::string> protection_sentences(const LotInspection& lot) {
    std::vector<std::string> all;
    const Judged* const seated = judged(lot, Kind::seated_load);
    if (seated != nullptr && seated->measured() == lot.samples.lot_size)
        all.push_back("Loads: every piece was measured, so that each bad one shows.");
    for (const Judged& j : lot.characteristics) add_protection(all, lot, j);
    if (lot.plan.sampling && lot.plan.sampling->letter != lot.plan.sampling->used)
        all.push_back(std::string("The lot's code letter is ") + lot.plan.sampling->letter +
                      "; the arrow of its AQL leads to the plan of letter " + lot.plan.sampling->used + ".");
    if (lot.plan.sampling && lot.plan.size == lot.samples.lot_size)
        all.push_back("The plan's sample is as large as the lot: every piece is measured.");
    return all;
}

std::string statistics_sentence() {
    return "The interval holds 95 % of all pieces of such a lot with 95 % confidence, and Cpk is no less than told "
           "with "
           "95 % confidence, if the values are normal, taken at random, and the scatter of measuring is small beside "
           "theirs.";
}

std::vector<std::string> forecast_sentences(const LotInspection& lot, const Forecast& forecast) {
    std::vector<std::string> all;
    for (const Kind kind : {Kind::seated_load, Kind::full_travel_load})
        if (const Judged* j = judged(lot, kind))
            all.push_back(forecast_of(*j, forecast.loads[kind == Kind::seated_load ? 0 : 1]));
    if (all.empty()) return all;
    const std::string share = forecast.share_good > 0.999 ? "more than 99.9 %" : percent(forecast.share_good);
    all.push_back("Of a lot that the maker brought in, " + share +
                  " were foretold to keep both loads as ordered; how far pieces of one lot stray is an "
                  "estimate.");
    return all;
}

std::vector<std::string> set_sentences(const LotInspection& lot, const Forecast* forecast) {
    std::vector<std::string> all;
    const Samples& samples = lot.samples;
    for (const SetLoss& loss : set_losses(samples)) {
        std::string words = "After " + samples.treatment +
                            (samples.conditions.empty() ? "" : " (" + samples.conditions + ")") + " the " +
                            named(loss.kind) + " of " + pieces(loss.count) + " had lost " + percent(loss.mean, 2);
        if (loss.doubt > 0.0) words += " ± " + percent(loss.doubt, 2);
        words += " in the mean, at most " + percent(loss.largest, 2) + " (piece " + loss.piece + ").";
        all.push_back(words);
    }
    if (all.empty() || forecast == nullptr) return all;
    all.push_back(counted_on_words(samples, *forecast));
    return all;
}

std::string eye_sentence(const LotInspection& lot) {
    const std::string words = "Ends, hand and finish are looked at by eye and are no part of this verdict";
    const auto turns = std::find_if(lot.characteristics.begin(), lot.characteristics.end(),
                                    [](const Judged& j) { return j.characteristic.whole_turns_free; });
    if (turns == lot.characteristics.end()) return words + ".";
    return words + (turns->measured() > 0
                        ? ". End tips are judged as the part of a turn in nt (1° is 1/360 turn)."
                        : ", nor are the end tips, which want a protractor: written down as the part of a turn in "
                          "total_coils (1° is 1/360 turn) they would be.");
}

}  // namespace seatload::inspection
