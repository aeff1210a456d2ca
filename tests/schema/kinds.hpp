// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "schema_table.hpp"

namespace seatload::test {

/// A kind of TOML file: the name of its schema, lib/data/schema/<name>.json, and the schema.
struct FileKind {
    std::string name;
    Json schema;
};

/// Every kind.
std::vector<FileKind> file_kinds();

// Tables that several kinds share.
SchemaTable identity_table();
SchemaTable space_table(bool needs_heights = true);
SchemaTable surroundings_table();
SchemaTable plunger_table(bool needs_stroke);
SchemaTable own_wire_table();

Json requirement_schema();
Json plunger_schema();
Json spring_schema();
Json spec_schema();
Json readings_schema();
Json samples_schema();
Json lot_schema();
Json reply_schema();
Json maker_schema();
Json wire_schema();
Json sampling_schema();
Json tolerances_schema();
Json wording_schema();

/// The key `format` of a file that may leave it out, or must say it.
void add_format(SchemaTable& table, std::string_view format, bool is_needed);

}  // namespace seatload::test
