// SPDX-License-Identifier: MIT
#include <seatload/io/complaint_meaning.hpp>

#include <seatload/core/assert.hpp>
#include <seatload/core/embedded.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {

std::vector<ComplaintMeaning> complaint_meanings() {
    constexpr std::string_view kName = "data/complaints.toml";
    std::vector<ComplaintMeaning> all;
    Document document(embedded(kName), std::string(kName));
    Reader root(document);
    root.allow("format_version");
    if (auto table = root.need_table("complaints", "bare-number = \"...\""))
        for (const std::string& id : table->keys()) all.push_back({id, table->need<std::string>(id, "\"...\"")});
    SEATLOAD_ASSERT(!document.has_error());
    return all;
}

std::optional<std::string> meaning_of_complaint(std::string_view id) {
    for (ComplaintMeaning& each : complaint_meanings())
        if (each.id == id) return std::move(each.meaning);
    return std::nullopt;
}

}  // namespace seatload::io
