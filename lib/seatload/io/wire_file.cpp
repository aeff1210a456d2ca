// SPDX-License-Identifier: MIT
#include <seatload/io/wire_file.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/wire_grade.hpp>
#include <seatload/io/wire_tables.hpp>

namespace seatload::io {
namespace {

constexpr int kFormatVersion = 1;

/// Reads the tables under `key` one by one and lays each over the thing of the same name, or adds it.
/// Two of one name in the file are an error.
template <class Thing, class Read, class NameOf>
void lay_over(Reader& file, std::string_view key, std::string_view name_key, std::vector<Thing>& things, Read read,
              NameOf name_of) {
    std::vector<std::pair<std::string, Position>> seen;
    for (Reader& table : file.tables(key)) {
        Thing thing = read(table);
        const std::string name = lower(name_of(thing));
        const auto same = [&](const auto& entry) { return entry.first == name; };
        if (const auto first = std::find_if(seen.begin(), seen.end(), same); first != seen.end() && !name.empty())
            table.document().contradiction(table.at(name_key), "given-twice"_id,
                                           "\"" + name_of(thing) + "\" is described twice", "keep one of the two",
                                           first->second, "first described here");
        seen.emplace_back(name, table.at(name_key));
        const auto known =
            std::find_if(things.begin(), things.end(), [&](const Thing& t) { return lower(name_of(t)) == name; });
        if (known != things.end())
            *known = std::move(thing);
        else
            things.push_back(std::move(thing));
    }
}

/// A requirement or spring given for a wire file; complaints of each of its keys would only hide that.
bool is_other_kind(Reader& file) {
    const auto format = file.has("format_version") ? std::nullopt : file.find<std::string>("format");
    if (!format) return false;
    file.error("format", "wrong-kind-of-file"_id, "this is a file of the kind \"" + *format + "\"",
               "wanted here is a wire file, which begins with format_version = " + std::to_string(kFormatVersion));
    file.allow_all();
    return true;
}

void read_head(Reader& file) {
    if (!file.has("format_version")) file.missing("format_version", std::to_string(kFormatVersion));
    if (const auto version = file.find<int>("format_version"); version && *version != kFormatVersion)
        file.error("format_version", "format-of-another-version"_id,
                   "this program reads version " + std::to_string(kFormatVersion) + " of wire files");
    for (const std::string_view key : {"description", "source", "date"}) file.find<std::string>(key);
}

void read_wire_tables(Reader& file, wire::Catalogue& catalogue) {
    const auto id = [](const auto& thing) { return thing.id; };
    const auto material = [](const auto& row) { return row.material; };
    lay_over(file, "entry", "key", catalogue.sources, read_source, [](const wire::Source& s) { return s.key; });
    lay_over(file, "tolerance_table", "id", catalogue.tolerance_tables, read_tolerance_table, id);
    lay_over(file, "load_loss", "row", catalogue.load_loss_guides, read_load_loss, material);
    lay_over(file, "stress_relief", "row", catalogue.stress_reliefs, read_stress_relief, material);
    lay_over(file, "series", "id", catalogue.series, read_series, id);
    lay_over(
        file, "grade", "id", catalogue.grades, [&](Reader& table) { return read_grade(table, catalogue); }, id);
}

}  // namespace

Result<wire::Catalogue> read_wire_file(std::string_view text, const std::string& file_name, wire::Catalogue onto) {
    Document document(text, file_name);
    if (document.is_readable()) {
        Reader file(document);
        if (is_other_kind(file)) return document.diagnostics();
        read_head(file);
        read_wire_tables(file, onto);
        for (Reader& table : file.tables("holding")) onto.holdings.push_back(read_holding(table, onto));
    }
    if (document.has_error()) return document.diagnostics();
    return {std::move(onto), document.diagnostics()};
}

}  // namespace seatload::io
