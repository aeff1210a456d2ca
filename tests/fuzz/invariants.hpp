// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>

#include <seatload/core/result.hpp>

namespace seatload::fuzz {

/// What readers were given, by the name it is complained of under.
using Texts = std::map<std::string, std::string, std::less<>>;

/// Throws when something that must hold does not.
void require(bool holds, const std::string& what);

/// Each complaint has words, names a file that was given, and a place inside it with the line that stands there; all of
/// them together can be shown.
void require_places(const Diagnostics& complaints, const Texts& texts);

/// A reader answers with a value and no error, or with at least one error and no value.
template <class T>
void require_answer(const Result<T>& result, const Texts& texts) {
    require(result.has_value() != has_error(result.error()), "a value stands beside errors, or neither is there");
    require_places(result.error(), texts);
}

/// What was read can be written and read again, and is then written the same.
template <class T, class Write, class Read>
void require_identity(const T& value, const Write& write, const Read& read) {
    const std::string text = write(value);
    const Result<T> again = read(text);
    require(again.has_value(), "what was written is not read:\n" + render(again.error()) + '\n' + text);
    require(write(*again) == text, "read again it is written otherwise:\n" + text + "\n---\n" + write(*again));
}

}  // namespace seatload::fuzz
