// SPDX-License-Identifier: MIT
#include "json_place.hpp"

#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/core/text.hpp>

namespace seatload::test {
namespace {

using Json = nlohmann::ordered_json;

// Compilers may round a last digit otherwise.
constexpr double kSameNumber = 1e-9;

/// The member of an array whose `key` is the text `value`.
const Json* member_where(const Json& array, const std::string& condition) {
    const std::size_t equals = condition.find('=');
    for (const Json& member : array)
        if (member.value(condition.substr(0, equals), "") == condition.substr(equals + 1)) return &member;
    return nullptr;
}

const Json* step(const Json& from, std::string name) {
    std::string condition;
    if (const std::size_t bracket = name.find('['); bracket != std::string::npos) {
        condition = name.substr(bracket + 1, name.size() - bracket - 2);
        name.resize(bracket);
    }
    const Json* next = nullptr;
    if (from.is_object() && from.contains(name)) next = &from.at(name);
    if (from.is_array() && !name.empty() && name.find_first_not_of("0123456789") == std::string::npos &&
        std::stoul(name) < from.size())
        next = &from.at(std::stoul(name));
    return next != nullptr && !condition.empty() ? member_where(*next, condition) : next;
}

Json value_at(const Json& root, const std::string& place) {
    const Json* at = &root;
    const auto steps = split(place, '/');
    for (std::size_t i = 1; i < steps.size(); ++i) {
        if (steps[i] == "length" && at->is_array()) return at->size();
        at = step(*at, std::string(steps[i]));
        if (at == nullptr) return "(no such place)";
    }
    return *at;
}

bool is_same(const Json& a, const Json& b) {
    if (!a.is_number_float() || !b.is_number()) return a == b;
    const double x = a.get<double>(), y = b.get<double>();
    return std::abs(x - y) <= kSameNumber * std::max(std::abs(x), std::abs(y));
}

}  // namespace

Lines with_values(const Lines& places, const std::string& json_text) {
    const Json root = Json::parse(json_text, nullptr, false);
    if (root.is_discarded()) return {"(this is not JSON)"};
    Lines lines;
    for (const std::string& line : places) {
        const std::size_t equals = line.find(" = ");
        const std::string place = line.substr(0, equals);
        const Json value = value_at(root, place);
        const Json expected =
            equals == std::string::npos ? Json() : Json::parse(line.substr(equals + 3), nullptr, false);
        lines.push_back(equals != std::string::npos && is_same(value, expected) ? line : place + " = " + value.dump());
    }
    return lines;
}

}  // namespace seatload::test
