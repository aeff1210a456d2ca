// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// The revisions of a part as its sheet lists them over its title block: the latest at the foot.
class RevisionTable {
  public:
    /// Of the revisions of a spec with readable() texts the last `most`; the head says how many are left out. A spec
    /// without any gets one row with its own revision and date, and nothing when it has neither.
    RevisionTable(const record::Spec& spec, const Wording& words, std::size_t most, double width);

    /// Height as drawn [mm]; 0 when there is nothing to list.
    double height() const;
    void draw(Drawing& drawing, Point lower_right) const;

  private:
    struct Row {
        std::string index;
        std::string date;
        std::vector<std::string> change;
        std::string by;
    };
    double height(const Row& row) const;
    std::vector<std::string> change_lines(const std::string& change) const;

    std::array<double, 4> widths_;  ///< of the columns
    Row head_;
    std::vector<Row> rows_;
};

}  // namespace seatload::sheet
