// SPDX-License-Identifier: MIT
#include <seatload/io/tolerance_file.hpp>

#include <seatload/io/reader.hpp>
#include <seatload/io/wire_words.hpp>

namespace seatload::io {
namespace {

/// Members: over, up to, then the three index bands of each grade, then the evidence of each grade.
tolerance::DiameterRow read_row(RowReader& row) {
    tolerance::DiameterRow read;
    std::size_t at = 0;
    read.over = row.need<Length>(at++, "lower size", kPositive);
    read.up_to = row.need<Length>(at++, "upper size", kPositive);
    for (auto& grade : read.plus_minus)
        for (Length& band : grade) band = row.need<Length>(at++, "tolerance", kPositive);
    for (wire::Evidence& evidence : read.evidence) evidence = row.need<wire::Evidence>(at++, "evidence");
    row.expect_at_most(at);
    return read;
}

void expect_rising(Document& document, Position at, const tolerance::Tables& tables,
                   const tolerance::DiameterRow& next) {
    if (next.up_to <= next.over) document.error(at, "rows-not-rising"_id, "the upper size is not above the lower");
    if (!tables.diameter.empty() && tables.diameter.back().up_to != next.over)
        document.error(at, "rows-not-rising"_id, "the row does not begin where the one before ends");
}

}  // namespace

Result<tolerance::Tables> read_tolerances(std::string_view text, const std::string& file_name) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    tolerance::Tables tables;
    {
        Reader root(document);
        for (const std::string_view key : {"description", "source", "date", "format_version"}) root.allow(key);
        auto table = root.need_table("coil_diameter", "rows = [ ... ]");
        if (table) {
            if (!table->has("rows")) table->missing("rows", "[ ... ]");
            table->allow("note");
            for (RowReader& row : table->rows("rows")) {
                const tolerance::DiameterRow next = read_row(row);
                expect_rising(document, row.at(), tables, next);
                tables.diameter.push_back(next);
            }
        }
    }
    if (document.has_error()) return document.diagnostics();
    return tables;
}

}  // namespace seatload::io
