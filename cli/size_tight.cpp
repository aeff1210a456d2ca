// SPDX-License-Identifier: MIT
#include <cli/size_tight.hpp>

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/size_words.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using Align = TextTable::Align;
using Json = nlohmann::ordered_json;

constexpr int kTightDigits = 5;

std::string tenths_words(double tenths) { return std::isinf(tenths) ? "-" : fixed(tenths / 10.0, 1); }

/// Loads and the free length are stated as bounds, that may be called so.
std::string stated_name(const sizing::Easing& easing) {
    const bool is_bound = easing.id.starts_with("load.") || easing.id.starts_with("space.free_length");
    return std::string(easing.name) + (is_bound ? ' ' + std::string(easing.bound) : "");
}

/// Heights are tried both ways: which one is meant, where no number tells.
std::string way_words(const sizing::Easing& easing) {
    if (easing.id.find("_height.") == std::string_view::npos) return {};
    return easing.bound == "at least" ? ", greater" : ", smaller";
}

/// "bore", with "at least" or "at most" where a requirement states it as such a bound, and a mark when it guards
/// against failure; what is told in too many words goes by its key.
std::string name_of(const sizing::Easing& easing) {
    constexpr std::size_t kMostWords = 36;  // leaves the numbers their columns of 80
    std::string name = stated_name(easing);
    if (name.size() > kMostWords) name = easing.id.substr(0, easing.id.rfind('.'));
    return name + (easing.is_safeguard ? " *" : "");
}

std::string table(const sizing::TightLimits& tight) {
    TextTable t({Align::left, Align::right, Align::right, Align::right, Align::right});
    t.add({"What holds the answer", "now", "eased by 1 %", "fit", "room"});
    if (tight.is_grid_coarser)
        t.add({"as required, as above", "", "", grouped(tight.own_fit), tenths_words(tight.own_room_in_tenths)});
    t.add({tight.is_grid_coarser ? "as required, coarser" : "as required", "", "", grouped(tight.fit),
           tenths_words(tight.room_in_tenths)});
    for (const sizing::Eased& row : tight.holding)
        t.add({name_of(*row.easing), with_unit(row.now, row.easing->unit, kTightDigits),
               with_unit(row.eased, row.easing->unit, kTightDigits), grouped(row.fit),
               tenths_words(row.room_in_tenths)});
    return t.text(0);
}

std::string others(const sizing::TightLimits& tight, int width) {
    if (tight.others.empty()) return {};
    std::vector<std::string> names;
    for (const sizing::Easing* easing : tight.others) names.push_back(stated_name(*easing) + way_words(*easing));
    return wrapped("", "1 % of one of these alone brings nothing: " + join(names, "; ") + ".", width, 2);
}

Json room_number(double tenths) { return std::isinf(tenths) ? Json(nullptr) : Json(tenths / 10.0); }

/// On which grid, when it is not the one that the rest was found on, and what is of the same grid.
std::string grid_words(const sizing::TightLimits& tight) {
    if (!tight.is_grid_coarser) return {};
    return " in coarser steps, of " + units::shown(tight.grid.mean_diameter_step, 3) + " of mean diameter and " +
           units::shown(tight.grid.free_length_step, 3) + " of free length, as the row \"as required, coarser\" is";
}

}  // namespace

std::string tight_text(const sizing::TightLimits& tight, int width) {
    const std::string why =
        tight.fit < sizing::kFew && !tight.is_grid_coarser
            ? "Few springs fit"
            : "No spring that fits has room for all that the maker's tolerances do to it, towards each limit";
    std::string out = '\n' + wrapped("",
                                     why + (tight.holding.empty()
                                                ? "; no limit alone holds the answer."
                                                : ". Each number alone eased by 1 %, and all "
                                                  "searched again" +
                                                      grid_words(tight) + "; room is that of the spring then first:"),
                                     width, 2);
    if (!tight.holding.empty()) out += table(tight);
    const bool has_safeguard = std::any_of(tight.holding.begin(), tight.holding.end(),
                                           [](const sizing::Eased& row) { return row.easing->is_safeguard; });
    if (has_safeguard) out += wrapped("", "* guards against failure or against what cannot be made.", width, 2);
    return out + others(tight, width);
}

Json tight_json(const sizing::TightLimits& tight) {
    Json holding = Json::array(), idle = Json::array();
    for (const sizing::Eased& row : tight.holding)
        holding.push_back({{"quantity", row.easing->id},
                           {"bound", row.easing->bound},
                           {"unit", row.easing->unit},
                           {"now", row.now},
                           {"eased", row.eased},
                           {"fit", row.fit},
                           {"most_tolerance_room", room_number(row.room_in_tenths)},
                           {"guards_against_failure", row.easing->is_safeguard}});
    for (const sizing::Easing* easing : tight.others) idle.push_back(easing->id);
    return {{"mean_diameter_step_mm", in_mm(tight.grid.mean_diameter_step)},
            {"free_length_step_mm", in_mm(tight.grid.free_length_step)},
            {"fit", tight.fit},
            {"most_tolerance_room", room_number(tight.room_in_tenths)},
            {"eased_by_a_hundredth", holding},
            {"bring_nothing", idle}};
}

}  // namespace seatload::cli
