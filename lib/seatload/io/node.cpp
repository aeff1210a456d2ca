// SPDX-License-Identifier: MIT
#include <seatload/io/node.hpp>

#include <array>

namespace seatload::io {

std::string_view kind_of(const Node& node) {
    static constexpr std::array<std::string_view, 8> kKinds{"text",   "a whole number", "a number", "true or false",
                                                            "a date", "a time",         "a list",   "a table"};
    static_assert(kKinds.size() == std::variant_size_v<decltype(Node::value)>);
    return kKinds.at(node.value.index());
}

const Entry* find_entry(const Table& table, std::string_view key) {
    for (const Entry& entry : table)
        if (entry.key == key) return &entry;
    return nullptr;
}

}  // namespace seatload::io
