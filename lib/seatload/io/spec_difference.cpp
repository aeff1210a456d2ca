// SPDX-License-Identifier: MIT
#include <seatload/io/spec_difference.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/toml_lines.hpp>

namespace seatload::io {
namespace {

/// Keys and their values, heads of tables left out.
std::vector<std::pair<std::string, std::string>> values_of(const record::Spec& spec) {
    std::vector<std::pair<std::string, std::string>> values;
    for (const TomlPiece& piece : toml_pieces(write_spec(spec))) {
        if (piece.id.empty() || piece.id.front() == '[') continue;
        const std::string key = piece.id.front() == '.' ? piece.id.substr(1) : piece.id;
        values.emplace_back(key, trim(std::string_view(piece.text).substr(piece.text.find('=') + 1)));
    }
    return values;
}

const std::string* value_of(const std::vector<std::pair<std::string, std::string>>& values, const std::string& key) {
    const auto found = std::find_if(values.begin(), values.end(), [&](const auto& v) { return v.first == key; });
    return found == values.end() ? nullptr : &found->second;
}

}  // namespace

std::vector<SpecDifference> spec_differences(const record::Spec& before, const record::Spec& after) {
    const auto old_values = values_of(before), new_values = values_of(after);
    std::vector<SpecDifference> found;
    for (const auto& [key, value] : old_values) {
        const std::string* now = value_of(new_values, key);
        if (now == nullptr || *now != value) found.push_back({key, value, now == nullptr ? "" : *now});
    }
    for (const auto& [key, value] : new_values)
        if (value_of(old_values, key) == nullptr) found.push_back({key, "", value});
    return found;
}

}  // namespace seatload::io
