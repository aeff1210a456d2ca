// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_outlook.hpp>

#include <cmath>
#include <string>

#include <seatload/core/text.hpp>
#include <seatload/record/spec_outlook.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/report_part.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

using sizing::Outlook;
using sizing::OutlookCase;
using sizing::OutlookQuantity;

constexpr double kOutlookWellInside = 10.0;  ///< a reserve beyond which its size says no more
constexpr int kDigits = 4;

/// A share in tenths of a per cent, rounded down, so that 99.0 % is never less.
std::string kept_words(double share) { return fixed(std::floor(1000.0 * share + 1e-9) / 10.0, 1) + " %"; }

bool is_reserve(const OutlookQuantity& q) { return q.unit.empty() && !q.deviation; }

std::string value_words(const OutlookQuantity& q, double value) {
    if (is_reserve(q)) return value > kOutlookWellInside ? "over 10" : significant(value, 3);
    return with_true_minus(significant(std::abs(value) < 1e-6 ? 0.0 : value, kDigits));
}

std::string range_words(const OutlookQuantity& q, const sizing::MadeRange& range) {
    // Of a reserve, and of what only has a floor, the lower end alone says something.
    if (is_reserve(q)) return value_words(q, range.least) + " up";
    return value_words(q, range.least) + " to " + value_words(q, range.most);
}

std::string asked_words(const OutlookQuantity& q) {
    if (q.least && q.most) return value_words(q, *q.least) + " to " + value_words(q, *q.most);
    if (q.least) return "at least " + value_words(q, *q.least);
    if (q.most) return "at most " + value_words(q, *q.most);
    return "–";
}

std::string breaks_words(const OutlookCase& c) {
    const OutlookQuantity* first = c.first_to_break();
    if (first == nullptr) return "nothing";
    return std::string(first->name) + ": " +
           kept_words(1.0 - static_cast<double>(first->broken) / static_cast<double>(c.springs)) + " keep it";
}

std::string influence_words(const OutlookCase& c) {
    const auto shares = tolerance::influence_shares(c.adjusted);
    std::vector<std::string> words;
    for (std::size_t i = 0; i < tolerance::kInfluences; ++i)
        if (shares[i] > 0.0)
            words.push_back(std::string(tolerance::kInfluenceNames[i]) + " " + fixed(100.0 * shares[i], 0) + " %");
    return join(words, ", ");
}

std::string grades_words(const sizing::ToleranceGrades& g) {
    return "loads grade " + std::to_string(g.load) + ", coil diameter grade " + std::to_string(g.diameter);
}

std::vector<std::string> grade_row(const std::string& name, const OutlookCase& c) {
    return {name, kept_words(c.share()), breaks_words(c), influence_words(c)};
}

}  // namespace

RuledTable outlook_grades_table(const Outlook& o, double width) {
    RuledTable table;
    table.widths = {30.0, 20.0, 54.0, width - 104.0};
    table.rows.push_back({"made to", "meet the demand", "broken most often", "what moves the loads (variance, both)"});
    for (const OutlookCase& c : o.by_grade)
        table.rows.push_back(grade_row("grade " + std::to_string(c.grades.load), c));
    if (o.stated)
        table.rows.push_back(grade_row(
            (o.stated->grades.is_load_tighter ? "" : "as ordered: ") + grades_words(o.stated->grades), *o.stated));
    return table;
}

RuledTable outlook_quantities_table(const Outlook& o, double width) {
    RuledTable table;
    table.widths = {36.0, 21.0, 18.0, 17.0};
    const double rest = (width - 92.0) / 3.0;
    for (int i = 0; i < 3; ++i) table.widths.push_back(rest);
    table.rows.push_back({"quantity", "asked", "", "nominal", "grade 1", "grade 2", "grade 3"});
    for (std::size_t q = 0; q < o.by_grade[0].quantities.size(); ++q) {
        const OutlookQuantity& first = o.by_grade[0].quantities[q];
        const std::string unit = first.unit.empty() ? "" : " [" + std::string(first.unit) + "]";
        std::vector<std::string> worst{std::string(first.name) + unit, asked_words(first), "worst",
                                       value_words(first, first.nominal)};
        std::vector<std::string> middle{"", "", "99 of 100", ""};
        for (const OutlookCase& c : o.by_grade) {
            worst.push_back(range_words(c.quantities[q], c.quantities[q].worst));
            middle.push_back(range_words(c.quantities[q], c.quantities[q].middle));
        }
        table.rows.push_back(std::move(worst));
        table.rows.push_back(std::move(middle));
    }
    return table;
}

