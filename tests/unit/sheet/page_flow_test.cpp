// SPDX-License-Identifier: MIT
#include <seatload/sheet/page_flow.hpp>

#include <support/check.hpp>

namespace seatload::test {
namespace {

sheet::RuledTable table_of(int rows) {
    sheet::RuledTable table;
    table.widths = {60.0};
    table.rows.push_back({"head"});
    for (int i = 0; i < rows; ++i) table.rows.push_back({"row"});
    return table;
}

int count_of(const sheet::Drawing& page, const std::string& words) {
    int count = 0;
    for (const sheet::Item& item : page.items())
        if (const auto* text = std::get_if<sheet::Text>(&item); text && text->words == words) ++count;
    return count;
}

TEST_CASE("a table broken over pages keeps all its rows, and leaves none alone on the last page", "[sheet]") {
    bool was_broken = false;
    for (int rows = 1; rows <= 130; ++rows) {
        INFO(rows << " rows");
        sheet::PageFlow flow;
        flow.headed_rows("Heading", table_of(rows));
        int all = 0;
        for (const sheet::Drawing& page : flow.pages()) {
            CHECK(count_of(page, "head") == 1);
            all += count_of(page, "row");
        }
        CHECK(all == rows);
        if (flow.pages().size() == 1) continue;
        was_broken = true;
        CHECK(count_of(flow.pages().back(), "row") >= 2);
    }
    CHECK(was_broken);
}

}  // namespace
}  // namespace seatload::test
