// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/size_shortfall.hpp>
#include <cli/size_words.hpp>

namespace seatload::cli {
namespace {

using demand::Requirement;

constexpr int kShortfallDigits = 7;  // more than any rounded number has

/// "seated load at least 4.4 N instead of 4.8 N".
std::string words_of(const sizing::EasedNumber& n) {
    const sizing::Easing& e = *n.easing;
    return std::string(e.name) + ' ' + std::string(e.bound) + ' ' + with_unit(n.needed, e.unit, kShortfallDigits) +
           " instead of " + with_unit(n.now, e.unit, kShortfallDigits);
}

constexpr char kKept = '\x1f';  // stands for a blank at which no line is broken, until the lines are made

std::string sized(std::string_view symbol, const std::string& size) { return std::string(symbol) + kKept + size; }

/// "EN10270-2-FDSiCr, d 0.70 mm, De 8.55 mm, nt 8.5, L0 21.2 mm".
std::string words_of(const sizing::Proof& proof) {
    const spring::Spring& s = proof.spring;
    return proof.grade + ", " + sized("d", units::shown_wire(s.wire_diameter)) + ", " +
           sized("De", units::shown(s.outside_diameter(), 2)) + ", " + sized("nt", significant(s.total_coils, 5)) +
           ", " + sized("L0", significant(in_mm(s.free_length), kShortfallDigits)) + " mm";
}

std::string words_of(const sizing::Relief& relief) {
    std::vector<std::string> numbers;
    for (const sizing::EasedNumber& number : relief.numbers) numbers.push_back(words_of(number));
    return join(numbers, ", and ");
}

std::string item(const std::string& words, const sizing::Proof& proof, int width) {
    std::string lines = wrapped("  - ", capitalized(words) + ": " + words_of(proof) + ".", width, 4);
    std::replace(lines.begin(), lines.end(), kKept, ' ');
    return lines;
}

std::string contradictions(const Requirement& requirement, const sizing::Shortfall& shortfall, int width) {
    if (shortfall.contradictions.empty()) return {};
    const auto words = [&](sizing::RuleSet set) {
        std::vector<std::string> limits;
        for (const std::size_t rule : sizing::indices(set))
            limits.push_back(limit_words(check::rules()[rule], requirement));
        return join(limits, "; ");
    };
    const auto& sets = shortfall.contradictions;
    if (sets.size() == 1 && sizing::size_of(sets[0]) == 1)
        return '\n' +
               wrapped("", "No combination keeps this limit, whatever the others: " + words(sets[0]) + ".", width, 2);
    std::string out = '\n' + wrapped("",
                                     sets.size() == 1 ? "These limits contradict each other; with any one of them gone "
                                                        "the others can be kept:"
                                                      : "The limits of each of these lines contradict each other; with "
                                                        "any one of a line gone its others can be kept:",
                                     width, 2);
    for (const sizing::RuleSet set : sets) out += wrapped("  - ", capitalized(words(set)) + ".", width, 4);
    return out;
}

/// Lists of changes under their heads; the first head says what the rest leave out.
class Lists {
  public:
    explicit Lists(int width) : width_(width) {}

    void add(const std::string& which, const std::string& items) {
        if (items.empty()) return;
        out_ += '\n' +
                wrapped("",
                        out_.empty() ? "Each of these" + which + " would let in a spring, found by searching again:"
                                     : "So would each of these" + which + ':',
                        width_, 2) +
                items;
    }

    const std::string& text() const { return out_; }

  private:
    int width_;
    std::string out_;
};

std::string reliefs(const sizing::Shortfall& shortfall, int width) {
    std::string numbers, safeguards, altered;
    for (const sizing::Relief& relief : shortfall.reliefs)
        (relief.numbers[0].easing->is_safeguard ? safeguards : numbers) += item(words_of(relief), relief.proof, width);
    for (const sizing::AlteredRelief& relief : shortfall.altered) altered += item(relief.words, relief.proof, width);
    Lists lists(width);
    lists.add(" numbers alone, the smallest change first,", numbers);
    lists.add(" with the numbers as they are", altered);
    lists.add(" limits, which guard against failure (who eases one must be able to answer for it)", safeguards);
    return lists.text();
}

std::string joint(const sizing::Shortfall& shortfall, int width) {
    if (shortfall.joint.empty()) return {};
    std::string out =
        '\n' + wrapped("",
                       shortfall.reliefs.empty() ? "No number alone will do. Together these would let in a "
                                                   "spring; the smallest changes first:"
                                                 : "So would these together; the smallest changes first:",
                       width, 2);
    for (const sizing::Relief& relief : shortfall.joint) out += item(words_of(relief), relief.proof, width);
    const bool has_safeguard =
        std::any_of(shortfall.joint.begin(), shortfall.joint.end(), [](const sizing::Relief& relief) {
            return std::any_of(relief.numbers.begin(), relief.numbers.end(),
                               [](const sizing::EasedNumber& n) { return n.easing->is_safeguard; });
        });
    return has_safeguard
               ? out + wrapped("  ", "Limits of stress, stability or manufacture among them guard against failure.",
                               width, 2)
               : out;
}

}  // namespace

std::string capitalized(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string limit_words(const check::Rule& rule, const Requirement& r) {
    const std::string_view id = rule.id;
    if (id == "seated_load_least")
        return "seated load at least " + with_unit(in_newton(*r.seated_load.at_least), "N", kShortfallDigits);
    if (id == "seated_load_most")
        return "seated load at most " + with_unit(in_newton(*r.seated_load.at_most), "N", kShortfallDigits);
    if (id == "full_travel_load_least")
        return "full-travel load at least " + with_unit(in_newton(*r.full_travel_load.at_least), "N", kShortfallDigits);
    if (id == "full_travel_load_most")
        return "full-travel load at most " + with_unit(in_newton(*r.full_travel_load.at_most), "N", kShortfallDigits);
    if (id == "free_length_shortest")
        return "free length at least " + with_unit(in_mm(r.space.free_length->smallest), "mm", kShortfallDigits);
    if (id == "free_length_longest")
        return "free length at most " + with_unit(in_mm(r.space.free_length->largest), "mm", kShortfallDigits);
    if (id == "bore_clearance") return "bore of " + with_unit(in_mm(r.space.bore->smallest), "mm", kShortfallDigits);
    if (id == "rod_clearance") return "rod of " + with_unit(in_mm(r.space.rod->largest), "mm", kShortfallDigits);
    return std::string(rule.name);
}

std::string shortfall_text(const Requirement& requirement, const sizing::Shortfall& shortfall, int width) {
    if (!shortfall.has_combinations && shortfall.reliefs.empty() && shortfall.altered.empty()) return {};
    return contradictions(requirement, shortfall, width) + reliefs(shortfall, width) + joint(shortfall, width);
}

}  // namespace seatload::cli
