// SPDX-License-Identifier: MIT
#include <seatload/sheet/flow_facts.hpp>

#include <utility>

namespace seatload::sheet {

void add_facts(PageFlow& flow, std::vector<Fact> facts, double heading_width) {
    for (Fact& fact : facts) {
        const FactLines lines{{std::move(fact)}, flow.width(), heading_width};
        const auto room = flow.room(height(lines));
        draw(room.drawing, {room.box.left, room.box.top}, lines);
    }
}

}  // namespace seatload::sheet
