// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/quotation.hpp>

namespace seatload::record {

/// A heading and what is said under it.
struct Telling {
    std::string heading;
    std::string words;
};

/// What is told of an offer in words: why it has its place, what it asks for otherwise, how its spring was judged and
/// by what it fails, what is missing, not stated, or to be asked; of one without a price the maker's remarks alone. In
/// English, for ourselves.
std::vector<Telling> tellings(const JudgedOffer& offer);

/// In a word or two, for a column of a table: "as sent", "fits", "less room", "may rub", "FAILS", "unknown", "expired".
std::string_view short_word(const JudgedOffer& offer);

/// What a lot costs, a piece of it, and a later lot, with a + where the maker left something open that may raise it.
std::string total_text(const LandedCost& cost);
std::string each_text(const LandedCost& cost);
std::string again_text(const LandedCost& cost);

/// What was asked for and nobody has a price for, and who has none at all; empty when all is quoted by somebody.
std::string unquoted_words(const Comparison& all);

/// What the + stands for and what it does to the order of the offers; empty when nothing that may raise a cost is open.
std::string plus_words(const Comparison& all);

/// Why a quoted quantity cannot be ordered alone: "the least order is 100.00"; empty when it can.
std::string minimum_words(const Minimum& missed, const std::string& currency);

/// The currencies offers were turned from, with their rates; empty when there are none.
std::string exchange_words(const Comparison& all);

/// How costs are counted and what the ranking rests on.
std::string counting_words(const Comparison& all);

}  // namespace seatload::record
