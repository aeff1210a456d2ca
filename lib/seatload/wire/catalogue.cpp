// SPDX-License-Identifier: MIT
#include <seatload/wire/catalogue.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::wire {
namespace {

template <class Thing>
const Thing* find_id(const std::vector<Thing>& things, std::string_view id) {
    const std::string wanted = lower(id);
    const auto found =
        std::find_if(things.begin(), things.end(), [&](const Thing& thing) { return lower(thing.id) == wanted; });
    return found == things.end() ? nullptr : &*found;
}

template <class Thing>
std::vector<std::string> ids_of(const std::vector<Thing>& things) {
    std::vector<std::string> ids;
    for (const Thing& thing : things) ids.push_back(thing.id);
    return ids;
}

template <class Test>
std::vector<std::string> ids_if(const std::vector<Grade>& grades, const Test& test) {
    std::vector<std::string> ids;
    for (const Grade& grade : grades)
        if (test(grade)) ids.push_back(grade.id);
    return ids;
}

/// Letters and digits only, so that "A 228" is found in "ASTM-A228".
std::string bare(std::string_view text) {
    std::string out = lower(text);
    std::erase_if(out, [](char c) { return !((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')); });
    return out;
}

/// True when every word stands somewhere in what a grade is called, as "music wire" does for A228.
bool is_described(const Grade& grade, std::string_view words) {
    const std::string description = lower(grade.id + ' ' + grade.designation + ' ' + grade.family_text);
    for (const std::string_view word : split(words, ' '))
        if (description.find(lower(word)) == std::string::npos) return false;
    return true;
}

/// What is held of a grade: rising, each size once.
std::vector<StockSize> held(const Catalogue& catalogue, const Grade& grade) {
    std::vector<Length> diameters;
    for (const StockHolding& holding : catalogue.holdings)
        if (lower(holding.grade) == lower(grade.id))
            diameters.insert(diameters.end(), holding.diameters.begin(), holding.diameters.end());
    std::sort(diameters.begin(), diameters.end());
    diameters.erase(std::unique(diameters.begin(), diameters.end()), diameters.end());
    std::vector<StockSize> sizes;
    for (const Length& diameter : diameters) sizes.push_back({diameter, units::shown_wire(diameter), Evidence::given});
    return sizes;
}

}  // namespace

const Grade* Catalogue::find(std::string_view id) const { return find_id(grades, id); }

std::vector<std::string> Catalogue::ids() const { return ids_of(grades); }

std::string Catalogue::suggestion(std::string_view unknown_id) const {
    constexpr std::size_t kMost = 6;
    const auto named = [](const std::vector<std::string>& found) {
        return found.empty() || found.size() > kMost ? std::string{} : "did you mean " + join(found, " or ") + "?";
    };
    const std::string wanted = bare(unknown_id);
    if (wanted.empty()) return {};
    if (std::string words =
            named(ids_if(grades, [&](const Grade& g) { return bare(g.id).find(wanted) != std::string::npos; }));
        !words.empty())
        return words;
    const std::vector<std::string> known = ids();
    if (std::string near = did_you_mean(unknown_id, known); !near.empty()) return near;
    return named(ids_if(grades, [&](const Grade& g) { return is_described(g, unknown_id); }));
}

const StockSeries* Catalogue::find_series(std::string_view id) const { return find_id(series, id); }

std::vector<std::string> Catalogue::series_ids() const { return ids_of(series); }

std::vector<StockSize> stock_sizes(const Catalogue& catalogue, const Grade& grade, std::string_view series) {
    std::vector<StockSize> sizes;
    if (!catalogue.holdings.empty()) {
        sizes = held(catalogue, grade);
    } else if (const StockSeries* found = catalogue.find_series(series)) {
        sizes = found->sizes;
    }
    std::erase_if(sizes, [&](const StockSize& size) { return !strength_at(grade, size.diameter); });
    return sizes;
}

}  // namespace seatload::wire
