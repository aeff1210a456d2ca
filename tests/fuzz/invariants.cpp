// SPDX-License-Identifier: MIT
#include "fuzz/invariants.hpp"

#include <stdexcept>

#include <seatload/core/text.hpp>

namespace seatload::fuzz {
namespace {

/// A place on no line is the file as a whole; a column may be one past the last letter.
void require_inside(const Place& place, std::string_view text) {
    if (place.line == 0) return require(place.column == 0, "a column without a line");
    const auto lines = split(text, '\n');
    require(place.line <= lines.size(), "line " + std::to_string(place.line) + " of " + std::to_string(lines.size()));
    const std::size_t letters = length_in_code_points(lines[place.line - 1]);
    require(place.column <= letters + 1, "column " + std::to_string(place.column) + " of " + std::to_string(letters));
}

void require_place(const Place& place, const Texts& texts) {
    const auto found = texts.find(place.file);
    require(found != texts.end(), "a complaint of a file that was not given: \"" + place.file + '"');
    require_inside(place, found->second);
}

}  // namespace

void require(bool holds, const std::string& what) {
    if (!holds) throw std::runtime_error(what);
}

void require_places(const Diagnostics& complaints, const Texts& texts) {
    for (const Diagnostic& d : complaints) {
        require(!d.message.empty(), "a complaint without words");
        require_place(d.place, texts);
        if (!d.related.file.empty()) require_place(d.related, texts);
    }
    const std::string shown = render(complaints, 20, 80);
    require(complaints.empty() == shown.empty(), "complaints that cannot be shown");
    require(!first_invalid_utf8(shown), "a complaint that is not UTF-8:\n" + shown);
}

}  // namespace seatload::fuzz
