// SPDX-License-Identifier: MIT
#include "schema_table.hpp"

#include <stdexcept>

namespace seatload::test {

SchemaTable& SchemaTable::put(std::string_view key, Json shape, std::string_view words) {
    Json property{{"description", words}};
    // What stands beside a reference is passed over by draft 7.
    if (shape.contains("$ref"))
        property["allOf"] = Json::array({std::move(shape)});
    else
        property.update(shape);
    properties_[std::string(key)] = std::move(property);
    return *this;
}

SchemaTable& SchemaTable::rows(std::string_view key, const std::vector<Json>& members, std::size_t fewest,
                               std::string_view words, std::size_t fewest_rows) {
    const Json row{{"type", "array"}, {"items", members}, {"minItems", fewest}, {"additionalItems", false}};
    Json shape{{"type", "array"}, {"items", row}};
    if (fewest_rows > 0) shape["minItems"] = fewest_rows;
    return put(key, std::move(shape), words);
}

SchemaTable& SchemaTable::table(std::string_view key, const SchemaTable& inside, std::string_view words) {
    return put(key, inside.json(), words);
}

SchemaTable& SchemaTable::tables(std::string_view key, const SchemaTable& each, std::string_view words,
                                 bool one_at_least) {
    Json shape{{"type", "array"}, {"items", each.json()}};
    if (one_at_least) shape["minItems"] = 1;
    return put(key, std::move(shape), words);
}

SchemaTable& SchemaTable::need(std::string_view key) {
    needed_.emplace_back(key);
    return *this;
}

SchemaTable& SchemaTable::one_of(std::initializer_list<std::string_view> keys) {
    Json choice = Json::array();
    for (const std::string_view key : keys) choice.push_back({{"required", {key}}});
    all_of_.push_back({{"oneOf", std::move(choice)}});
    return *this;
}

SchemaTable& SchemaTable::one_set_of(std::initializer_list<std::vector<std::string_view>> sets) {
    Json choice = Json::array();
    for (const auto& keys : sets) choice.push_back({{"required", keys}});
    all_of_.push_back({{"anyOf", std::move(choice)}});
    return *this;
}

SchemaTable& SchemaTable::also(Json shape) {
    all_of_.push_back(std::move(shape));
    return *this;
}

SchemaTable& SchemaTable::others(Json shape) {
    others_ = std::move(shape);
    return *this;
}

Json SchemaTable::json() const {
    Json json{{"type", "object"}, {"properties", properties_}, {"additionalProperties", others_}};
    if (!needed_.empty()) json["required"] = needed_;
    if (!all_of_.empty()) json["allOf"] = all_of_;
    return json;
}

Json SchemaTable::file(std::string_view title, std::string_view words) const {
    Json head{{"$schema", "http://json-schema.org/draft-07/schema#"}, {"title", title}, {"description", words}};
    head.update(json());
    if (Json definitions = definitions_of(head); !definitions.empty()) head["definitions"] = std::move(definitions);
    return head;
}

std::string_view FieldLister::words(std::string_view key) {
    const auto found = words_.find(key);
    if (found == words_.end()) throw std::runtime_error("tests/schema says nothing of the key " + std::string(key));
    ++told_;
    return found->second;
}

void words_left_over(const KeyWords& words) {
    std::string keys;
    for (const auto& [key, text] : words) keys += ' ' + std::string(key);
    throw std::runtime_error("tests/schema tells of a key that no reader asks for, among" + keys);
}

}  // namespace seatload::test
