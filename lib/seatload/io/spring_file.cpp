// SPDX-License-Identifier: MIT
#include <seatload/io/spring_file.hpp>

#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/measured_table.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spring_table.hpp>
#include <seatload/record/specify.hpp>

namespace seatload::io {
namespace {

void check_order(Document& document, Position shorter_at, std::string_view shorter_name,
                 const std::optional<Length>& shorter, Position longer_at, std::string_view longer_name,
                 const std::optional<Length>& longer) {
    if (!shorter || !longer || *longer <= 0.0 * mm || *shorter < *longer) return;
    document.contradiction(shorter_at, "heights-exchanged"_id,
                           "the " + std::string(shorter_name) + " is not below the " + std::string(longer_name),
                           "a compression spring gets shorter as it is loaded", longer_at,
                           "the " + std::string(longer_name));
}

void read_heights(Reader& root, std::string_view table, std::string_view seated, std::string_view full_travel,
                  record::SpringFile& file) {
    auto reader = root.table(table);
    if (!reader) return;
    reader->set(seated, file.seated_height, kSize);
    reader->set(full_travel, file.full_travel_height, kSize);
    if (table == "space") reader->allow_all();
    Document& document = reader->document();
    check_order(document, reader->at(seated), "seated height", file.seated_height, document.at("spring.free_length"),
                "free length", file.spring.free_length);
    check_order(document, reader->at(full_travel), "full-travel height", file.full_travel_height, reader->at(seated),
                "seated height", file.seated_height);
    if (!file.seated_height)
        check_order(document, reader->at(full_travel), "full-travel height", file.full_travel_height,
                    document.at("spring.free_length"), "free length", file.spring.free_length);
}

record::SpringFile read_spring_tables(Reader& root, const wire::Catalogue& catalogue, bool& is_spec) {
    record::SpringFile file;
    const auto format = read_format(root, {kSpringFormat, kSpecFormat});
    if (!format) return file;
    is_spec = *format == kSpecFormat;
    root.set(is_spec ? "title" : "name", file.name);
    SpringTable table = read_spring_table(root, catalogue);
    file.wire_grade = std::move(table.wire_grade);
    file.own_grade = std::move(table.own_grade);
    file.spring = table.spring;
    if (is_spec) read_heights(root, "space", "seated_height", "full_travel_height", file);
    if (!is_spec) read_heights(root, "heights", "seated", "full_travel", file);
    file.is_temperature_stated = false;
    if (auto reader = root.table("surroundings")) {
        file.is_temperature_stated = reader->has("temperature");
        FieldReader fields(*reader);
        visit_surroundings(fields, file.surroundings);
    }
    if (is_spec) root.allow_all();
    if (auto reader = is_spec ? std::nullopt : root.table("measured")) file.measured = read_measured(*reader);
    return file;
}

template <class Fields, class File>
void visit_heights(Fields& f, File& file) {
    f.field("seated", file.seated_height, kSize, "L1");
    f.field("full_travel", file.full_travel_height, kSize, "L2");
}

/// A temperature that nobody stated is not written either.
void write_surroundings(TomlWriter& writer, FieldWriter& fields, const record::SpringFile& file) {
    if (!file.is_temperature_stated && file.surroundings.medium.empty()) return;
    writer.table("surroundings");
    if (file.is_temperature_stated) return visit_surroundings(fields, file.surroundings);
    fields.field("medium", file.surroundings.medium, kAny, "");
}

}  // namespace

Result<record::SpringFile> read_spring(std::string_view text, const std::string& file_name,
                                       const wire::Catalogue& catalogue) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::SpringFile file;
    bool is_spec = false;
    {
        Reader root(document);
        file = read_spring_tables(root, catalogue, is_spec);
    }
    if (document.has_error()) return document.diagnostics();
    if (is_spec) {
        const auto spec = read_spec(text, file_name, catalogue);
        if (!spec) return Diagnostics(spec.error());
        file.requirement = record::requirement_of(*spec);
        file.spec = *spec;
    }
    return {std::move(file), document.diagnostics()};
}

std::string write_spring(const record::SpringFile& file, const std::vector<std::string>& remarks) {
    TomlWriter writer;
    for (const std::string& remark : remarks) writer.comment(remark);
    writer.entry("format", quoted_text(kSpringFormat));
    FieldWriter fields(writer);
    fields.field("name", file.name, kAny, "");
    write_spring_table(writer, {file.wire_grade, file.own_grade, file.spring});
    if (file.seated_height || file.full_travel_height) {
        writer.table("heights");
        visit_heights(fields, file);
    }
    write_surroundings(writer, fields, file);
    if (file.measured) write_measured(writer, *file.measured);
    return std::move(writer).text();
}

}  // namespace seatload::io
