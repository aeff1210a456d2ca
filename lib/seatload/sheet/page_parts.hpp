// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/title_block.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// Pages of a paper up to here tell of this.
struct PagePart {
    std::size_t end;
    std::string words;
};

/// Draws the title block on every page of a paper, with the page's number, and under its title what the page's part
/// tells of. The parts go on to the last page.
void draw_title_blocks(std::vector<Drawing>& pages, const std::vector<PagePart>& parts, TitleBlock block,
                       const Wording& words);

}  // namespace seatload::sheet
