// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// What the signs on a sheet mean, and its unit of length, in a strip of as many lines as that takes.
class Legend {
  public:
    Legend(const Wording& words, bool has_inches, double width);

    double height() const;
    /// Fills the box and draws the line that ends it.
    void draw(Drawing& drawing, const Box& box) const;

  private:
    double width_;
    std::vector<std::vector<std::string>> lines_;
};

}  // namespace seatload::sheet
