// SPDX-License-Identifier: MIT
#include <seatload/io/requirement_check.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/space_check.hpp>
#include <seatload/io/wire_choice_check.hpp>
#include <seatload/units/format.hpp>

namespace seatload::io {
namespace {

constexpr Celsius kGuidanceEnds{
    200.0};  // the load-loss guidance in lib/data has no rows that hold above it for all wire

void check_loads(Document& document, const demand::Requirement& requirement) {
    const auto& least = requirement.seated_load.at_least;
    const auto& most = requirement.full_travel_load.at_most;
    if (!least || !most || *most > *least) return;
    document.contradiction(document.at("load.full_travel"), "loads-exchanged"_id,
                           "the load allowed at full travel is not above the load needed at the seat",
                           "a spring pushes harder the further it is compressed", document.at("load.seated"),
                           "at least " + units::exact(*least) + " needed here");
}

void check_duty(Document& document, const demand::Duty& duty) {
    if (duty.frequency && !document.find("duty.cycles"))
        document.error(document.at("duty.frequency"), "one-of-a-pair"_id, "duty.frequency stands without duty.cycles",
                       "a motion that repeats has a number of cycles: cycles = 1e6");
}

void check_temperature(Document& document, const demand::Requirement& requirement) {
    if (requirement.surroundings.temperature <= kGuidanceEnds || document.find("limits.load_loss")) return;
    document.error(document.at("surroundings.temperature"), "no-guidance"_id,
                   "above " + units::shown(kGuidanceEnds) + " there is no guidance on the load a spring loses",
                   "state what the wire's maker expects, in [limits]: load_loss = \"10 %\"");
}

void check_order_of(Document& document, std::string_view lower_key, double lowest, std::string_view upper_key,
                    double highest) {
    if (lowest <= highest) return;
    const bool lower_given = document.find("limits." + std::string(lower_key)) != nullptr;
    const std::string_view given = lower_given ? lower_key : upper_key;
    const std::string_view other = lower_given ? upper_key : lower_key;
    const std::string other_text = std::string(other) + " is " + shortest(lower_given ? highest : lowest);
    const std::string message = "limits." + std::string(lower_key) + " is above limits." + std::string(upper_key);
    if (document.find("limits." + std::string(other)) == nullptr)
        document.error(document.at("limits." + std::string(given)), "limits-crossed"_id, message,
                       other_text + " by the school's default; set both");
    else
        document.contradiction(document.at("limits." + std::string(given)), "limits-crossed"_id, message, "",
                               document.at("limits." + std::string(other)), other_text);
}

void check_limits(Document& document, const demand::Limits& limits) {
    check_order_of(document, "smallest_index", limits.smallest_index, "largest_index", limits.largest_index);
    check_order_of(document, "fewest_active_coils", limits.fewest_active_coils, "most_active_coils",
                   limits.most_active_coils);
}

void check_ends(Document& document, const demand::Requirement& requirement) {
    const Node* ends = document.find("coil.ends");
    const List* list = ends != nullptr ? std::get_if<List>(&ends->value) : nullptr;
    if (list != nullptr && list->empty())
        document.error(ends->at, "empty"_id, "coil.ends is empty", "name at least one: ends = [\"closed and ground\"]");
    for (std::size_t i = 1; list != nullptr && i < std::min(list->size(), requirement.ends.size()); ++i)
        if (std::count(requirement.ends.begin(), requirement.ends.begin() + static_cast<std::ptrdiff_t>(i),
                       requirement.ends[i]))
            document.error((*list)[i].at, "named-twice"_id, "coil.ends names this twice", "leave one out");
}

}  // namespace

void check_requirement(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue) {
    check_space(document, requirement.space);
    check_free_length(document, requirement.space, "grid.free_length", requirement.grid.free_length);
    if (!requirement.plunger) check_loads(document, requirement);
    check_duty(document, requirement.duty);
    check_temperature(document, requirement);
    check_limits(document, requirement.limits);
    check_ends(document, requirement);
    check_wire_choice(document, requirement, catalogue);
}

}  // namespace seatload::io
