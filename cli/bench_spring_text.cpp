// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/bench_spring_text.hpp>
#include <cli/doubt_text.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using units::shown;
using enum TextTable::Align;

constexpr int kNameColumns = 40;       // two lines of it at most
constexpr double kHopeless = 5.0;      // times the ±: wire further off is counted, not named
constexpr double kWorthNaming = 0.01;  // of the variance: smaller contributions are told together

template <class Q>
std::string with_doubt(const bench::Estimate<Q>& estimate, const std::string& unit) {
    return doubt_text(in_base_unit(estimate.value), in_base_unit(estimate.expanded)) + ' ' + unit;
}

std::string named_height(const bench::AskedHeight& asked) {
    return shown(asked.height.value, 2) + " (" + asked.name + ')';
}

std::string between(const bench::Bracket& bracket) {
    return "between " + shown(bracket.above, 2) + " and " + shown(bracket.below, 2);
}

double in_gpa(Stress stress) { return in_mpa(stress) / 1000.0; }

bool carries(const bench::LoadAtHeight& load) { return in_newton(load.force.value) > 0.0; }

std::string results_table(const bench::MeasuredSpring& m) {
    TextTable table({left, right, left});
    table.add({"rate R", with_doubt(m.rate, "N/mm")});
    table.add({"free length of the line", with_doubt(m.free_length, "mm")});
    for (const bench::LoadAtHeight& load : m.loads)
        table.add({"load at " + named_height(load.asked), carries(load) ? with_doubt(load.force, "N") : "none",
                   !carries(load) ? "above its free length"
                   : load.outside ? "beyond the readings"
                                  : ""});
    return table.text(2);
}

std::string doubt_words(const bench::MeasuredSpring& m) {
    return "± is the expanded uncertainty U: the true value lies within it with some 95 % likelihood (k = " +
           significant(m.rate.coverage_factor, 3) + " for the rate).";
}

std::string contact_words(const bench::MeasuredSpring& m) {
    std::string words = "The plate bears on the whole spring from ";
    words += m.contact ? "somewhere " + between(*m.contact) + " on" : std::string("the first reading on");
    words += "; coils begin to touch ";
    return words + (m.closing ? "somewhere " + between(*m.closing) : std::string("below the last reading, if at all")) +
           '.';
}

std::string hysteresis_words(const bench::MeasuredSpring& m) {
    if (!m.hysteresis) return {};
    const bench::Hysteresis& h = *m.hysteresis;
    return "Hysteresis, loading less unloading: at most " + shown(h.largest, 3) + " at " + shown(h.at, 2) + " (" +
           shown(h.of_largest_load, 1) + " of the largest load), " + shown(h.mean, 3) + " in the mean of " +
           std::to_string(h.heights) + (h.heights == 1 ? " height." : " heights.");
}

/// The pieces with commas between, in lines that break only between pieces.
std::string list_of(const std::vector<std::string>& pieces, int width) {
    const std::string indent = "    ";
    std::string text, line = indent;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const std::string piece = pieces[i] + (i + 1 == pieces.size() ? "." : ",");
        const bool is_first = line == indent;
        if (!is_first && length_in_code_points(line + ' ' + piece) > static_cast<std::size_t>(width)) {
            text += line + '\n';
            line = indent + piece;
        } else {
            line += (is_first ? "" : " ") + piece;
        }
    }
    return text + line + '\n';
}

/// Whether a grade's modulus is remembered or estimated, so that it proves little.
bool is_from_memory(const bench::GradeMatch& match) {
    return match.evidence == wire::Evidence::memory || match.evidence == wire::Evidence::estimate;
}

