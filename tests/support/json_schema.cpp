// SPDX-License-Identifier: MIT
// The one source file that knows the schema validator.
#include <support/json_schema.hpp>

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wshadow"
#pragma GCC diagnostic ignored "-Wpedantic"
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>
#pragma GCC diagnostic pop

namespace seatload::test {

using Adapter = valijson::adapters::NlohmannJsonAdapter;

struct JsonSchema::Validator {
    valijson::Schema schema;
    mutable valijson::Validator validator;  // keeps the expressions it compiled
};

JsonSchema::JsonSchema(const nlohmann::json& schema) : validator_(std::make_unique<Validator>()) {
    valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
    parser.populateSchema(Adapter(schema), validator_->schema);
}

JsonSchema::JsonSchema(JsonSchema&&) noexcept = default;
JsonSchema::~JsonSchema() = default;

std::vector<std::string> JsonSchema::faults(const nlohmann::json& value) const {
    valijson::ValidationResults results;
    std::vector<std::string> found;
    if (validator_->validator.validate(validator_->schema, Adapter(value), &results)) return found;
    for (valijson::ValidationResults::Error error; results.popError(error);) {
        std::string place;
        for (const std::string& step : error.context) place += step;
        found.push_back(place + ": " + error.description);
    }
    return found;
}

bool JsonSchema::accepts(const nlohmann::json& value) const {
    return validator_->validator.validate(validator_->schema, Adapter(value), nullptr);
}

}  // namespace seatload::test
