// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>

namespace seatload::spring {

/// Stress amplitude and mean at which spring steel lasts without limit.
template <class S>
struct EnduranceStress {
    S amplitude;  ///< Ssa
    S mean;       ///< Ssm
};

/// Zimmerli's values [MPa], steel wire below 10 mm whatever its size and strength: 35 and 55 kpsi as wound, 57.5 and
/// 77.5 kpsi peened (Shigley Eq. 10-28, 10-29), converted exactly.
constexpr EnduranceStress<double> zimmerli_mpa(bool peened) {
    constexpr double kpsi = 6.894757293168361;  // 1000 lbf/in2 in MPa
    return peened ? EnduranceStress<double>{57.5 * kpsi, 77.5 * kpsi}
                  : EnduranceStress<double>{35.0 * kpsi, 55.0 * kpsi};
}

/// Ultimate strength in shear as a share of Rm. Shigley Eq. 10-30.
inline constexpr double kShearStrengthShare = 0.67;

/// Amplitude of a fully reversed load that lasts, by the straight (Goodman) line through the endurance point.
template <class S>
constexpr S goodman_endurance(const EnduranceStress<S>& point, const S& shear_strength) {
    const double used = point.mean / shear_strength;
    return point.amplitude / (1.0 - used);
}

/// The same by the Gerber parabola.
template <class S>
constexpr S gerber_endurance(const EnduranceStress<S>& point, const S& shear_strength) {
    const double used = point.mean / shear_strength;
    return point.amplitude / (1.0 - used * used);
}

/// Fatigue factor n_f by Goodman: 1/n_f = tau_a/Sse + tau_m/Ssu. Shigley ch. 6 and 10.
template <class S>
constexpr double goodman_factor(const S& amplitude, const S& mean, const EnduranceStress<S>& point,
                                const S& shear_strength) {
    const double reversed = amplitude / goodman_endurance(point, shear_strength);
    const double steady = mean / shear_strength;
    return 1.0 / (reversed + steady);
}

/// Amplitude Ssa* on the Gerber parabola along the load line r = tau_a/tau_m.
template <class S>
S gerber_amplitude(double load_line, const EnduranceStress<S>& point, const S& shear_strength) {
    const S reversed = gerber_endurance(point, shear_strength);
    const double q = reversed / shear_strength;
    const double t = 2.0 * q / load_line;
    return shear_strength * (load_line * load_line / (2.0 * q) * (std::sqrt(1.0 + t * t) - 1.0));
}

/// Fatigue factor n_f by Gerber along the load line. Shigley Table 6-7, ch. 10.
template <class S>
double gerber_factor(const S& amplitude, const S& mean, const EnduranceStress<S>& point, const S& shear_strength) {
    const double load_line = amplitude / mean;
    return gerber_amplitude(load_line, point, shear_strength) / amplitude;
}

/// Fatigue factor n_f by Sines: a steady torsional stress below yield does no harm, so Ssa/tau_a. Shigley ch. 10.
template <class S>
constexpr double sines_factor(const S& amplitude, const EnduranceStress<S>& point) {
    return point.amplitude / amplitude;
}

}  // namespace seatload::spring
