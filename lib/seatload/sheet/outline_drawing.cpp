// SPDX-License-Identifier: MIT
#include <seatload/sheet/outline_drawing.hpp>

namespace seatload::sheet {
namespace {

constexpr double kThinnestWithWideEdges = 2.0;

Path placed(Path path, Point origin, double scale) {
    for (Point& p : path) p = origin + scale * p;
    return path;
}

}  // namespace

LineKind outline_kind(double wire_on_paper) {
    return wire_on_paper < kThinnestWithWideEdges ? LineKind::narrow : LineKind::wide;
}

void draw_view(Drawing& drawing, const std::vector<ViewPiece>& pieces, Point origin, double scale, LineKind kind) {
    for (const ViewPiece& piece : pieces) {
        if (piece.fill.size() > 2) drawing.add(Area{placed(piece.fill, origin, scale), 1.0});
        for (const Path& edge : piece.edges)
            if (edge.size() > 1) drawing.add(Line{placed(edge, origin, scale), kind});
    }
}

}  // namespace seatload::sheet
