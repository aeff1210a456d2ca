// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// Force of the plunger [N] at a travel; a table runs straight between its rows and is not extended beyond them.
/// Nothing when the travel is needed and not known, or outside the table.
std::optional<double> plunger_force_n(const Indicator& indicator, std::optional<Length> travel);

/// Force the spring carries [N]: (shown - tare) with masses times gravity, less what the plunger adds to the pan, or
/// more by what it relieves, above its force at taring. `gravity` in m/s2, plunger forces in N.
double force_from_scale(const ScaleReading& shown, const std::optional<ScaleReading>& tare, double gravity,
                        Bearing bearing, double plunger_n, double plunger_at_tare_n);

/// Rate [N/mm] that a bench of this load-path stiffness [N/mm] shows: 1/R_apparent = 1/R + 1/k.
double apparent_rate(double rate, double load_path_stiffness);

/// Errors that all readings of a session share; 0 is none.
struct CommonErrors {
    double span = 0.0;       ///< of the scale, share
    double gravity = 0.0;    ///< share
    double zero_n = 0.0;     ///< of the scale
    double plunger_n = 0.0;  ///< of the plunger's force
    double gauge_zero_mm = 0.0;
    double gauge_span = 0.0;      ///< share
    double indicator_span = 0.0;  ///< share
    double height_at_zero_mm = 0.0;
    double compliance_mm_n = 0.0;  ///< of the load path
};

/// One of them and its standard uncertainty.
struct CommonSource {
    std::string name;
    double CommonErrors::*error = nullptr;
    double standard = 0.0;
};

/// The sources of common errors of a session whose uncertainty is not zero.
std::vector<CommonSource> common_sources(const Readings& session);

/// Standard uncertainties of one reading alone.
struct OwnDoubt {
    double scale_step_n = 0.0;
    double linearity_n = 0.0;
    double height_step_mm = 0.0;
    double height_error_mm = 0.0;
};
OwnDoubt own_doubt(const Readings& session, const Reading& reading);

/// A reading as height of the spring and force on it.
struct Corrected {
    double stated_height_mm = 0.0;
    double height_mm = 0.0;
    double force_n = 0.0;
};

/// The reading corrected, as if the errors given were taken off too. Nothing when a number it needs is missing.
std::optional<Corrected> corrected(const Readings& session, const Reading& reading, const CommonErrors& errors = {});

}  // namespace seatload::bench
