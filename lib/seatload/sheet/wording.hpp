// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

#include <seatload/record/phrase_book.hpp>

namespace seatload::sheet {

/// What goes into a blank of a phrase; it may hold script marks (lettering.hpp).
struct Filling {
    std::string_view blank;
    std::string words;
};

/// The phrases of a paper in one language. A key that is not in the book, and a blank left open, are errors of ours.
class Wording {
  public:
    explicit Wording(record::PhraseBook book) : book_(std::move(book)) {}

    /// ISO 639-1, in small letters.
    const std::string& language() const { return book_.language; }

    /// The phrase with its blanks filled and its indices marked as subscripts.
    std::string say(std::string_view key, std::initializer_list<Filling> fillings = {}) const;

  private:
    record::PhraseBook book_;
};

/// The text with "L_0" and the like marked as subscripts: an index is the letters and digits after an underscore.
std::string with_indices(std::string_view text);

}  // namespace seatload::sheet
