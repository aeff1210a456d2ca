// SPDX-License-Identifier: MIT
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {
namespace {

Path corners(const Box& box) {
    return {{box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}};
}

}  // namespace

void Drawing::add(Item item) { items_.push_back(std::move(item)); }

void Drawing::box(const Box& box, LineKind kind) { add(Line{corners(box), kind, true}); }

void Drawing::fill(const Box& box, double grey) { add(Area{corners(box), grey}); }

}  // namespace seatload::sheet
