// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seatload::io {

/// Where something starts in a text; both count from 1, columns in code points.
struct Position {
    unsigned line = 1;
    unsigned column = 1;
};

struct Date {
    unsigned year = 0;
    unsigned month = 0;
    unsigned day = 0;
};

/// A time of day, which none of our files has a use for.
struct TimeOfDay {};

struct Node;
struct Entry;
using List = std::vector<Node>;
using Table = std::vector<Entry>;  ///< in the order of the file

/// A value in a TOML file with its place: our own tree, so that one source file alone knows the TOML library.
struct Node {
    Position at;
    std::variant<std::string, std::int64_t, double, bool, Date, TimeOfDay, List, Table> value;
};

/// A key with its value.
struct Entry {
    std::string key;
    Position at;
    Node node;
};

/// What kind of value it is, in words: "text", "a whole number".
std::string_view kind_of(const Node& node);

/// The entry of a table with this key, or null.
const Entry* find_entry(const Table& table, std::string_view key);

}  // namespace seatload::io
