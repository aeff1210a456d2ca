// SPDX-License-Identifier: MIT
#include <cli/lean_text.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

std::string leaning(double lean_mm) {
    return std::isfinite(lean_mm) ? significant(lean_mm, 2) + " mm" : std::string("without bound");
}

/// What the spring leans with its coils just as drawn; null where lean is not looked at.
const check::Verdict* lean_as_drawn(const check::Evaluation& e) {
    const auto found = std::find_if(e.verdicts.begin(), e.verdicts.end(),
                                    [](const check::Verdict& verdict) { return verdict.rule->id == "lean"; });
    return found == e.verdicts.end() ? nullptr : &*found;
}

/// "pressed to full travel it leans sideways by up to 0.41 mm, where there is room for 0.42 mm."
std::string lean_front(double lean_mm, double room_mm, bool has_room) {
    const std::string words = has_room ? "pressed to full travel it leans sideways by up to "
                                       : "it may rub: pressed to full travel it leans sideways by up to ";
    return words + leaning(lean_mm) + ", where there is room for " + significant(room_mm, 2) + " mm.";
}

std::string lean_degrees(double turns) { return significant(360.0 * turns, 3) + "°"; }

/// Why the tips are ordered as they are, and what they do.
std::string lean_tips_words(const check::Tips& tips, const check::Verdict& drawn) {
    std::string words =
        " That is with the wire's two ends up to " + lean_degrees(tips.ordered) + " off standing opposite";
    words += tips.is_closer() ? " (" + check::tips_apart(tips) + "; usual is ±" + lean_degrees(tips.usual) + ")"
                              : " (" + check::tips_apart(tips) + ", as usual)";
    words += "; with the coils just as drawn it leans " + leaning(drawn.measure.value) + ".";
    if (!tips.is_enough()) return words + " Try the first pieces in the mechanism, or take a spring with more room.";
    return words;
}

/// The lean of a spring that is there already: how its ends stand can be looked at, and is no matter of an order.
std::string found_lean_words(const check::Evaluation& e, const check::Verdict& drawn) {
    if (!e.tips)
        return lean_front(drawn.measure.value, drawn.measure.limit, drawn.passed) +
               " That is with its coils just as counted; a little more or less of a coil may make it lean more.";
    const check::Tips& tips = *e.tips;
    std::string words = lean_front(tips.most_lean_mm, tips.room_mm, tips.is_enough()) +
                        " That is with the wire's two ends up to " + lean_degrees(tips.ordered) +
                        " off standing opposite; with its coils just as counted it leans " +
                        leaning(drawn.measure.value) + '.';
    if (tips.is_enough()) return words;
    if (tips.leaves_room > 0.0)
        words += " Look how they stand: up to " + lean_degrees(tips.leaves_room) + " off there is room for its lean.";
    return words + " Try it in the mechanism.";
}

/// How long it may be, as a longer one leans more.
std::string longest_words(const check::LeanBounds& bounds, double L0) {
    if (!std::isfinite(bounds.longest_mm)) return {};
    const auto shown = [&](double longest) { return significant(check::printed_bound(longest, L0), 4) + " mm"; };
    std::string words = " A longer spring leans more: L0 may be at most " + shown(bounds.longest_mm);
    if (bounds.closer)
        words += ", or " + shown(bounds.closer->longest_mm) + " where the ends are within ±" +
                 lean_degrees(bounds.closer->tips);
    return words + '.';
}

}  // namespace

std::string lean_text(const check::Evaluation& e, bool is_found, int width) {
    const check::Verdict* drawn = lean_as_drawn(e);
    if (drawn == nullptr) return {};
    std::string words;
    if (is_found) {
        words = found_lean_words(e, *drawn);
    } else if (e.tips) {
        words =
            lean_front(e.tips->most_lean_mm, e.tips->room_mm, e.tips->is_enough()) + lean_tips_words(*e.tips, *drawn);
    } else {
        words = lean_front(drawn->measure.value, drawn->measure.limit, drawn->passed) +
                " That is with the coils just as drawn: the wire's two ends do not stand opposite, and a piece whose "
                "coils come out a little otherwise may lean more.";
    }
    if (e.lean_bounds && !is_found) words += longest_words(*e.lean_bounds, in_mm(e.spring.free_length));
    return wrapped("  Lean: ", words, width, 4);
}

}  // namespace seatload::cli
