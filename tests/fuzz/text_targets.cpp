// SPDX-License-Identifier: MIT
// What a user writes inside quotes or on the command line: quantities, ranges, the question of a what-if.
#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/sizing/what_if_number.hpp>
#include <seatload/units/band.hpp>
#include <seatload/units/parse.hpp>

#include "fuzz/invariants.hpp"
#include "fuzz/targets.hpp"
#include "support/builtin.hpp"

namespace seatload::fuzz {
namespace {

/// A refusal has words, and points into the text or right behind it.
template <class T>
void require_reason(const units::Parsed<T>& parsed, std::string_view text) {
    if (parsed.value) return;
    require(!parsed.problem.message.empty(), "a quantity refused without words");
    require(parsed.problem.offset <= length_in_code_points(text), "a refusal points behind the text");
}

/// True when users may write the base unit, which they may not of masses (tonnes) and shares (none).
bool can_be_written(const units::Dimension& dimension) {
    const auto is_base = [&](const units::UnitSize& unit) { return unit.name == dimension.base_unit; };
    return std::any_of(dimension.units.begin(), dimension.units.end(), is_base);
}

/// A number in the base unit of its dimension is read back as the same number.
void require_same_again(const units::Dimension& dimension, double number) {
    require(std::isfinite(number), "a quantity that is not finite");
    if (!can_be_written(dimension)) return;
    const std::string written = shortest(number) + ' ' + std::string(dimension.base_unit);
    const auto again = units::parse_in(dimension, written);
    require(again.value.has_value(), "what was written is not read: " + written);
    require(*again.value == number, "read again it is another number: " + written);
}

demand::Requirement latch() {
    const std::string text =
        "[space]\nbore = \"9 mm\"\nseated_height = \"15 mm\"\nfull_travel_height = \"9 mm\"\n[load]\n"
        "seated = \"4.8 N .. 6.5 N\"\nfull_travel = \"at most 13.5 N\"\n";
    return io::read_requirement(text, "latch.toml", test::wires()).value();
}

}  // namespace

void read_quantity(std::string_view bytes) {
    if (bytes.empty()) return;
    const auto dimensions = units::all_dimensions();
    const units::Dimension& dimension = *dimensions[static_cast<unsigned char>(bytes.front()) % dimensions.size()];
    const std::string_view text = bytes.substr(1);
    const auto number = units::parse_in(dimension, text);
    require_reason(number, text);
    if (number.value) require_same_again(dimension, *number.value);
    const auto band = units::parse_band_in(dimension, text);
    require_reason(band, text);
    if (!band.value) return;
    for (const auto& end : {band.value->nominal, band.value->at_least, band.value->at_most})
        require(!end || std::isfinite(*end), "an end of a range that is not finite");
}

void read_what_if(std::string_view bytes) {
    static const demand::Requirement requirement = latch();
    const auto question = sizing::read_what_if(bytes, requirement);
    require(question.has_value() != has_error(question.error()), "a question both taken and refused");
    if (!question) return require(!render(question.error()).empty(), "a question refused without words");
    require(question->number != nullptr && question->from < question->to, "a question without values to try");
}

}  // namespace seatload::fuzz
