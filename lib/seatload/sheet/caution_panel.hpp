// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// The cautions of a sheet, and below them the mark by which its attached spec is known.
class CautionPanel {
  public:
    /// `mark` as tamper_mark() writes it; empty: no spec is attached, and none is spoken of.
    /// A tight one, for a sheet that is full, takes less height.
    CautionPanel(const Wording& words, const std::string& mark, double width, bool is_tight = false);

    double height() const;
    /// Fills the box from the top; its border is drawn too.
    void draw(Drawing& drawing, const Box& box) const;

  private:
    struct Section {
        std::string heading;
        std::vector<std::string> lines;
    };
    bool is_wide() const;
    double lines_from() const;
    std::size_t line_count(const Section& section) const;

    double width_;
    double pitch_;
    double squeeze_;
    std::vector<Section> sections_;
};

}  // namespace seatload::sheet
