// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace seatload::sheet {

/// What a value on the sheet is to the maker.
enum class Status {
    required,     ///< inspected
    reference,    ///< in brackets, not inspected
    adjustable,   ///< the maker may alter it; shown in brackets
};

/// The sign before a value of that status.
constexpr const char* sign(Status status) {
    switch (status) {
        case Status::required: return "■";
        case Status::adjustable: return "◊";
        default: return "";
    }
}

struct Heading {
    std::string words;
};

/// A named value; both may hold script marks.
struct Named {
    Status status = Status::reference;
    std::string name;
    std::string value;
};

/// Running text.
struct Paragraph {
    std::string words;
};

using Entry = std::variant<Heading, Named, Paragraph>;
using Entries = std::vector<Entry>;

}  // namespace seatload::sheet
