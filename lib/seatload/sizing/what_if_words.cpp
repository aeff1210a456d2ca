// SPDX-License-Identifier: MIT
#include <algorithm>
#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/sizing/what_if_number.hpp>
#include <seatload/units/parse.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;

constexpr int kDigits = 7;               // more than a person states
constexpr double kGuidanceEnds = 200.0;  // no load loss is known above it [°C]

std::string with_unit(double value, const Easing& easing) {
    const std::string digits = significant(value, kDigits);
    return easing.unit.empty() || easing.unit == "of Rm" ? digits : digits + ' ' + std::string(easing.unit);
}

/// Key or name as they are compared: "seated_height", "Seated height" and "seated-height" are one.
std::string normal(std::string_view words) {
    std::string out;
    for (const char c : lower(words)) {
        const char plain = c == '.' || c == '_' || c == '-' || c == '\t' ? ' ' : c;
        if (plain != ' ' || (!out.empty() && out.back() != ' ')) out += plain;
    }
    return out;
}

std::vector<const WhatIfNumber*> meant_by(std::string_view words) {
    const std::string said = normal(words);
    std::vector<const WhatIfNumber*> ends_so;
    for (const WhatIfNumber& number : what_if_numbers()) {
        if (said == normal(number.key) || said == normal(number.name)) return {&number};
        if (!said.empty() && normal(number.key).ends_with(' ' + said)) ends_so.push_back(&number);
    }
    return ends_so;
}

bool has_words(std::string_view text, std::string_view words) {
    return (' ' + normal(text) + ' ').find(' ' + normal(words) + ' ') != std::string::npos;
}

/// Those with the words somewhere within the key or the name, called by the one that has them.
std::vector<std::string> numbers_with(std::string_view words) {
    std::vector<std::string> found;
    for (const WhatIfNumber& number : what_if_numbers()) {
        if (has_words(number.key, words))
            found.push_back(number.key);
        else if (has_words(number.name, words))
            found.push_back(number.name);
    }
    return found;
}

/// What may have been meant: the whole key, its last part, or the name.
std::string meant(std::string_view words) {
    std::vector<std::string> candidates;
    for (const WhatIfNumber& number : what_if_numbers()) {
        candidates.push_back(number.key);
        if (const std::string last = number.key.substr(number.key.rfind('.') + 1); meant_by(last).size() == 1)
            candidates.push_back(last);
        candidates.push_back(number.name);
    }
    return did_you_mean(words, candidates);
}

Diagnostic unknown(std::string_view words, const std::string& said) {
    const std::vector<std::string> several = numbers_with(words);
    if (several.size() > 1)
        return error("ambiguous-name"_id, said + "this could be one of several numbers",
                     "write one of " + join(several, ", "));
    std::vector<std::string> keys;
    for (const WhatIfNumber& number : what_if_numbers()) keys.push_back(number.key);
    const std::string near = several.empty() ? meant(words) : "did you mean \"" + several.front() + "\"?";
    return error("unknown-number"_id, said + "no number of a requirement is called so",
                 near.empty() ? "numbers are " + join(keys, ", ") : near);
}

/// Why a requirement has no use for the number; empty when it has.
std::string useless(const WhatIfNumber& number, const Requirement& r) {
    const std::string& key = number.key;
    const auto is_one_of = [&](std::initializer_list<std::string_view> keys) {
        return std::find(keys.begin(), keys.end(), key) != keys.end();
    };
    if (is_one_of({"space.bore", "limits.bore_clearance"}) && !r.space.bore) return "the requirement states no bore";
    if (is_one_of({"space.rod", "limits.rod_clearance"}) && !r.space.rod) return "the requirement states no rod";
    if (key.starts_with("space.free_length.") && !r.space.free_length)
        return "the requirement states no free_length in [space]";
    if (key == "space.sideways_play" && r.space.seats != demand::Seats::slides)
        return "it counts on a seat that slides, and this one does not";
    if (key == "limits.gap_share" && r.limits.gap_rule != demand::GapRule::share_of_travel)
        return "it counts with gap_rule = \"share of travel\", and the requirement's rule is another";
    return {};
}

/// What contradicts itself in a requirement in such a way that its file would be refused and nothing can be searched.
std::optional<Diagnostic> contradiction(const Requirement& r) {
    const demand::Space& s = r.space;
    const auto contradicts = [](DiagnosticId id, std::string words) {
        return error(id, std::move(words), "give a range within which the requirement makes sense");
    };
    if (s.seated_height <= s.full_travel_height)
        return contradicts("heights-exchanged"_id, "the seated height is not above the full-travel height");
    if (s.bore && s.rod && s.rod->largest >= s.bore->smallest)
        return contradicts("rod-too-thick"_id, "the rod does not pass through the bore");
    if (s.free_length && s.free_length->smallest > s.free_length->largest)
        return contradicts("upside-down"_id, "the least free length is above the greatest");
    if (s.free_length && s.free_length->largest <= s.seated_height)
        return contradicts("no-load-at-seat"_id,
                           "a free length not above the seated height leaves no load at the seat");
    if (r.surroundings.temperature.degrees > kGuidanceEnds && !r.limits.load_loss)
        return error("no-guidance"_id, "there is no guidance on the load a spring loses above 200 °C",
                     "state limits.load_loss in the requirement, from the wire maker or a test");
    return std::nullopt;
}

