// SPDX-License-Identifier: MIT
#include <seatload/sheet/page_parts.hpp>

#include <seatload/sheet/frame.hpp>

namespace seatload::sheet {

void draw_title_blocks(std::vector<Drawing>& pages, const std::vector<PagePart>& parts, TitleBlock block,
                       const Wording& words) {
    block.sheets = static_cast<int>(pages.size());
    std::size_t part = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        while (i >= parts[part].end) ++part;
        block.supplementary_title = parts[part].words;
        block.sheet = static_cast<int>(i) + 1;
        const Box space = drawing_space(pages[i].width(), pages[i].height());
        draw_title_block(pages[i], {space.right, space.bottom}, block, words);
    }
}

}  // namespace seatload::sheet
