// SPDX-License-Identifier: MIT
#include <cli/wire_view.hpp>

namespace seatload::cli {

std::string lookup_words(const wire::Grade& grade) {
    const auto* table = std::get_if<wire::StrengthTable>(&grade.strength);
    if (table == nullptr)
        return std::holds_alternative<wire::StrengthLaw>(grade.strength) ? "law A/d^m" : "one strength";
    switch (table->lookup) {
        case wire::StrengthLookup::next_larger:
            return "row of the next larger size";
        case wire::StrengthLookup::step:
            return "row that reaches up to the size";
        case wire::StrengthLookup::interpolate:
            return "straight line between rows";
    }
    return {};
}

std::vector<const wire::Source*> sources_of(const wire::Catalogue& catalogue, const wire::Grade& grade) {
    std::vector<const wire::Source*> found;
    for (const wire::Source& source : catalogue.sources) {
        const std::string marked = "[" + source.key + "]";
        const auto names_it = [&](const std::string& text) { return text.find(marked) != std::string::npos; };
        bool is_named = names_it(grade.note) || names_it(grade.material_number);
        for (const wire::Provenance& p : grade.provenance) is_named = is_named || names_it(p.source);
        if (is_named) found.push_back(&source);
    }
    return found;
}

}  // namespace seatload::cli
