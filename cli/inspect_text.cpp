// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/inspection/counted.hpp>
#include <seatload/inspection/sentences.hpp>
#include <seatload/record/lot.hpp>
#include <seatload/sheet/terms.hpp>

#include <cli/inspect_view.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using inspection::decimals_of;
using inspection::Finding;
using inspection::Judged;
using inspection::LotInspection;
using enum TextTable::Align;

constexpr std::size_t kMostPiecesNamed = 20;

std::string heading(const InspectView& view, int width) {
    const inspection::Samples& s = view.lot.samples;
    std::string words = "\"" + cut_name(s.name, width) + "\"";
    if (!s.maker.empty()) words += " of " + cut_name(s.maker, width);
    if (!s.date.empty()) words += ", " + s.date;
    words += ", by " + sheet::drawing_number(view.spec);
    if (!view.spec.identity.revision.empty()) words += " revision " + view.spec.identity.revision;
    return wrapped(view.file + ": ", words, width, 2);
}

std::string verdict_text(const LotInspection& lot, int width) {
    const bool is_conditional = !lot.conditions.empty();
    const std::string start = is_conditional                               ? "ACCEPTED "
                              : lot.verdict == inspection::Verdict::accept ? "ACCEPTED: "
                              : lot.verdict == inspection::Verdict::reject ? "REJECTED: "
                                                                           : "NOT PROVEN: ";
    std::string text =
        wrapped(start,
                (is_conditional ? "on condition that " + join(lot.conditions, " and ") + ": " : "") +
                    std::to_string(lot.samples.pieces.size()) + " of " + std::to_string(lot.samples.lot_size) +
                    " pieces measured; loads by " + record::plan_words(lot.plan) + ".",
                width, 2);
    for (const std::string& reason : lot.reasons) text += wrapped("  ", "- " + reason, width, 4);
    return text;
}

bool is_told(const Judged& j) { return j.measured() > 0 || j.wanted > 0; }

std::string name_of(const Judged& j) {
    if (j.characteristic.whole_turns_free) return inspection::named(j.characteristic);
    const auto kind = j.characteristic.kind;
    const std::string in(unit(kind));
    return std::string(words(kind)) + ' ' + std::string(symbol(kind)) + (in.empty() ? "" : " [" + in + ']');
}

/// Limits and uncertainty as they stand in the table.
struct ShownLimits {
    std::string least;
    std::string most;
    std::string doubt;
};

ShownLimits limits_of(const Judged& j) {
    const inspection::Characteristic& c = j.characteristic;
    if (!c.whole_turns_free)
        return {inspection::limit_text(c.limits, c.limits.least), inspection::limit_text(c.limits, c.limits.most),
                inspection::doubt_text(j.expanded)};
    constexpr double kHalfTurn = 180.0;  // degrees
    const double off = c.ordered_tip_degrees();
    const std::string doubt = inspection::doubt_text(360.0 * j.expanded);
    return {significant(kHalfTurn - off, 4) + "°", significant(kHalfTurn + off, 4) + "°",
            doubt == "-" ? doubt : doubt + "°"};
}

std::string findings_text(const LotInspection& lot) {
    TextTable table({left, right, right, right, right, right, right, left});
    table.add({"", "least", "most", "U", "pass", "open", "fail", ""});
    for (const Judged& j : lot.characteristics) {
        if (!is_told(j)) continue;
        const bool counts = !j.characteristic.limits.is_open();
        const auto count = [&](int number) { return counts ? std::to_string(number) : "-"; };
        const auto [least, most, doubt] = limits_of(j);
        table.add({name_of(j), least, most, doubt, count(j.inside), count(j.unproven), count(j.outside),
                   j.decides() ? std::string(word(j.verdict)) : "reference"});
    }
    return table.text(2);
}

