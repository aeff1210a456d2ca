// SPDX-License-Identifier: MIT
#include <elements/helix_mesh.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace seatload::test::elements {
namespace {

using std::numbers::pi;

/// A place on the wire's cross-section, along the normal and the binormal of the helix.
struct Place {
    double normal, binormal;
};

/// Corner nodes: 0..3 around the middle brick, 4..7 on the rim. The others stand halfway: 8..11 on the edges of the
/// middle brick, 12..15 on the spokes, 16..19 on the rim.
constexpr int kCorners = 8, kLayer = 20;

/// The bricks of a cross-section by their corners, turned one way, and the nodes halfway between them.
struct Quarter {
    std::array<int, 4> corner, halfway;
};
constexpr std::array<Quarter, 5> kQuarters{{
    {{0, 1, 2, 3}, {8, 9, 10, 11}},
    {{4, 5, 1, 0}, {16, 13, 8, 12}},
    {{5, 6, 2, 1}, {17, 14, 9, 13}},
    {{6, 7, 3, 2}, {18, 15, 10, 14}},
    {{7, 4, 0, 3}, {19, 12, 11, 15}},
}};

Place at(double radius, double quarters) {
    const double angle = 0.5 * pi * quarters;
    return {radius * std::cos(angle), radius * std::sin(angle)};
}

/// Radius of the rim's nodes for a wire of radius 1. A rim of four parabolas lies a little inside the circle through
/// its nodes; the polar second moment of one, r^2 (x dy - y dx)/4 summed along it, tells by how much they must stand
/// out.
double rim_radius() {
    constexpr int kSteps = 4000;
    const double half = std::sqrt(0.5);
    double moment = 0.0;
    for (int i = 0; i < kSteps; ++i) {
        const double t = -1.0 + (2.0 * i + 1.0) / kSteps;
        const double x = 1.0 - (1.0 - half) * t * t, y = half * t;
        const double dx = -2.0 * (1.0 - half) * t, dy = half;
        moment += (x * x + y * y) * (x * dy - y * dx) / 4.0 * (2.0 / kSteps);
    }
    return std::pow(0.5 * pi / (4.0 * moment), 0.25);
}

std::array<Place, kLayer> cross_section(double radius) {
    constexpr double kMiddle = 0.5;  // the middle brick's corners, as a share of the rim
    const double rim = radius * rim_radius();
    std::array<Place, kLayer> all{};
    for (int i = 0; i < 4; ++i) {
        const auto u = static_cast<std::size_t>(i);
        all[u] = at(kMiddle * rim, i);
        all[4 + u] = at(rim, i);
        all[8 + u] = at(kMiddle * rim * 0.82, i + 0.5);  // between straight (0.71) and round, so that bricks stay fair
        all[12 + u] = at(0.5 * (1.0 + kMiddle) * rim, i);
        all[16 + u] = at(rim, i + 0.5);
    }
    return all;
}

Point on_helix(const ActiveCoils& coils, double turns, const Place& place) {
    const double angle = 2.0 * pi * turns, radius = 0.5 * coils.D_mm;
    const double climb = std::atan2(coils.pitch_mm, pi * coils.D_mm);
    const double out = radius + place.normal;
    const double back = place.binormal * std::sin(climb);
    return {out * std::cos(angle) - back * std::sin(angle), out * std::sin(angle) + back * std::cos(angle),
            coils.pitch_mm * turns - place.binormal * std::cos(climb)};
}

/// Numbers of the nodes: whole layers of 20 nodes with layers of the 8 corners between them.
int node(int segment, bool halfway, int place) {
    return segment * (kLayer + kCorners) + (halfway ? kLayer : 0) + place + 1;
}

std::array<int, 20> brick(int segment, const Quarter& q) {
    std::array<int, 20> all{};
    for (std::size_t i = 0; i < 4; ++i) {
        all[i] = node(segment, false, q.corner[i]);
        all[4 + i] = node(segment + 1, false, q.corner[i]);
        all[8 + i] = node(segment, false, q.halfway[i]);
        all[12 + i] = node(segment + 1, false, q.halfway[i]);
        all[16 + i] = node(segment, true, q.corner[i]);
    }
    return all;
}

std::vector<int> face(int segment) {
    std::vector<int> all(kLayer);
    for (int i = 0; i < kLayer; ++i) all[static_cast<std::size_t>(i)] = node(segment, false, i);
    return all;
}

}  // namespace

HelixMesh helix_mesh(const ActiveCoils& coils, int bricks_a_turn) {
    const int segments = std::max(4, static_cast<int>(std::lround(coils.n * bricks_a_turn)));
    const auto section = cross_section(0.5 * coils.d_mm);
    HelixMesh mesh;
    for (int s = 0; s <= segments; ++s) {
        for (const Place& p : section) mesh.nodes.push_back(on_helix(coils, coils.n * s / segments, p));
        mesh.centreline.push_back({node(s, false, 0), node(s, false, 2)});
        if (s == segments) break;
        for (int i = 0; i < kCorners; ++i)
            mesh.nodes.push_back(on_helix(coils, coils.n * (s + 0.5) / segments, section[static_cast<std::size_t>(i)]));
        for (const Quarter& q : kQuarters) mesh.bricks.push_back(brick(s, q));
    }
    mesh.foot = face(0);
    mesh.head = face(segments);
    return mesh;
}

}  // namespace seatload::test::elements
