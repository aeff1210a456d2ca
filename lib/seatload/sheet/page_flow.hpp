// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// Fills upright A4 pages with headings, text and tables from the top down; a new page is begun when something finds no
/// room. Room for a title block is kept at the foot of each.
class PageFlow {
  public:
    PageFlow();

    void heading(const std::string& words);
    void paragraph(const std::string& words);
    /// A line of a list, with a dash before it.
    void point(const std::string& words);
    /// A heading and the table under it, on one page when they fit on one.
    void headed_table(const std::string& words, const RuledTable& table);
    void table(const RuledTable& table);
    /// Room for a figure so high, over the whole width, on the page it comes to lie on.
    struct Room {
        Drawing& drawing;
        Box box;
    };
    Room room(double height);
    /// A heading and room for the figure under it, on one page.
    Room headed_room(const std::string& words, double height);
    /// Whether a heading and a paragraph of these words still go on the present page.
    bool has_room_for(const std::string& words) const;
    /// Begins a new page unless the present one is empty.
    void new_page();

    std::vector<Drawing>& pages() { return pages_; }

  private:
    void need(double height);
    void lines(const std::string& words, double indent, const std::string& sign);
    Drawing& page() { return pages_.back(); }

    std::vector<Drawing> pages_;
    Box room_;
    double y_ = 0.0;
};

}  // namespace seatload::sheet
