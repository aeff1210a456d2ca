// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sheet/fact_lines.hpp>
#include <seatload/sheet/page_flow.hpp>

namespace seatload::sheet {

/// Writes facts one under the other, over the whole width of the page, each whole on the page it comes to lie on;
/// headings take so much of the width [mm].
void add_facts(PageFlow& flow, std::vector<Fact> facts, double heading_width);

}  // namespace seatload::sheet