/// Grades the stiffness fits, then the others with how far off they are; those not drawn so thin are left out.
std::string grade_lists(const bench::WireInference& wire, int width) {
    std::vector<std::string> fitting, others;
    int hopeless = 0;
    bool has_doubtful = false;
    for (const bench::GradeMatch& match : wire.matches) {
        if (!match.in_range) continue;
        const bool is_doubtful = is_from_memory(match);
        const std::string name = match.grade + (is_doubtful ? "*" : "");
        has_doubtful = has_doubtful || (is_doubtful && std::abs(match.expanded_away) <= kHopeless);
        if (match.consistent)
            fitting.push_back(name);
        else if (std::abs(match.expanded_away) <= kHopeless)
            others.push_back(name + ' ' + fixed(std::abs(match.expanded_away), 1));
        else
            ++hopeless;
    }
    std::string text = wrapped("  ", wire.verdict, width, 4);
    if (!fitting.empty())
        text += wrapped("  ", "Wire in this size that fits, nearest first:", width, 4) + list_of(fitting, width);
    if (!others.empty()) text += wrapped("  ", "Further off, so many times the ±:", width, 4) + list_of(others, width);
    if (hopeless > 0)
        text += wrapped("  ",
                        std::to_string(hopeless) + (hopeless == 1 ? " grade lies" : " grades lie") +
                            " more than 5 times the ± off.",
                        width, 4);
    if (has_doubtful) text += wrapped("  ", "* its modulus is from memory or an estimate.", width, 4);
    return text;
}

/// A length lost (or gained, when it is below zero) with its ±, without a sign.
std::string unsigned_with_doubt(const bench::Difference<Length>& difference) {
    auto estimate = difference.estimate;
    if (estimate.value < Length{}) estimate.value = -estimate.value;
    return with_doubt(estimate, "mm");
}

std::string weakening_words(const bench::Weakening& w) {
    std::string words;
    if (w.set) {
        const bool lost = w.set->estimate.value > Length{};
        words += "Against " + cut_name(w.set_against, kNameColumns) + ", its free length is ";
        if (!w.set->significant)
            words += "the same within the uncertainty (" + with_doubt(w.set->estimate, "mm") + " lost). ";
        else
            words += unsigned_with_doubt(*w.set) +
                     (lost ? " less: that much it would have lost by set. " : " more: set has cost it nothing. ");
    }
    if (w.worn_wire) {
        const bool thinner = w.worn_wire->estimate.value > Length{};
        words += "Against " + cut_name(w.worn_against, kNameColumns) + ", its rate ";
        if (w.worn_wire->significant)
            words += (thinner ? "speaks for wire thinner by " : "speaks for wire thicker by ") +
                     unsigned_with_doubt(*w.worn_wire) + ", were all else alike.";
        else
            words += "gives no sign of worn or thinner wire (" + with_doubt(w.worn_wire->estimate, "mm") + ").";
    }
    return words;
}

std::string budget_table(const bench::LoadAtHeight& load) {
    TextTable table({left, right, right});
    double rest = 0.0;
    const int decimals = decimals_for(in_newton(load.force.standard)) + 1;
    for (const bench::Contribution<Force>& c : load.force.budget) {
        if (c.share < kWorthNaming) {
            rest += c.share;
            continue;
        }
        table.add({c.name, shown(c.standard, decimals), fixed(100.0 * c.share, 0) + " %"});
    }
    if (rest > 0.0) table.add({"all else", "", fixed(100.0 * rest, 1) + " %"});
    return table.text(4);
}

/// Up to two or so of what the ± of a load is made of, those that it would pay to better.
std::string budget_words(const bench::LoadAtHeight& load) {
    constexpr double kWorthBettering = 0.25;  // of the variance
    std::vector<std::string> parts;
    for (const bench::Contribution<Force>& c : load.force.budget)
        if (parts.empty() || c.share >= kWorthBettering)
            parts.push_back(c.name + " (" + fixed(100.0 * c.share, 0) + " %)");
    return "The ± of the load at " + named_height(load.asked) + " comes mostly from: " + join(parts, ", ") + '.';
}

/// "Left out of the line: readings 1, 2 (before contact); 15, 16 (coils closing)."
std::string left_out_words(const bench::MeasuredSpring& m) {
    std::vector<std::string> groups;
    std::size_t count = 0;
    for (const bench::Use use : {bench::Use::before_contact, bench::Use::coils_closing}) {
        std::vector<std::string> numbers;
        for (const bench::Point& point : m.points)
            if (point.use == use) numbers.push_back(std::to_string(point.reading + 1));
        count += numbers.size();
        if (!numbers.empty()) groups.push_back(join(numbers, ", ") + " (" + std::string(bench::word(use)) + ')');
    }
    return groups.empty()
               ? ""
               : std::string("Left out of the line: reading") + (count == 1 ? " " : "s ") + join(groups, "; ") + '.';
}

/// What became of a reading, and why.
std::string reason(const bench::Point& point) { return std::string(bench::word(point.use)) + ", " + point.why + '.'; }

}  // namespace

