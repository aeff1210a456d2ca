// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <variant>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// What a value on the sheet is to the maker.
enum class Status {
    required,    ///< inspected
    reference,   ///< in brackets, not inspected
    adjustable,  ///< the maker may alter it; shown in brackets
};

/// The sign before a value of that status.
constexpr const char* sign(Status status) {
    switch (status) {
        case Status::required:
            return "■";
        case Status::adjustable:
            return "◊";
        default:
            return "";
    }
}

struct Heading {
    std::string words;
    std::string again = {};  ///< over what of its block goes on in the next column; empty: nothing
};

/// A named value; both may hold script marks.
struct Named {
    Status status = Status::reference;
    std::string name;
    std::string value;
};

/// Running text over the width of a column; the sign of its status hangs before it.
struct Paragraph {
    std::string words;
    Status status = Status::reference;
    Face face = Face::regular;
};

/// Values side by side, each column under its head, each row with its name.
struct Grid {
    struct Row {
        std::string name;
        std::vector<std::string> values;       ///< as many as heads, or fewer
        std::string metric_name = {};          ///< on a paper in inches; else empty
        std::vector<std::string> metric = {};  ///< the same values, for a line of their own or beside the first
    };
    std::vector<std::string> heads;
    std::vector<Row> rows;
};

using Entry = std::variant<Heading, Named, Paragraph, Grid>;
using Entries = std::vector<Entry>;

void append(Entries& to, Entries from);
/// Words that bind.
Paragraph required_paragraph(const std::string& words);
/// A value the maker may alter, or must keep.
Named kept_or_adjusted(bool adjustable, std::string name, const std::string& value);

}  // namespace seatload::sheet
