// SPDX-License-Identifier: MIT
#include <seatload/sheet/same_wire.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// "alternative B of our enquiry OM14-LAT-AST".
std::string named(const record::Spec& other, const Wording& words) {
    const std::string enquiry = other.identity.number.empty() ? title(other, words) : other.identity.number;
    return words.say("enquiry.other_alternative", {{"letter", other.alternative}, {"enquiry", enquiry}});
}

/// "20 + 20 pieces: 36.1 g".
std::string amount_words(const WireOfLots& amount, const Facts& facts) {
    std::vector<std::string> lots;
    for (const int pieces : amount.lots) lots.push_back(std::to_string(pieces));
    const std::string mass = with_unit(facts.figures().significant(Unit::gram, in_gram(amount.mass), 3));
    return facts.say("enquiry.wire_of_lots", {{"lots", join(lots, " + ")}, {"mass", mass}});
}

}  // namespace

std::string same_wire_words(std::span<const Facts> alternatives, const SameWire& same) {
    const auto mine = std::find_if(alternatives.begin(), alternatives.end(),
                                   [&](const Facts& facts) { return facts.spec.alternative == same.letter; });
    if (mine == alternatives.end() || same.others.empty()) return {};
    const Wording& words = mine->paper.words;
    std::vector<std::string> others;
    for (const record::Spec& other : same.others) others.push_back(named(other, words));
    std::string said = words.say("enquiry.same_wire",
                                 {{"letter", same.letter},
                                  {"others", listed(others, words)},
                                  {"wire", wire_name(*mine)},
                                  {"diameter", with_unit(mine->figures().wire(mine->spec.spring.wire_diameter))}});
    if (same.is_same_spring) said += " " + words.say("enquiry.same_spring");
    if (same.amounts.empty()) return said;
    std::vector<std::string> amounts;
    for (const WireOfLots& amount : same.amounts) amounts.push_back(amount_words(amount, *mine));
    return said + " " + words.say("enquiry.wire_together", {{"amounts", join(amounts, "; ")}});
}

}  // namespace seatload::sheet