std::string interval_words(const inspection::Limits& interval, int decimals) {
    if (interval.least && interval.most)
        return fixed(*interval.least, decimals) + " .. " + fixed(*interval.most, decimals);
    if (interval.least) return "above " + fixed(*interval.least, decimals);
    return interval.most ? "below " + fixed(*interval.most, decimals) : "-";
}

std::string statistics_text(const LotInspection& lot, int width) {
    TextTable table({left, right, right, right, right, right, right});
    table.add({"", "n", "mean", "s", "least .. most", "95 % of all", "Cpk >="});
    for (const Judged& j : lot.characteristics) {
        if (!j.summary) continue;
        const inspection::Summary& s = *j.summary;
        const int decimals = decimals_of(j.expanded);
        table.add({std::string(symbol(j.characteristic.kind)), std::to_string(s.count), fixed(s.mean, decimals),
                   s.count > 1 ? fixed(s.deviation, decimals + 1) : "-",
                   fixed(s.least, decimals) + " .. " + fixed(s.most, decimals), interval_words(s.interval, decimals),
                   s.capability ? fixed(s.capability->at_least, 2) : "-"});
    }
    const bool has_rows = std::any_of(lot.characteristics.begin(), lot.characteristics.end(),
                                      [](const Judged& j) { return j.summary.has_value(); });
    return has_rows ? '\n' + table.text(2) + wrapped("  ", inspection::statistics_sentence(), width, 2) : "";
}

/// "F1 4.95 N fails, F2 11.20 N open".
std::string piece_words(const LotInspection& lot, std::size_t piece) {
    std::string all;
    for (const Judged& j : lot.characteristics) {
        const auto finding = j.findings[piece];
        if (!finding || *finding == Finding::inside || !j.decides()) continue;
        const auto kind = j.characteristic.kind;
        all += (all.empty() ? "" : ", ") + std::string(symbol(kind)) + ' ' +
               inspection::shown(lot.samples.pieces[piece].values.at(kind), kind, decimals_of(j.expanded)) +
               (*finding == Finding::outside ? " fails" : " open");
    }
    return all;
}

std::string pieces_text(const LotInspection& lot, int width) {
    std::string text;
    std::size_t named = 0, more = 0;
    for (std::size_t i = 0; i < lot.samples.pieces.size(); ++i) {
        const std::string words = piece_words(lot, i);
        if (words.empty()) continue;
        if (++named > kMostPiecesNamed)
            ++more;
        else
            text += wrapped("  ", "piece " + lot.samples.pieces[i].name + ": " + words, width, 4);
    }
    if (more > 0) text += "  and " + std::to_string(more) + " more\n";
    return text.empty() ? text : "\n" + text;
}

std::string sentences_text(const std::string& title, const std::vector<std::string>& sentences, int width) {
    if (sentences.empty()) return {};
    std::string text = "\n" + title + "\n";
    for (const std::string& sentence : sentences) text += wrapped("  ", sentence, width, 4);
    return text;
}

}  // namespace

std::string inspect_text(const InspectView& view, int width) {
    const LotInspection& lot = view.lot;
    std::string text = heading(view, width) + verdict_text(lot, width) + '\n' + findings_text(lot) +
                       wrapped("  ", inspection::rule_sentence() + inspection::tips_sentence(lot), width, 2) +
                       pieces_text(lot, width) + statistics_text(lot, width);
    text += sentences_text("What the sample protects from", inspection::protection_sentences(lot), width);
    if (view.forecast)
        text += sentences_text("What was foretold", inspection::forecast_sentences(lot, *view.forecast), width);
    text += sentences_text("What it loses", inspection::set_sentences(lot, view.forecast ? &*view.forecast : nullptr),
                           width);
    std::vector<std::string> remarks = lot.remarks;
    for (const std::string& basis : inspection::basis_sentences(lot.samples)) remarks.push_back(basis);
    remarks.push_back(inspection::eye_sentence(lot));
    return text + sentences_text("Remarks", remarks, width);
}

}  // namespace seatload::cli
