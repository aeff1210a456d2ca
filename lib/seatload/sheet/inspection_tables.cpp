// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_tables.hpp>

#include <seatload/core/text.hpp>
#include <seatload/inspection/sentences.hpp>
#include <seatload/sheet/inspection_words.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

using inspection::decimals_of;
using inspection::Finding;
using inspection::Judged;
using inspection::LotInspection;

const std::string kNothing = "–";

bool is_told(const Judged& j) { return j.measured() > 0 || j.wanted > 0; }

std::vector<double> with_rest(std::vector<double> widths, double width) {
    for (const double w : widths) width -= w;
    widths.push_back(width);
    return widths;
}

std::string verdict_words(const Judged& j) {
    if (!j.decides()) return "for reference";
    return std::string(word(j.verdict)) + (j.why.empty() ? "" : ": " + j.why);
}

std::string interval_words(const inspection::Limits& interval, int decimals) {
    const auto number = [&](double value) { return with_true_minus(fixed(value, decimals)); };
    if (interval.least && interval.most) return number(*interval.least) + " to " + number(*interval.most);
    if (interval.least) return "above " + number(*interval.least);
    if (interval.most) return "below " + number(*interval.most);
    return kNothing;
}

std::vector<std::string> statistics_row(const Judged& j) {
    const inspection::Summary& s = *j.summary;
    const int decimals = decimals_of(j.expanded);
    std::vector<std::string> row{axis_name(j.characteristic.kind), std::to_string(s.count), fixed(s.mean, decimals)};
    row.push_back(s.count > 1 ? "± " + fixed(s.mean_within, decimals) : kNothing);
    row.push_back(s.count > 1 ? fixed(s.deviation, decimals + 1) : kNothing);
    row.push_back(fixed(s.least, decimals) + " to " + fixed(s.most, decimals));
    row.push_back(s.factor > 0.0 ? interval_words(s.interval, decimals) : kNothing);
    row.push_back(s.factor > 0.0 ? fixed(s.factor, 3) : kNothing);
    row.push_back(s.capability ? with_true_minus(fixed(s.capability->at_least, 2)) + " (" +
                                     with_true_minus(fixed(s.capability->estimate, 2)) + ")"
                               : kNothing);
    return row;
}

std::string sign_of(const std::optional<Finding>& finding) {
    if (finding == Finding::outside) return "\u00a0×";
    return finding == Finding::unproven ? "\u00a0?" : "";
}

}  // namespace

RuledTable inspection_verdict_table(const LotInspection& lot, double width) {
    RuledTable table;
    table.widths = with_rest({39.0, 34.0, 16.0, 15.0, 12.0, 12.0, 11.0}, width);
    table.rows.push_back({"characteristic", "limits of the sheet", "U", "pieces", "pass", "open", "fail", "verdict"});
    for (const Judged& j : lot.characteristics) {
        if (!is_told(j)) continue;
        const auto kind = j.characteristic.kind;
        const std::string in(unit(kind));
        std::string limits = limits_words(j.characteristic);
        if (!j.characteristic.limits.is_open() && !in.empty()) limits += ' ' + in;
        const bool counts = !j.characteristic.limits.is_open();
        const auto count = [&](int number) { return counts ? std::to_string(number) : kNothing; };
        table.rows.push_back(
            {characteristic_words(j.characteristic), limits, doubt_words(j),
             std::to_string(j.measured()) + (j.measured() < j.wanted ? " of " + std::to_string(j.wanted) : ""),
             count(j.inside), count(j.unproven), count(j.outside), verdict_words(j)});
    }
    return table;
}

RuledTable inspection_statistics_table(const LotInspection& lot, double width) {
    RuledTable table;
    table.widths = with_rest({18.0, 9.0, 15.0, 16.0, 15.0, 31.0, 31.0, 12.0}, width);
    table.rows.push_back({"", "n", "mean", "its ±", "s", "least to most", "95 % interval", "k", "Cpk ≥ (est.)"});
    for (const Judged& j : lot.characteristics)
        if (j.summary) table.rows.push_back(statistics_row(j));
    return table;
}

RuledTable inspection_pieces_table(const LotInspection& lot, double width) {
    std::vector<const Judged*> shown;
    for (const Judged& j : lot.characteristics)
        if (j.measured() > 0) shown.push_back(&j);
    RuledTable table;
    table.widths.push_back(26.0);
    table.rows.push_back({"piece"});
    for (const Judged* j : shown) {
        table.widths.push_back((width - 26.0) / static_cast<double>(shown.size()));
        table.rows.front().push_back(axis_name(j->characteristic.kind));
    }
    for (std::size_t i = 0; i < lot.samples.pieces.size(); ++i) {
        std::vector<std::string> row{lot.samples.pieces[i].name};
        for (const Judged* j : shown) {
            const auto value = lot.samples.pieces[i].values.find(j->characteristic.kind);
            row.push_back(value == lot.samples.pieces[i].values.end()
                              ? kNothing
                              : fixed(value->second, decimals_of(j->expanded)) + sign_of(j->findings[i]));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace seatload::sheet
