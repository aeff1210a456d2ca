// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_overview.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/fit_map.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kMapHeight = 140.0;

std::string identity(const record::Spec& spec) {
    std::vector<std::string> words;
    if (!spec.identity.engine.empty()) words.push_back(spec.identity.engine);
    if (!spec.identity.position.empty()) words.push_back(spec.identity.position);
    if (!spec.identity.number.empty()) words.push_back("number " + spec.identity.number);
    return join(words, ", ");
}

RuledTable side_by_side(std::span<const ReportSubject> subjects) {
    RuledTable table;
    table.widths = {8.0, 50.0, 13.0, 15.0, 12.0, 15.0, 16.0, 16.0, 15.0, 14.0};
    table.rows.push_back({"", "wire", "d mm", "D mm", with_sub("n", "t"), with_sub("L", "0") + " mm",
                          with_sub("F", "1") + " N", with_sub("F", "2") + " N", "stress used", "limits kept"});
    for (std::size_t i = 0; i < subjects.size(); ++i) {
        const ReportSubject& s = subjects[i];
        const spring::Spring& spring = s.spec.spring;
        const check::Verdict* stress = s.verdict("stress");
        table.rows.push_back(
            {report_letter(s.spec, i), s.grade.id, significant(in_mm(spring.wire_diameter), 5),
             significant(in_mm(spring.mean_diameter), 6), significant(spring.total_coils, 5),
             significant(in_mm(spring.free_length), 6), fixed(in_newton(s.seated().load), 2),
             fixed(in_newton(s.full_travel().load), 2),
             stress != nullptr ? fixed(100.0 * stress->measure.value / stress->measure.limit, 0) + " %" : "",
             s.values.fits() ? "all" : "no"});
    }
    return table;
}

void add_reading(PageFlow& flow) {
    flow.heading("How to read it");
    flow.paragraph(
        "Each line gives a formula, the numbers put in and the value. A number put in stands above as a value, rounded "
        "as printed there, and the printed numbers give the printed value to its last digit. Lengths are in mm, forces "
        "in N, stresses in MPa, unless a line says otherwise. Stresses in tables are uncorrected unless named "
        "corrected.");
    flow.paragraph(
        "Trust, of the formula or datum, and after the stroke of the value, which is no firmer than anything put in: "
        "given, stated by whoever requires it; derived, follows from geometry or statics; seen, on an openly readable "
        "page that reproduces the standard or handbook; fit, a law fitted to rows seen; memory, recalled and not seen; "
        "estimate, filled in by judgement. What rests on memory or estimate wants checking against the printed "
        "standard "
        "before anything is relied on.");
}

std::vector<MapMark> marks_of(std::span<const ReportSubject> subjects) {
    std::vector<MapMark> marks;
    for (std::size_t i = 0; i < subjects.size(); ++i)
        marks.push_back({report_letter(subjects[i].spec, i), in_mm(subjects[i].spec.spring.wire_diameter),
                         in_mm(subjects[i].spec.spring.mean_diameter)});
    return marks;
}

RuledTable rejections_table(const sizing::Census& census) {
    const bool counts_all = census.counts_all_rejections();
    const auto row = [&](const std::string& limit, const std::string& all, const std::string& alone) {
        return counts_all ? std::vector{limit, all, alone} : std::vector{limit, alone};
    };
    RuledTable table;
    table.widths = counts_all ? std::vector{80.0, 47.0, 47.0} : std::vector{80.0, 47.0};
    table.rows.push_back(row("limit", "rejects", "only it rejects"));
    for (std::size_t i = 0; i < census.rejections.size(); ++i)
        if (const sizing::Rejections& r = census.rejections[i]; r.all.value_or(r.alone) > 0)
            table.rows.push_back(
                row(std::string(check::rules()[i].name), grouped(r.all.value_or(0)), grouped(r.alone)));
    return table;
}

}  // namespace

void add_overview(PageFlow& flow, std::span<const ReportSubject> subjects) {
    flow.heading("Calculation report");
    const record::Spec& spec = subjects.front().spec;
    if (const std::string who = identity(spec); !who.empty()) flow.paragraph(who + ".");
    flow.paragraph(
        "For our own use; not for the maker. It shows how each spring was reckoned, so that a licensed engineer can "
        "check it by hand.");
    flow.headed_table("The springs", side_by_side(subjects));
    for (std::size_t i = 0; i < subjects.size(); ++i)
        if (!subjects[i].spec.why.empty())
            flow.point(report_letter(subjects[i].spec, i) + ": " + subjects[i].spec.why + ".");
    add_reading(flow);
    flow.heading("Caution");
    flow.paragraph(
        "A spring stores energy: guard eyes and hands when pressing, testing or releasing it. It may hold an engine "
        "together: this calculation does not replace a trial, and a competent person must check it before use. Local "
        "codes and licensed practice govern.");
}

void add_map(PageFlow& flow, std::span<const ReportSubject> subjects, const ReportSizing& sizing) {
    const std::string counted = grouped(sizing.census.looked_at) +
                                " combinations of wire, mean diameter, coils, ends and free length were looked at; " +
                                grouped(sizing.census.fit) + " meet every limit.";
    if (has_fit(sizing.census.map)) {
        auto room = flow.headed_room("All that fits", kMapHeight);
        draw_fit_map(room.drawing, room.box, sizing.census.map, marks_of(subjects));
        flow.paragraph(
            counted +
            " Each cell stands for all grades, coils, ends and free lengths at that wire and mean diameter; white: "
            "nothing fits. Tolerance room: how many times what the maker's tolerances (EN 15800, from memory) do to a "
            "spring fits between it and the nearest limit they can break. Letters are the alternatives.");
    }
    flow.headed_rows("What rejects the rest", rejections_table(sizing.census));
    if (!sizing.census.counts_all_rejections())
        flow.paragraph("How many each rejects in all is not counted on so fine a grid.");
    for (const sizing::GradeLeftOut& out : sizing.space.left_out) {
        Diagnostics ignored;  // a user's own wire was complained of where it is printed first
        flow.point("Left out before: " + readable(out.grade, "wire", ignored) + " (" + out.reason + ").");
    }
}

void add_sources(PageFlow& flow, std::span<const ReportSubject> subjects, const std::vector<wire::Source>& sources) {
    const auto is_named = [&](const wire::Source& source) {
        const std::string key = "[" + source.key + "]";
        return std::any_of(subjects.begin(), subjects.end(), [&](const ReportSubject& s) {
            const auto& all = s.grade.provenance;
            return std::any_of(all.begin(), all.end(),
                               [&](const wire::Provenance& p) { return p.source.find(key) != std::string::npos; });
        });
    };
    if (std::none_of(sources.begin(), sources.end(), is_named)) return;
    flow.heading("Sources named in square brackets");
    for (const wire::Source& source : sources)
        if (is_named(source)) flow.point("[" + source.key + "] " + source.kind + ": " + source.title);
}

}  // namespace seatload::sheet
