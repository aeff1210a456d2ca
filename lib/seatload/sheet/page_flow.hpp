// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// Room left after a paragraph, a table or a figure [mm].
inline constexpr double kFlowGap = 1.6;
/// From line to line of text, and where a page must hold more [mm].
inline constexpr double kFlowPitch = 4.2;
inline constexpr double kCloseFlowPitch = 3.8;

/// Fills upright pages with headings, text and tables from the top down; a new page is begun when something finds no
/// room. Room for a title block is kept at the foot of each.
class PageFlow {
  public:
    explicit PageFlow(PaperSize size = PaperSize::a4, double pitch = kFlowPitch);

    /// Width of what is written [mm].
    double width() const { return room_.width(); }

    void heading(const std::string& words);
    void paragraph(const std::string& words);
    /// A heading and the paragraph under it, on one page.
    void headed_paragraph(const std::string& heading, const std::string& words);
    /// A line of a list, with a dash before it.
    void point(const std::string& words);
    /// A heading and the table under it, on one page when they fit on one.
    void headed_table(const std::string& words, const RuledTable& table);
    void table(const RuledTable& table);
    /// A heading and the table under it, begun where the page stands and broken between rows where it ends; the heading
    /// keeps the table's head and first rows with it.
    void headed_rows(const std::string& words, const RuledTable& table);
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
    /// What is left of the present page [mm].
    double height_left() const { return y_ - room_.bottom; }
    /// Share of the present page that is written on.
    double fullness() const { return (room_.top - y_) / room_.height(); }
    /// Begins a new page unless the present one is empty.
    void new_page();

    std::vector<Drawing>& pages() { return pages_; }
    const std::vector<Drawing>& pages() const { return pages_; }

  private:
    void need(double height);
    void broken_table(const RuledTable& table);
    void lines(const std::string& words, double indent, const std::string& sign);
    Drawing& page() { return pages_.back(); }

    PaperSize size_;
    double pitch_;  ///< from line to line of text [mm]
    std::vector<Drawing> pages_;
    Box room_;
    double y_ = 0.0;
};

}  // namespace seatload::sheet