/// A number without a unit, or a share in per cent where the number is one.
units::Parsed<double> parse_plain(const WhatIfNumber& number, std::string_view text) {
    double value = 0.0;
    const auto [end, wrong] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (wrong == std::errc{} && end == text.data() + text.size() && std::isfinite(value)) return {value, {}};
    if (number.key.ends_with("_share") || number.key == "limits.load_loss")
        return units::parse_in(units::dimension_of<Share>(), text);
    return {std::nullopt,
            {"not-a-number"_id, '"' + std::string(text) + "\" is not a plain number", "write for example 1.5", 0}};
}

units::Parsed<double> parse(const WhatIfNumber& number, std::string_view text) {
    constexpr double kGramsInTonne = 1e6;
    const std::string_view unit = number.easing->unit;
    if (unit == "N") return units::parse_in(units::dimension_of<Force>(), text);
    if (unit == "mm") return units::parse_in(units::dimension_of<Length>(), text);
    if (unit == "°C") return units::parse_in(units::dimension_of<Celsius>(), text);
    if (unit != "g") return parse_plain(number, text);
    auto mass = units::parse_in(units::dimension_of<Mass>(), text);
    if (mass.value) *mass.value *= kGramsInTonne;
    return mass;
}

/// The end of a range, at which the requirement must still make sense.
Result<double> read_end(std::string_view text, const WhatIfNumber& number, const Requirement& requirement) {
    const auto parsed = parse(number, text);
    if (!parsed.value) return error(parsed.problem.id, parsed.problem.message, parsed.problem.hint);
    const double value = *parsed.value;
    const std::string shown = with_unit(value, *number.easing);
    if (number.above_lowest ? value <= number.lowest : value < number.lowest)
        return error("out-of-span"_id, shown + " is too small: " + number.key + " is " +
                                           (number.above_lowest ? "more than " : "at least ") +
                                           with_unit(number.lowest, *number.easing));
    if (value > number.highest)
        return error("out-of-span"_id, shown + " is too large: " + number.key + " is at most " +
                                           with_unit(number.highest, *number.easing));
    Requirement changed = requirement;
    number.easing->set(changed, value);
    if (auto wrong = contradiction(changed)) {
        wrong->message = "at " + shown + ", " + wrong->message;
        return *wrong;
    }
    return value;
}

Result<WhatIf> read_range(std::string_view text, const WhatIfNumber& number, const Requirement& requirement) {
    const auto dots = text.find("..");
    if (dots == std::string_view::npos)
        return error("bad-range"_id, "a range is wanted, from one value to another",
                     "write it as \"" + number.key + "=FROM..TO\"");
    const auto from = read_end(trim(text.substr(0, dots)), number, requirement);
    if (!from) return from.error();
    const auto to = read_end(trim(text.substr(dots + 2)), number, requirement);
    if (!to) return to.error();
    if (*from >= *to)
        return error(
            "upside-down"_id,
            "the range does not rise: " + with_unit(*from, *number.easing) + " to " + with_unit(*to, *number.easing),
            "state the smaller value first");
    return WhatIf{&number, *from, *to};
}

Diagnostics told_of(Diagnostics diagnostics, const std::string& said) {
    for (Diagnostic& each : diagnostics) each.message = said + each.message;
    return diagnostics;
}

}  // namespace

Result<WhatIf> read_what_if(std::string_view text, const Requirement& requirement) {
    const std::string said = "--what-if \"" + std::string(text) + "\": ";
    const auto equals = text.find('=');
    if (equals == std::string_view::npos)
        return error("bad-range"_id, said + "a number and a range are wanted", "write it as \"bore=8.5 mm..9.5 mm\"");
    const std::string_view words = trim(text.substr(0, equals));
    const auto numbers = meant_by(words);
    if (numbers.size() != 1) return unknown(words, said);
    if (const std::string why = useless(*numbers[0], requirement); !why.empty())
        return error("no-effect"_id, said + why, "state it in the requirement first, or vary another number");
    auto range = read_range(trim(text.substr(equals + 1)), *numbers[0], requirement);
    if (!range) return told_of(range.error(), said);
    return range;
}

}  // namespace seatload::sizing
