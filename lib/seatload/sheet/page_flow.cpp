// SPDX-License-Identifier: MIT
#include <seatload/sheet/page_flow.hpp>

#include <algorithm>

#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/page.hpp>
#include <seatload/sheet/title_block.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kFlowPad = 3.0;
constexpr double kHeadingHeight = 3.0;
constexpr double kAfterHeading = 7.0;
constexpr double kBeforeHeading = 2.8;
constexpr double kWithHeading = 9.0;  ///< a heading wants this much after it on the same page: two lines

Box room_of(const Drawing& page) {
    Box room = drawing_space(page.width(), page.height());
    room.bottom += kTitleBlockHeight;
    return room.shrunk(kFlowPad);
}

constexpr std::size_t kRowsWithHeading = 2;  ///< of a table that may be broken, besides its head

}  // namespace

PageFlow::PageFlow(PaperSize size, double pitch) : size_(size), pitch_(pitch) { new_page(); }

void PageFlow::new_page() {
    if (!pages_.empty() && y_ == room_.top) return;
    pages_.push_back(empty_page(size_, true));
    draw_frame(page());
    room_ = room_of(page());
    y_ = room_.top;
}

void PageFlow::need(double height) {
    if (y_ - height < room_.bottom) new_page();
}

void PageFlow::heading(const std::string& words) {
    need(kBeforeHeading + kAfterHeading + kWithHeading);
    if (y_ < room_.top) y_ -= kBeforeHeading;
    const Text text{{room_.left, y_ - kHeadingHeight}, words, kHeadingHeight, Align::left, Face::bold};
    page().add(fitted(text, room_.width()));  // a title in it may be of any length
    y_ -= kAfterHeading - kFlowGap;
}

void PageFlow::lines(const std::string& words, double indent, const std::string& sign) {
    const auto broken = wrapped(words, room_.width() - indent);
    need(pitch_ * static_cast<double>(broken.size()));
    for (std::size_t i = 0; i < broken.size(); ++i) {
        y_ -= pitch_;
        if (i == 0 && !sign.empty()) page().add(Text{{room_.left, y_ + 0.8}, sign});
        page().add(Text{{room_.left + indent, y_ + 0.8}, broken[i]});
    }
}

void PageFlow::paragraph(const std::string& words) {
    lines(words, 0.0, "");
    y_ -= kFlowGap;
}

void PageFlow::headed_paragraph(const std::string& heading, const std::string& words) {
    if (!has_room_for(words)) new_page();
    this->heading(heading);
    paragraph(words);
}

void PageFlow::point(const std::string& words) { lines(words, 4.0, "–"); }

bool PageFlow::has_room_for(const std::string& words) const {
    const auto count = static_cast<double>(wrapped(words, room_.width()).size());
    return y_ - kBeforeHeading - kAfterHeading - pitch_ * count >= room_.bottom;
}

void PageFlow::headed_table(const std::string& words, const RuledTable& table) {
    const double both = kBeforeHeading + kAfterHeading + height(table);
    if (both <= room_.height()) need(both);
    heading(words);
    this->table(table);
}

PageFlow::Room PageFlow::room(double height) {
    need(height);
    const Box box{room_.left, y_ - height, room_.right, y_};
    y_ -= height + kFlowGap;
    return {page(), box};
}

PageFlow::Room PageFlow::headed_room(const std::string& words, double height) {
    need(kBeforeHeading + kAfterHeading + height);
    heading(words);
    return room(height);
}

void PageFlow::table(const RuledTable& table) {
    if (height(table) <= room_.height() - kBeforeHeading - kAfterHeading) {
        need(height(table));
        draw(page(), {room_.left, y_}, table);
        y_ -= height(table) + kFlowGap;
        return;
    }
    broken_table(table);
}

void PageFlow::headed_rows(const std::string& words, const RuledTable& table) {
    RuledTable first = table;
    first.rows.resize(std::min(kRowsWithHeading + 1, table.rows.size()));
    need(kBeforeHeading + kAfterHeading + height(first));
    heading(words);
    broken_table(table);
}

/// As many rows as go on each page, under the head; the last page has two or more where it can.
void PageFlow::broken_table(const RuledTable& table) {
    RuledTable part = table;
    for (std::size_t next = 1; next < table.rows.size();) {
        part.rows = {table.rows.front(), table.rows[next++]};
        need(height(part));
        while (next < table.rows.size()) {
            part.rows.push_back(table.rows[next]);
            if (y_ - height(part) < room_.bottom) {
                part.rows.pop_back();
                break;
            }
            ++next;
        }
        // The last row is not left alone on the next page where another can go with it.
        if (next + 1 == table.rows.size() && part.rows.size() > kRowsWithHeading + 1) part.rows.pop_back(), --next;
        draw(page(), {room_.left, y_}, part);
        y_ -= height(part) + kFlowGap;
    }
}

}  // namespace seatload::sheet
