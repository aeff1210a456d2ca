// SPDX-License-Identifier: MIT
#include "kinds.hpp"

namespace seatload::test {

void add_format(SchemaTable& table, std::string_view format, bool is_needed) {
    table.put("format", {{"enum", {format}}}, "What kind of file this is, and the version of its form.");
    if (is_needed) table.need("format");
}

std::vector<FileKind> file_kinds() {
    return {{"requirement", requirement_schema()},
            {"plunger", plunger_schema()},
            {"spring", spring_schema()},
            {"spec", spec_schema()},
            {"readings", readings_schema()},
            {"samples", samples_schema()},
            {"lot", lot_schema()},
            {"reply", reply_schema()},
            {"maker", maker_schema()},
            {"wire", wire_schema()},
            {"sampling", sampling_schema()},
            {"tolerances", tolerances_schema()},
            {"wording", wording_schema()}};
}

}  // namespace seatload::test
