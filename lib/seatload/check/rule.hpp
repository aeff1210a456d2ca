// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <span>
#include <string_view>

#include <seatload/check/numbers.hpp>

namespace seatload::check {

/// Bounds are inclusive; a value may lie outside by this share of the limit, so that rounding decides nothing.
inline constexpr double kInclusive = 1e-9;

/// A number a rule looks at, and the bound it is held to.
struct Measure {
    double value = 0.0;
    double limit = 0.0;
};

/// The unit of what is either so (1) or not (0).
inline constexpr std::string_view kYesOrNo = "yes or no";

enum class Sense { at_least, at_most };

/// How a rule's answer follows the free length when all else stays.
enum class Along {
    constant,  ///< the free length does not matter
    from,      ///< passes from some free length on
    up_to,     ///< passes up to some free length
};

/// Whether a rule's answer, or where it cuts the free lengths, depends on the number of coils (when not, it is found
/// once for a diameter).
enum class Coils { matter, do_not_matter };

/// How a rule's answer follows a number that grows while all else stays. Claims hold for an index over 1 and for load
/// bounds not below zero.
enum class Trend {
    level,    ///< it does not move, to the last bit
    helps,    ///< what passes goes on passing
    hurts,    ///< what fails goes on failing
    unclear,  ///< nothing is claimed: it may turn; a rule can bound its answers over a range, see Rule::kindest
};

/// One limit: what is measured, against what, and why.
struct Rule {
    std::string_view id;       ///< key in JSON and tests
    std::string_view name;     ///< the limit in a few words, for lists
    std::string_view subject;  ///< what the value is, for people
    std::string_view unit;
    Sense sense;
    Along along;
    Coils coils;
    Trend with_diameter;  ///< a larger mean diameter, the wire the same
    Trend with_coils;     ///< more coils
    std::string_view source;
    bool (*applies)(const DemandNumbers&, spring::Ends);
    Measure (*measure)(const Coil&, double free_length_mm);
    /// For a rule whose trend is unclear: a measure that passes wherever that of any coil does whose mean diameter and
    /// coils lie between those of two (the first has the less of both), and one that fails wherever any of theirs does.
    /// Both follow the free length as the rule does.
    Measure (*kindest)(const Coil& low, const Coil& high, double free_length_mm) = nullptr;
    Measure (*harshest)(const Coil& low, const Coil& high, double free_length_mm) = nullptr;
};

/// Every rule, in the order they are told; this table is the one list of them.
std::span<const Rule> rules();

/// The rule of an id; one that there is not is a fault of ours.
const Rule& rule_named(std::string_view id);
/// That of the sideways lean, which is asked for very many springs.
const Rule& lean_rule();

/// Whether a measure keeps its bound.
inline bool passes(Sense sense, const Measure& m) {
    const double slack = kInclusive * std::abs(m.limit);
    return sense == Sense::at_least ? m.value >= m.limit - slack : m.value <= m.limit + slack;
}

inline bool passes(const Rule& rule, const Coil& coil, double free_length_mm) {
    return passes(rule.sense, rule.measure(coil, free_length_mm));
}

/// Whether a measure keeps its bound moved by a share of it and a little more, outwards (or inwards, when negative):
/// far more than rounding can move one coil's value past another's, far less than anyone can measure.
inline bool passes_moved(Sense sense, const Measure& m, double share) {
    const double slack = kInclusive * std::abs(m.limit) + share * (std::abs(m.limit) + 1e-3);
    return sense == Sense::at_least ? m.value >= m.limit - slack : m.value <= m.limit + slack;
}

/// How far inside its bound a measure lies, as a share of the bound (negative outside; the plain distance for a bound
/// of 0).
inline double margin(Sense sense, const Measure& m) {
    const double distance = sense == Sense::at_least ? m.value - m.limit : m.limit - m.value;
    return m.limit == 0.0 ? distance : distance / std::abs(m.limit);
}

}  // namespace seatload::check