std::string outlook_verdict(const ReportSubject& s, const Outlook& o) {
    const auto coarsest = o.coarsest();
    std::string words =
        coarsest
            ? "The coarsest, cheapest grade that keeps 99 % of the springs is grade " + std::to_string(*coarsest) + "."
            : std::string(
                  "No grade keeps 99 % of the springs: agree a tighter tolerance with the maker, or have "
                  "every spring measured.");
    if (o.stated && !o.stated->grades.is_load_tighter)
        return words + " Ordered, the tolerances amount to " + grades_words(o.stated->grades) + ": " +
               kept_words(o.stated->share()) + " meet the demand, so that this grade " +
               (o.stated->keeps() ? "keeps" : "does not keep") + " 99 %.";
    return words + " A load is ordered tighter than grade 1, coil diameter grade " +
           std::to_string(s.spec.diameter_grade) + ": the maker must agree to it, and sort out what breaks it" +
           (o.stated ? "; with loads to grade 1, " + kept_words(o.stated->share()) + " meet the demand." : ".");
}

namespace {

/// The angle of the tips and the coils that work are two things, with two tolerances.
std::string tips_words(const check::Tips& tips, const tolerance::MadeAllowance& allowance) {
    return "End tips are counted as ordered, " + check::tips_apart(tips) + " apart (±" + significant(tips.ordered, 2) +
           " turn), half of it from piece to piece; lean goes by them. " + std::string(check::kLongestForWorstTips) +
           " The coils that work stray by ±" + significant(allowance.active_coils / sizing::kWithinLotCoils, 4) +
           " in all, which is more: where an end coil comes to rest on the next differs from piece to piece, whatever "
           "the angle of its tip (estimates).";
}

void add_assumptions(PageFlow& flow, const ReportSubject& s, const Outlook& outlook) {
    flow.point(
        "Worst case: the least and the most over all corners of the tolerances (wire, modulus, coil diameter of "
        "lot and piece, coils, free length), with F = R (" +
        with_sub("L", "0") +
        " − L) and each limit's own "
        "formula. Simulated: " +
        grouped(static_cast<unsigned long long>(outlook.by_grade[0].springs)) +
        " springs a grade from a fixed seed; 99 of 100 lie in the range told. Both loads are cold and new, what "
        "must be there hot and after load loss raised.");
    flow.point(
        "A grade stands for coil diameter, loads, free length and coils at once; where the calculation has a worst "
        "case of the loads, it is by the grades ordered, " +
        grades_words(s.made_to) +
        ". Each lot is of one coil of "
        "wire; the maker brings its two mean loads to those ordered by coils, as far as half a turn over lets "
        "him on a sliding seat, then by the mean coil diameter within its tolerance, and by free length.");
    flow.point(
        "A spring meets the demand when it keeps every limit in the table. Index, grinding, half a turn over and "
        "rocking on the seats are not counted anew for each spring.");
    if (s.values.tips) flow.point(tips_words(*s.values.tips, s.allowance));
}

}  // namespace

void add_outlook(PageFlow& flow, const ReportSubject& s, bool with_assumptions) {
    const auto outlook = s.outlook ? s.outlook : record::spec_outlook(s.spec, s.grade, s.requirement, s.tables);
    if (!outlook) return;
    flow.headed_table("What share of springs meets the demand, by EN 15800 grade",
                      outlook_grades_table(*outlook, kReportWidth));
    flow.paragraph(outlook_verdict(s, *outlook));
    flow.headed_rows("Worst case and simulation, the lot brought in", outlook_quantities_table(*outlook, kReportWidth));
    if (with_assumptions) add_assumptions(flow, s, *outlook);
}

}  // namespace seatload::sheet
