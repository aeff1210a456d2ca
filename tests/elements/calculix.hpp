// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <elements/helix_mesh.hpp>

namespace seatload::test::elements {

/// How the head of the spring is held while it is pressed; it never tilts or turns. The foot is held in every way.
enum class Head { slides, on_axis };

/// What is asked of the spring at a deflection of the head.
struct Stage {
    double deflection_mm = 0.0;
    bool wants_stability = false;
};

struct Sideways {
    double x_mm = 0.0, y_mm = 0.0;
    double length() const;
};

/// What came of it.
struct StageResult {
    double deflection_mm = 0.0;
    double load_n = 0.0;
    Sideways head;                  ///< how far the head has drifted
    std::vector<Sideways> coils;    ///< how far the middle of each coil has, taken over one turn
    std::optional<double> softest;  ///< lowest eigenvalue of the pressed spring, [1/s2]; negative past buckling
};

/// What CTest takes for "skipped" of these tests (SKIP_RETURN_CODE).
inline constexpr int kSkipped = 77;

/// Ends the test program with `kSkipped` and says so where the program `ccx` is not installed: Catch2 2.13 cannot skip.
void need_calculix();

/// Presses the spring through the stages, large displacements counted, and tells what came of each. Fewer results than
/// stages mean that the rest could not be reached; throws when not even the first one could.
std::vector<StageResult> press(const ActiveCoils& coils, Head head, const std::vector<Stage>& stages);

}  // namespace seatload::test::elements