std::string bench_brief_text(const BenchedSpring& spring, int width) {
    const bench::MeasuredSpring& m = spring.measured;
    std::string text = results_table(m);
    const auto say = [&](const std::string& words) { text += words.empty() ? "" : wrapped("  ", words, width, 4); };
    say(left_out_words(m));
    for (const bench::Point& point : m.points)
        if (point.use == bench::Use::outlier)
            say("Reading " + std::to_string(point.reading + 1) + ": " + reason(point));
    if (m.chi_square.verdict != bench::Straightness::as_stated) say(m.chi_square.text);
    for (const std::string& remark : m.remarks) say(remark);
    for (const bench::LoadAtHeight& load : m.loads)
        if (carries(load)) {
            say(budget_words(load));
            break;
        }
    if (!spring.wire.wire) {
        say("What wire it is cannot be told: the readings do not state " + spring.wire.missing + '.');
        return text;
    }
    const std::string& verdict = spring.wire.wire->verdict;
    say("What wire it is: " + lower(verdict.substr(0, 1)) + verdict.substr(1));
    for (const bench::Weakening& w : spring.weakenings) say(weakening_words(w));
    return text;
}

std::string bench_results_text(const BenchedSpring& spring, int width) {
    const bench::MeasuredSpring& m = spring.measured;
    std::string text = results_table(m) + wrapped("  ", doubt_words(m), width, 4);
    text += wrapped("  ", contact_words(m), width, 4);
    text += wrapped("  ", m.chi_square.text, width, 4);
    if (const std::string words = hysteresis_words(m); !words.empty()) text += wrapped("  ", words, width, 4);
    for (const std::string& remark : m.remarks) text += wrapped("  ", remark, width, 4);
    return text;
}

std::string bench_wire_text(const BenchedSpring& spring, int width) {
    std::string text = "\n  What wire it is\n";
    if (!spring.wire.wire)
        return text + wrapped("  ", "Not to be told: the readings do not state " + spring.wire.missing + '.', width, 4);
    const bench::WireInference& wire = *spring.wire.wire;
    std::string words = "Rate and dimensions give a shear modulus G of " +
                        doubt_text(in_gpa(wire.shear_modulus.value), in_gpa(wire.shear_modulus.expanded)) + " GPa";
    if (!wire.shear_modulus.budget.empty())
        words += "; the most of the ± comes from the " + wire.shear_modulus.budget.front().name + " (" +
                 fixed(100.0 * wire.shear_modulus.budget.front().share, 0) + " %)";
    text += wrapped("  ", words + '.', width, 4) + grade_lists(wire, width);
    for (const bench::Weakening& w : spring.weakenings)
        if (const std::string lost = weakening_words(w); !lost.empty()) text += wrapped("  ", lost, width, 4);
    return text;
}

std::string bench_budget_text(const BenchedSpring& spring, int width) {
    std::string text;
    for (const bench::LoadAtHeight& load : spring.measured.loads) {
        if (!carries(load)) continue;
        text += '\n' + wrapped("  ",
                               "Where the ±" +
                                   fixed(in_newton(load.force.expanded), decimals_for(in_newton(load.force.expanded))) +
                                   " N of the load at " + named_height(load.asked) +
                                   " comes from: standard uncertainty, share",
                               width, 4);
        text += budget_table(load);
    }
    return text;
}

std::string bench_points_text(const BenchedSpring& spring, int width) {
    TextTable table({left, right, right, right, right, left});
    table.add({"", "set", "height", "force", "off the line", ""});
    std::string reasons;
    for (const bench::Point& point : spring.measured.points) {
        const std::string number = std::to_string(point.reading + 1);
        const bool counts = point.use == bench::Use::line || point.use == bench::Use::outlier;
        table.add({number, shown(point.stated_height, 3), shown(point.height, 3), shown(point.force, 3),
                   signed_text(in_newton(point.residual), 3) + " N",
                   counts && point.why.empty() ? "" : std::string(bench::word(point.use))});
        if (!point.why.empty()) reasons += wrapped("  " + number + ": ", reason(point), width, 6);
    }
    return "\n" + wrapped("  ", "Readings, corrected for tare, gravity, plunger and load path:", width, 4) +
           table.text(2) + reasons;
}

}  // namespace seatload::cli
