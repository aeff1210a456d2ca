// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// One quantity of the comparison: its name, and its value in each alternative.
struct ComparedRow {
    std::string name;
    std::string unit;  ///< may be empty
    std::vector<std::string> values;
    std::string first_with_unit;  ///< the first value as it stands in a sentence

    bool is_common() const;
};

/// Everything a maker compares alternatives by.
std::vector<ComparedRow> comparisons(std::span<const Facts> alternatives);

/// Tables of what differs, at most five alternatives each, about as many in each; what is alike is left out when there
/// are several.
std::vector<RuledTable> comparison_tables(std::span<const Facts> alternatives, double width);

/// "hand of coiling right; ends closed and ground": what is alike in all alternatives; empty when there is but one.
std::string common_words(std::span<const Facts> alternatives);

/// Forms to be filled in by the maker, a row an alternative with tooling and set-up, and a price and a lead time for
/// each quantity, at most three quantities side by side; the height is that of a row for a number written by hand [mm].
std::vector<RuledTable> price_tables(std::span<const Facts> alternatives, double width, double row_height);

/// A form for what he charges a lot besides its pieces, and for the least he takes an order for.
RuledTable charges_table(const Facts& facts, double width, double row_height);

/// A form for the wire he holds and the changes he asks for, alike for all quantities.
RuledTable change_table(std::span<const Facts> alternatives, double width, double row_height);

/// The letter of an alternative, or its number in the order given when it has none.
std::string letter(std::span<const Facts> alternatives, std::size_t index);

}  // namespace seatload::sheet
