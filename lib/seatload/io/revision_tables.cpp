// SPDX-License-Identifier: MIT
#include <seatload/io/revision_tables.hpp>

#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/fields.hpp>

namespace seatload::io {
namespace {

constexpr std::size_t kLongestIndex = 2;  // ISO 7200

/// A revision with the places that later complaints point at.
struct PlacedRevision {
    demand::Revision revision;
    Position index_at;
    Position date_at;
};

template <class Fields, class Revision>
void visit_revision(Fields& f, Revision& revision) {
    f.needed("change", "\"wire 0.75 mm instead of 0.70 mm\"", revision.change, kAny, "");
    f.field("by", revision.by, kAny, "");
}

PlacedRevision read_revision(Reader& table) {
    PlacedRevision out{{}, table.at("index"), table.at("date")};
    out.revision.index = table.need<std::string>("index", "\"B\"");
    out.revision.date = table.need<DateText>("date", "\"2026-11-25\"").iso;
    FieldReader fields(table);
    visit_revision(fields, out.revision);
    const std::size_t length = length_in_code_points(out.revision.index);
    if (length > kLongestIndex)
        table.error("index", "too-long"_id, "at most 2 characters, these are " + std::to_string(length),
                    "ISO 7200 gives a revision index no more room");
    return out;
}

void check_against_earlier(Document& document, const std::vector<PlacedRevision>& all, std::size_t at) {
    const PlacedRevision& now = all[at];
    for (std::size_t i = 0; i < at && !now.revision.index.empty(); ++i)
        if (all[i].revision.index == now.revision.index)
            document.contradiction(now.index_at, "name-taken"_id,
                                   "two revisions have the index \"" + now.revision.index + "\"",
                                   "each change gets an index of its own", all[i].index_at, "first used here");
    if (at == 0 || now.revision.date.empty()) return;
    const PlacedRevision& before = all[at - 1];
    // Dates as ISO 8601 writes them sort as texts.
    if (now.revision.date < before.revision.date)
        document.contradiction(now.date_at, "date-out-of-order"_id, "this revision is dated before the one above it",
                               "revisions stand in the order they were made, the earliest first", before.date_at,
                               "the one above");
}

void check_last(Document& document, const PlacedRevision& last, const demand::Identity& identity) {
    if (!last.revision.index.empty() && last.revision.index != identity.revision)
        document.contradiction(
            last.index_at, "contradiction"_id,
            identity.revision.empty()
                ? "the identity states no revision, the last one listed is \"" + last.revision.index + "\""
                : "the last revision listed is \"" + last.revision.index + "\", the identity's is \"" +
                      identity.revision + "\"",
            "the last one listed is the one the papers are issued as", document.at("identity.revision"),
            "the identity's revision");
    if (!identity.date.empty() && last.revision.date > identity.date)
        document.contradiction(last.date_at, "date-out-of-order"_id, "this revision is dated after the date of issue",
                               "papers are issued once the change is made", document.at("identity.date"),
                               "the date of issue");
}

}  // namespace

std::vector<demand::Revision> read_revisions(Reader& root, const demand::Identity& identity) {
    std::vector<PlacedRevision> all;
    for (Reader& table : root.tables("revision")) all.push_back(read_revision(table));
    for (std::size_t i = 0; i < all.size(); ++i) check_against_earlier(root.document(), all, i);
    if (!all.empty()) check_last(root.document(), all.back(), identity);
    std::vector<demand::Revision> out;
    for (PlacedRevision& placed : all) out.push_back(std::move(placed.revision));
    return out;
}

void write_revisions(TomlWriter& writer, const std::vector<demand::Revision>& revisions) {
    for (const demand::Revision& revision : revisions) {
        writer.next_table("revision");
        FieldWriter fields(writer);
        fields.field("index", revision.index, kAny, "");
        fields.field("date", DateText{revision.date}, kAny, "");
        visit_revision(fields, revision);
    }
}

}  // namespace seatload::io
