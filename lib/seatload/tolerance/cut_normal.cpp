// SPDX-License-Identifier: MIT
#include <seatload/tolerance/cut_normal.hpp>

#include <cmath>

namespace seatload::tolerance {
namespace {

/// The integral of exp(-x^2/2) from 0 to z, by its Taylor series, which at z <= 3 loses two digits at most.
double area(double z) {
    double term = z;
    double sum = z;
    for (int k = 1; std::abs(term) > 1e-18; ++k) {
        term *= -0.5 * z * z / k;
        sum += term / (2 * k + 1);
    }
    return sum;
}

/// z with area(z) = wanted: halving an interval needs sums and products alone, which are the same on every machine.
double at_area(double wanted, double from) {
    double low = from;
    double high = kDeviations;
    for (int i = 0; i < 60 && high - low > 1e-15; ++i) {
        const double middle = 0.5 * (low + high);
        (area(middle) < wanted ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

}  // namespace

CutNormal::CutNormal() {
    const double whole = area(kDeviations);
    double z = 0.0;
    for (std::uint32_t i = 0; i < kCells; ++i) {
        z = i == 0 ? 0.0 : at_area(whole * i / kCells, z);
        nodes_[i] = z / kDeviations;
    }
    nodes_[kCells] = 1.0;
}

const CutNormal& CutNormal::table() {
    static const CutNormal built;
    return built;
}

}  // namespace seatload::tolerance
