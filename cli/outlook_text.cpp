// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/check/tips.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

#include <cli/outlook_view.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using Align = TextTable::Align;
using sizing::Outlook;
using sizing::OutlookCase;
using sizing::OutlookQuantity;

constexpr double kWellInside = 10.0;  ///< a reserve beyond which its size says no more

/// In four digits; a reserve without bound, or nearly so, says no number.
std::string outlook_number(double value) {
    if (std::isinf(value)) return "never";
    return significant(value, 4);
}

std::string reserve(double value) { return value > kWellInside ? "over 10" : significant(value, 3); }

std::string value_words(const OutlookQuantity& q, double value) {
    const bool is_reserve = q.unit.empty() && !q.deviation;
    return is_reserve ? reserve(value) : outlook_number(value);
}

std::string bound_words(const OutlookQuantity& q, const std::optional<double>& bound) {
    if (!bound) return "";
    return value_words(q, std::abs(*bound) < 1e-6 ? 0.0 : *bound);
}

/// The quantity in the few words a table has room for.
std::string short_name(std::string_view id) {
    if (id == "seated_load") return "load F1";
    if (id == "full_travel_load") return "load F2";
    if (id == "bore_clearance") return "bore";
    if (id == "rod_clearance") return "rod";
    if (id == "gap_to_solid") return "gap to solid";
    if (id == "free_length") return "free length";
    if (id == "sideways_stiffness") return "sideways push";
    return std::string(id);
}

/// What its numbers are, where the limit's own name would say another quantity.
std::string room_name(std::string_view id) {
    if (id == "bore_clearance") return "play in bore";
    if (id == "rod_clearance") return "play on rod";
    if (id == "gap_to_solid") return "L2 above Ln";
    if (id == "lean") return "room to lean";
    return short_name(id);
}

std::string breaks_words(const OutlookCase& c) {
    const OutlookQuantity* first = c.first_to_break();
    return first == nullptr ? "nothing" : short_name(first->id);
}

std::string influence_words(const OutlookCase& c) {
    const auto name = tolerance::kInfluenceNames[static_cast<std::size_t>(c.largest_influence())];
    return std::string(name) + " " + fixed(100.0 * c.largest_influence_share(), 0) + " %";
}

std::string grade_words(const std::optional<int>& grade) { return grade ? std::to_string(*grade) : "none"; }

/// What breaks first is told of the finest grade that does not keep 99 %, or of the coarsest of all.
const OutlookCase& telling_case(const Outlook& o) {
    const int grade = std::min(o.coarsest().value_or(0) + 1, tolerance::kGrades);
    return o.by_grade[static_cast<std::size_t>(grade - 1)];
}

std::string how_it_is_reckoned(const Outlook& o) {
    return grouped(static_cast<unsigned long long>(o.by_grade[0].springs)) +
           " springs simulated for each grade, coil diameter, loads and free length all to it, each lot's mean loads "
           "brought in by the maker with coils and free length. The grades' load tolerances are from memory, how "
           "tolerances are used up within a lot is an estimate.";
}

std::string none_words(bool is_any_without) {
    return is_any_without ? " None: agree a tighter tolerance with the maker, or have every spring measured." : "";
}

/// Which of several keeps most springs at the finest grade: the one with most tolerance room need not.
std::string keeps_most_words(const std::vector<NamedOutlook>& springs) {
    if (springs.size() < 2) return {};
    const auto share = [](const NamedOutlook& s) { return s.outlook.by_grade[0].share(); };
    const auto most = std::max_element(springs.begin(), springs.end(),
                                       [&](const auto& a, const auto& b) { return share(a) < share(b); });
    return most->name + " keeps most at grade 1. ";
}

bool has_quantity(const OutlookCase& c, std::string_view id) {
    return std::any_of(c.quantities.begin(), c.quantities.end(), [&](const auto& q) { return q.id == id; });
}

bool is_lean_counted(const std::vector<NamedOutlook>& springs) {
    return std::any_of(springs.begin(), springs.end(),
                       [](const NamedOutlook& s) { return has_quantity(s.outlook.by_grade[0], "lean"); });
}

/// What the column of that name counts.
std::string ordered_words(const Outlook& o) {
    if (!o.stated) return {};
    return "Ordered: loads to the grade named above, or to grade 1 where they are tighter, before the maker sorts "
           "them; "
           "coil diameter to grade " +
           std::to_string(o.stated->grades.diameter) + ". ";
}

constexpr const char* kStrayWords = " Loads stray by: the dimension that moves them most, and its part in it.";

}  // namespace

std::string kept_words(double share) { return fixed(std::floor(1000.0 * share + 1e-9) / 10.0, 1) + " %"; }

