// SPDX-License-Identifier: MIT
#include <seatload/io/identity_table.hpp>

#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/demand_fields.hpp>

namespace seatload::io {
namespace {

constexpr const char* kTitleBlock = "ISO 7200 gives the title block no more room";
constexpr const char* kTitle = "papers and files are named after it";
constexpr std::size_t kLongestTitle = 80;  ///< a line of a paper, and far more than a name needs

void expect_length(Reader& reader, std::string_view key, const std::string& text, std::size_t longest,
                   const char* hint) {
    const std::size_t length = length_in_code_points(text);
    if (length > longest)
        reader.error(key, "too-long"_id,
                     "at most " + std::to_string(longest) + " characters, these are " + std::to_string(length), hint);
}

}  // namespace

demand::Identity read_identity(Reader& reader) {
    demand::Identity identity;
    FieldReader fields(reader);
    visit_identity(fields, identity);
    if (const auto date = reader.find<DateText>("date")) identity.date = date->iso;
    expect_length(reader, "number", identity.number, 16, kTitleBlock);
    expect_length(reader, "revision", identity.revision, 2, kTitleBlock);
    expect_length(reader, "engine", identity.engine, kLongestTitle, kTitle);
    expect_length(reader, "position", identity.position, kLongestTitle, kTitle);
    return identity;
}

}  // namespace seatload::io
