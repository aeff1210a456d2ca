// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/facts.hpp>

// The phrases that the sheet and the enquiry share.

namespace seatload::sheet {

/// "F" with the index "1".
std::string symbol(std::string_view letter, std::string_view index);

/// "EN 10270-1:2011+A1:2017, SH".
std::string wire_name(const Facts& facts);

/// What the built-in data say of a wire, in the paper's language as far as it has the words; as written of a wire of
/// the user's own.
std::string wire_words(const Facts& facts, std::string words);

/// "0.80 ± 0.01"; a tolerance that is not firm stands in brackets.
Amount wire_diameter(const Facts& facts);

/// "8.20 ± 0.25": the coil diameter that rules, De in a bore and Di over a rod.
Amount coil_diameter(const Facts& facts, int least_decimals = 0);
std::string coil_symbol(const Facts& facts);
/// "outside De" or "inside Di".
std::string coil_name(const Facts& facts);

/// What the load tolerances correspond to: "EN 15800 grade 2"; finer than grade 1, that they are to be agreed.
std::string load_grades(const Facts& facts);

/// "under 10 000 cycles" or "2 000 000 cycles at 12 Hz".
std::string duty(const Facts& facts);

/// How the spring's ends are held, in words.
std::string seats(const Facts& facts);

/// The ends so that nothing is left open: "closed, not ground".
std::string ends(const Facts& facts);

/// "right" or "left".
std::string hand(const Facts& facts);

/// How nearly half a turn apart the end tips are ordered: "180° ± 15°"; "(any angle)" when that is no matter.
std::string tips_apart(const Facts& facts);
/// The same as the sheet requires it, with when it holds and, closer than usual, how far that can be trusted. Only for
/// springs whose tips are ordered.
std::string tips_apart_words(const Facts& facts);
/// So many turns in degrees: "15".
std::string tip_degrees(const Facts& facts, double turns);

/// The spec's finish, or the usual one in brackets.
std::string finish(const Facts& facts);

/// The part number with the alternative's letter, so that no two sheets bear the same number: "OM14-LAT-AHD/A".
std::string drawing_number(const record::Spec& spec);

/// "a, b and c".
std::string listed(const std::vector<std::string>& parts, const Wording& words);

/// The kind of certificate asked of the wire, by EN 10204: "3.1" unless the spec says otherwise. What we ask, not what
/// a standard asks.
std::string certificate_type(const record::Spec& spec);

/// How the lot is measured, in order.
std::string test_sequence(const Facts& facts);

/// Lot size up to which every piece is load-tested (common practice, no source).
inline constexpr int kLargestFullyTested = 150;
/// True when every piece of the largest batch can be load-tested.
bool tests_every_piece(const record::Spec& spec);
/// How many pieces are measured for loads, coil diameter, the bound of the free length and ends, and how end tips are
/// when they are ordered; a diameter that the maker may alter has no tolerance to be held against, only its bound.
std::string inspected_pieces(const Facts& facts);

/// "20, 50, 100".
std::string quantities(const record::Spec& spec);

/// The spec's title, and the line under it ("Alternative A").
std::string title(const record::Spec& spec, const Wording& words);
std::string supplementary_title(const record::Spec& spec, const Wording& words);

}  // namespace seatload::sheet
