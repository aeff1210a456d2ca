// SPDX-License-Identifier: MIT
#include <seatload/sheet/what_if_sheet.hpp>

#include <algorithm>
#include <cmath>
#include <optional>

#include <seatload/core/text.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/plot_area.hpp>
#include <seatload/sheet/plot_marks.hpp>
#include <seatload/sheet/printable.hpp>

namespace seatload::sheet {
namespace {

constexpr double kFacts = 42.0;           ///< kept for the paragraphs under the plots
constexpr double kWhatIfHeadroom = 1.08;  ///< so that the highest point is not on the edge
constexpr double kRightEdge = 6.0;        ///< for half of the last number
constexpr int kWhatIfLevelTicks = 12;
constexpr int kWhatIfUprightTicks = 6;
constexpr int kWhatIfDigits = 7;

/// One of the three curves.
struct Curve {
    std::string name;
    std::optional<double> (*of)(const sizing::WhatIfRow&);
};

std::optional<double> count(const sizing::WhatIfRow& row) { return static_cast<double>(row.fit); }

std::optional<double> room(const sizing::WhatIfRow& row) {
    if (!row.best || std::isinf(row.best->merit.tolerance_room)) return std::nullopt;
    return row.best->merit.tolerance_room;
}

std::optional<double> stress_used(const sizing::WhatIfRow& row) {
    if (!row.best) return std::nullopt;
    return 100.0 * (1.0 - row.best->merit.stress_margin);
}

std::string with_unit(double value, const sizing::WhatIfNumber& number) {
    const std::string digits = significant(value, kWhatIfDigits);
    return number.easing->unit.empty() ? digits : digits + " " + std::string(number.easing->unit);
}

std::string what_if_title(const demand::Identity& identity) {
    return identity.position.empty() ? "What fits as one number varies" : "What if, " + identity.position;
}

double highest(const WhatIfSheetInput& in, const Curve& curve) {
    double most = 0.0;
    for (const sizing::WhatIfRow& row : in.rows)
        if (const auto value = curve.of(row)) most = std::max(most, *value);
    return most > 0.0 ? most : 1.0;
}

/// Line and discs, parted where a value has no point.
void draw_points(Drawing& drawing, const Plot& plot, const WhatIfSheetInput& in, const Curve& curve) {
    Path run;
    const auto end_run = [&] {
        if (run.size() > 1) draw_curve(drawing, plot, run, LineKind::narrow);
        run.clear();
    };
    for (const sizing::WhatIfRow& row : in.rows) {
        const auto value = curve.of(row);
        if (!value) {
            end_run();
            continue;
        }
        run.push_back({row.value, *value});
        draw_mark(drawing, plot.at(row.value, *value), Mark::disc);
    }
    end_run();
}

double top_of(const WhatIfSheetInput& in, const Curve& curve) { return kWhatIfHeadroom * highest(in, curve); }

void draw_plot(Drawing& drawing, const Box& box, const WhatIfSheetInput& in, const Curve& curve,
               const std::string& level_name) {
    const double top = top_of(in, curve);
    const Plot plot{{box.left, box.bottom + kBelowPlot, box.right - kRightEdge, box.top - kAbovePlot},
                    in.rows.front().value,
                    in.rows.back().value,
                    0.0,
                    top};
    draw_level_axis(drawing, plot, level_name, kWhatIfLevelTicks);
    draw_upright_axis(drawing, plot, curve.name, kWhatIfUprightTicks);
    for (const sizing::WhatIfRow& row : in.rows)
        if (row.is_stated) draw_upright_line(drawing, plot, row.value, LineKind::hidden);
    draw_points(drawing, plot, in, curve);
}

void add_plots(PageFlow& flow, const WhatIfSheetInput& in) {
    const Curve curves[] = {{"springs that fit", count},
                            {"tolerance room of the best spring", room},
                            {"stress used by the best spring [%]", stress_used}};
    const sizing::WhatIfNumber& number = *in.question.number;
    const std::string level =
        number.name + (number.easing->unit.empty() ? "" : " [" + std::string(number.easing->unit) + "]");
    const double each = (flow.height_left() - kFacts) / static_cast<double>(std::size(curves)) - kFlowGap;
    double left = 0.0;  // the same for all, so that equal values stand below each other
    for (const Curve& curve : curves) left = std::max(left, left_of_plot(0.0, top_of(in, curve), kWhatIfUprightTicks));
    for (const Curve& curve : curves) {
        auto place = flow.room(each);
        place.box.left += left;
        draw_plot(place.drawing, place.box, in, curve, level);
    }
}

void add_words(PageFlow& flow, const WhatIfSheetInput& in) {
    const auto now = sizing::stated(*in.question.number, in.requirement);
    flow.paragraph((now ? "Dashed: the stated value, " + with_unit(*now, *in.question.number) + ". " : "") +
                   "All else is as the requirement states; each value was searched in full. The best spring is the one "
                   "that would be offered first. Room: how many times what the maker's tolerances (EN 15800 grade " +
                   std::to_string(in.requirement.load_grade) +
                   ", from memory) do to it fits between it and the nearest limit they can break: of loads, bore, rod, "
                   "solid length, free length, stress, buckling or lean. It may be another one, of other wire, at each "
                   "value, and one that leans further than its room comes after all that do not, so that room and "
                   "stress do not run smoothly.");
    flow.paragraph(
        "A spring stores energy and may hold an engine together: a competent person must judge it before use. Local "
        "codes and licensed practice govern.");
}

}  // namespace

Result<std::vector<Drawing>> what_if_sheet(const WhatIfSheetInput& input) {
    Diagnostics diagnostics;
    const demand::Identity identity = printable(input.requirement.identity, diagnostics);
    if (has_error(diagnostics)) return diagnostics;
    PageFlow flow(input.size);
    flow.heading("What fits: " + input.question.number->name + " from " +
                 with_unit(input.question.from, *input.question.number) + " to " +
                 with_unit(input.question.to, *input.question.number));
    add_plots(flow, input);
    add_words(flow, input);
    std::vector<Drawing> pages = std::move(flow.pages());
    draw_title_blocks(pages, {{pages.size(), identity.engine}},
                      title_block_of(identity, what_if_title(identity), "sizing diagram"), input.words);
    return {std::move(pages), diagnostics};
}

Result<std::string> what_if_sheet_pdf(const WhatIfSheetInput& input) {
    const auto pages = what_if_sheet(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by what_if_sheet()
    const demand::Identity identity = printable(input.requirement.identity, ignored);
    auto bytes = write_pdf(*pages, {what_if_title(identity), identity.owner, "What fits as one number varies"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
