// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace seatload::test {

/// A JSON Schema (draft 7) that values can be held against.
class JsonSchema {
  public:
    /// Throws std::exception when it is no schema.
    explicit JsonSchema(const nlohmann::json& schema);
    JsonSchema(JsonSchema&&) noexcept;
    ~JsonSchema();

    /// What is wrong with a value, each with its place; empty when it is valid.
    std::vector<std::string> faults(const nlohmann::json& value) const;
    bool accepts(const nlohmann::json& value) const;

  private:
    struct Validator;
    std::unique_ptr<Validator> validator_;
};

}  // namespace seatload::test
