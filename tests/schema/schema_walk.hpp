// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "shapes.hpp"

namespace seatload::test {

/// A table a schema tells of: its path ("offer.price"), which of the tables on the way are members of a list, and its
/// schema. `branch` counts the ways a table may be filled in when there are several.
struct TableAt {
    std::string kind;
    std::string path;
    std::vector<std::string> listed;  ///< paths of arrays of tables on the way, itself among them
    std::size_t branch = 0;
    const Json* schema = nullptr;
};

/// Calls `look` with each table of a kind, the whole file first.
void each_table(const std::string& kind, const Json& schema, const std::function<void(const TableAt&)>& look);

/// Whether a property is a table or an array of tables.
bool holds_tables(const Json& property);

/// A file that has this table alone with these lines in it, and the number of the first of them.
struct Draft {
    std::string text;
    unsigned line = 0;
};
Draft draft_with(const TableAt& table, const std::string& key, const std::string& lines);

}  // namespace seatload::test
