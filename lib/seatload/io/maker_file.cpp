// SPDX-License-Identifier: MIT
#include <seatload/io/maker_file.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/wire_words.hpp>

namespace seatload::io {
namespace {

void visit_maker_limits(FieldReader& f, demand::Maker& maker) {
    f.field("smallest_index", maker.smallest_index, kAtLeastOne, "");
    f.field("largest_index", maker.largest_index, kAtLeastOne, "");
    f.field("smallest_ground_wire", maker.smallest_ground_wire, kSize, "");
    f.field("largest_ground_index", maker.largest_ground_index, kAtLeastOne, "");
    f.field("coil_step", maker.coil_step, kPositive, "");
    f.field("longest_free_length", maker.longest_free_length, kSize, "");
}

/// A source says of which limit; one of a limit that is not stated is a slip.
void check_keys(Reader& table, const std::vector<std::string>& stated, const std::string& what) {
    for (const std::string& key : table.keys()) {
        if (std::find(stated.begin(), stated.end(), key) == stated.end())
            table.error(key, "source-of-nothing"_id, what + " of a limit that is not stated: " + key,
                        did_you_mean(key, stated));
        table.allow(key);
    }
}

/// "EN 15800 scope (memory)"; a number without source is one the maker gave.
void read_sources(Reader& root, const std::vector<std::string>& stated, demand::Maker& maker) {
    std::map<std::string, wire::Evidence> evidence;
    if (auto table = root.table("evidence")) {
        check_keys(*table, stated, "evidence");
        for (const std::string& key : stated)
            if (const auto found = table->find<wire::Evidence>(key)) evidence[key] = *found;
    }
    if (auto table = root.table("sources")) {
        check_keys(*table, stated, "a source");
        for (const std::string& key : stated)
            if (const auto text = table->find<std::string>(key)) maker.sources[key] = *text;
    }
    for (const auto& [key, mark] : evidence)
        if (mark != wire::Evidence::given)
            maker.sources[key] += (maker.sources[key].empty() ? "(" : " (") + std::string(wire::word(mark)) + ')';
}

void check_order(Reader& root, const demand::Maker& maker) {
    if (maker.smallest_index && maker.largest_index && *maker.smallest_index > *maker.largest_index)
        root.document().contradiction(root.document().at("limits.smallest_index"), "limits-crossed"_id,
                                      "limits.smallest_index is above limits.largest_index", "",
                                      root.document().at("limits.largest_index"),
                                      "largest_index is " + shortest(*maker.largest_index));
}

demand::Maker read_maker_tables(Reader& root) {
    demand::Maker maker;
    if (!read_format(root, {kMakerFormat})) return maker;
    maker.name = root.need<std::string>("name", "\"maker A\"");
    root.set("note", maker.note);
    std::vector<std::string> stated;
    if (auto table = root.need_table("limits", "largest_index = 16.0")) {
        stated = table->keys();
        FieldReader fields(*table);
        visit_maker_limits(fields, maker);
    }
    read_sources(root, stated, maker);
    check_order(root, maker);
    return maker;
}

}  // namespace

Result<demand::Maker> read_maker(std::string_view text, const std::string& file_name) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    demand::Maker maker;
    {
        Reader root(document);
        maker = read_maker_tables(root);
    }
    if (document.has_error()) return document.diagnostics();
    return {std::move(maker), document.diagnostics()};
}

}  // namespace seatload::io
