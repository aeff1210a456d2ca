// SPDX-License-Identifier: MIT
#include <seatload/io/space_check.hpp>

#include <seatload/units/format.hpp>

namespace seatload::io {
namespace {

bool is_read(Length length) { return length > 0.0 * mm; }

void check_heights(Document& document, const demand::Space& space) {
    if (!is_read(space.seated_height) || !is_read(space.full_travel_height)) return;
    if (space.seated_height > space.full_travel_height) return;
    document.contradiction(document.at("space.seated_height"), "heights-exchanged"_id,
                           "the seated height is not above the full-travel height",
                           "a compression spring gets shorter on its travel; are the two exchanged?",
                           document.at("space.full_travel_height"), "the full-travel height");
}

void check_rod(Document& document, const demand::Space& space) {
    if (!space.bore || !space.rod || space.rod->largest < space.bore->smallest) return;
    document.contradiction(document.at("space.rod"), "rod-too-thick"_id, "the rod does not pass through the bore",
                           "the spring needs room between the two", document.at("space.bore"), "the bore");
}

}  // namespace

std::optional<Length> travel_of(const demand::Space& space) {
    if (!is_read(space.seated_height) || !is_read(space.full_travel_height)) return std::nullopt;
    if (space.seated_height <= space.full_travel_height) return std::nullopt;
    return space.seated_height - space.full_travel_height;
}

void check_free_length(Document& document, const demand::Space& space, std::string_view path,
                       const std::optional<demand::LengthRange>& range) {
    if (!is_read(space.seated_height) || !range || range->largest > space.seated_height) return;
    document.contradiction(document.at(path), "no-load-at-seat"_id,
                           "a free length not above the seated height leaves no load at the seat",
                           "the free spring must be longer than " + units::exact(space.seated_height),
                           document.at("space.seated_height"), "the seated height");
}

void check_space(Document& document, const demand::Space& space) {
    check_heights(document, space);
    check_rod(document, space);
    check_free_length(document, space, "space.free_length", space.free_length);
}

}  // namespace seatload::io