std::string outlooks_text(const std::vector<NamedOutlook>& springs, int width, bool explains) {
    if (springs.empty()) return {};
    TextTable t(
        {Align::left, Align::right, Align::right, Align::right, Align::right, Align::right, Align::left, Align::left});
    t.add({"", "ordered", "grade 1", "grade 2", "grade 3", "99 % at", "breaks first", "loads stray by"});
    bool is_any_without = false;
    for (const auto& [name, o] : springs) {
        is_any_without = is_any_without || !o.coarsest();
        t.add({name, o.stated ? kept_words(o.stated->share()) : "-", kept_words(o.by_grade[0].share()),
               kept_words(o.by_grade[1].share()), kept_words(o.by_grade[2].share()), grade_words(o.coarsest()),
               breaks_words(telling_case(o)), influence_words(o.recommended())});
    }
    return wrapped("",
                   "Share of springs that meet the whole demand, made as ordered, or all to EN 15800 grade 1, 2 or 3:",
                   width, 2) +
           t.text(0) +
           wrapped("",
                   keeps_most_words(springs) + "99 % at: the coarsest, cheapest grade that keeps 99 %." +
                       none_words(is_any_without),
                   width, 2) +
           (explains ? wrapped("",
                               ordered_words(springs.front().outlook) +
                                   "Breaks first: the limit most springs of the next coarser grade break." +
                                   kStrayWords + ' ' + how_it_is_reckoned(springs.front().outlook) +
                                   (is_lean_counted(springs) ? ' ' + std::string(check::kLongestForWorstTips) : ""),
                               width, 2)
                     : "");
}

namespace {

std::string grades_table(const Outlook& o) {
    TextTable t({Align::left, Align::right, Align::left, Align::left});
    t.add({"made to", "meet the demand", "breaks first", "loads stray by"});
    for (const OutlookCase& c : o.by_grade)
        t.add({"grade " + std::to_string(c.grades.load), kept_words(c.share()), breaks_words(c), influence_words(c)});
    return t.text(2);
}

std::string quantities_table(const OutlookCase& c) {
    TextTable t(
        {Align::left, Align::left, Align::right, Align::right, Align::right, Align::right, Align::right, Align::right});
    const std::string grade = "grade " + std::to_string(c.grades.load);
    t.add({grade, "", "asked", "worst", "99 of", "100", "worst", "asked"});
    t.add({"", "", "least", "least", "from", "to", "most", "most"});
    for (const OutlookQuantity& q : c.quantities)
        t.add({room_name(q.id), std::string(q.unit), bound_words(q, q.least), value_words(q, q.worst.least),
               value_words(q, q.middle.least), value_words(q, q.middle.most), value_words(q, q.worst.most),
               bound_words(q, q.most)});
    return t.text(2);
}

/// Numbers of the table that are not what they hang on.
std::string rooms_told(const OutlookCase& c) {
    std::string words = has_quantity(c, "gap_to_solid") ? " L2 above Ln: what is left above the gap asked for." : "";
    if (has_quantity(c, "lean"))
        words += std::string(" Room to lean: what is left beside the lean, of each spring's own coils and tips. ") +
                 std::string(check::kLongestForWorstTips);
    return words;
}

std::string stated_words(const Outlook& o) {
    if (!o.stated) return {};
    const sizing::ToleranceGrades& g = o.stated->grades;
    return " As ordered (loads " +
           std::string(g.is_load_tighter ? "tighter than grade 1, counted at it" : "grade " + std::to_string(g.load)) +
           ", coil diameter grade " + std::to_string(g.diameter) + "): " + kept_words(o.stated->share()) +
           (o.stated->keeps() ? "." : ", less than 99 %.");
}

std::string verdict_words(const Outlook& o) {
    const auto grade = o.coarsest();
    return (grade ? "The coarsest grade that keeps 99 % of the springs is grade " + std::to_string(*grade) + "."
                  : "No grade keeps 99 % of the springs: agree a tighter tolerance with the maker, or have every "
                    "spring measured.") +
           stated_words(o);
}

}  // namespace

std::string outlook_text(const Outlook& o, int width) {
    return wrapped("  ", "What EN 15800's grades do to it:", width, 4) + grades_table(o) +
           wrapped("  ", verdict_words(o), width, 4) + quantities_table(o.recommended()) +
           wrapped("  ",
                   std::string("Breaks first: the limit most of the springs break.") + kStrayWords +
                       " Worst: all "
                       "tolerances at whichever end harms. " +
                       how_it_is_reckoned(o) + rooms_told(o.recommended()) +
                       " Loads are cold and new, what must be there in service raised.",
                   width, 4);
}

}  // namespace seatload::cli
