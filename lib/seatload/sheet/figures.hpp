// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include <seatload/record/spec.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/units/quantities.hpp>

// Numbers as papers print them: no needless zeros, tolerances with as many decimals as their nominal value.

namespace seatload::sheet {

/// The number with at most so many decimals, trailing zeros left out; decimal point.
std::string trimmed(double value, int most_decimals);

/// A length [mm] with at most three decimals; decimal point.
inline std::string number(Length length) { return trimmed(in_mm(length), 3); }

/// A length with its tolerance [mm], both with the same decimals (ISO 129-1): "8.45 ± 0.30"; decimal point.
std::string with_tolerance(Length nominal, Length plus_minus, int least_decimals = 0);

/// The number in the brackets of a reference value (ISO 129-1, auxiliary dimension).
inline std::string reference(const std::string& words) { return "(" + words + ")"; }

/// What papers measure in: a metric unit, and the unit that takes its place on a paper in inches.
enum class Unit { mm, newton, mpa, newton_per_mm, gram };

/// How many decimals of a number are written: so many at most, and zeros only up to the least.
struct Decimals {
    int most = 3;
    int least = 0;
};

/// Which way a value that has no exact short form is rounded: a bound must never be rounded outwards.
enum class Rounding { nearest, down, up };

/// A number as a paper shows it.
struct Amount {
    Unit unit = Unit::mm;
    std::string metric;
    std::string inch = {};  ///< empty on a metric paper
};

/// "mm".
std::string metric_name(Unit unit);

/// "8.45"; on a paper in inches "0.3327 [8.45]".
std::string shown(const Amount& amount);
/// "8.45 mm"; on a paper in inches "0.3327 in [8.45]".
std::string with_unit(const Amount& amount);
/// The number that comes first on the paper: "8.45" or "0.3327".
inline const std::string& first(const Amount& amount) { return amount.inch.empty() ? amount.metric : amount.inch; }
/// The number in the brackets of a reference value: "(8.45)" or "(0.3327 [8.45])".
std::string reference(const Amount& amount);
/// Two reference values under one unit: "(7.4); (6.6) mm".
std::string references_with_unit(const Amount& first, const Amount& second);
/// The metric decimals of the amount's number, or of its nominal value.
int decimals(const Amount& amount);

/// The least, nominal and largest value of a load with its tolerances, all with the same decimals.
struct LoadLimits {
    Amount least;
    Amount nominal;
    Amount most;
};

/// Writes numbers the way of a paper: its decimal mark, its units. Inches and the like get so many decimals that their
/// step is no smaller than the metric one, so that they do not promise more; but no length fewer than three. Limits,
/// and the size of a wire, are exact: their step is no larger than the metric one, and limits are rounded inwards, so
/// that a spring inside the limits in inches is inside the metric limits, which govern.
class Figures {
  public:
    explicit Figures(const Paper& paper);

    /// A number without a unit.
    std::string number(double value, Decimals decimals) const;

    /// A value [in the metric unit].
    Amount amount(Unit unit, double value, Decimals decimals, Rounding rounding = Rounding::nearest) const;
    Amount length(Length length, Decimals decimals = {}, Rounding rounding = Rounding::nearest) const;
    Amount stress(Stress stress) const;
    /// To so many significant digits.
    Amount significant(Unit unit, double value, int digits, Rounding rounding = Rounding::nearest) const;
    Amount force(Force force) const { return significant(Unit::newton, in_newton(force), 4); }
    Amount rate(Rate rate) const { return significant(Unit::newton_per_mm, in_newton_per_mm(rate), 4); }

    /// A wire diameter: two decimals of a millimetre, three when needed.
    Amount wire(Length diameter, int least_decimals = 2) const;
    /// Two wire diameters, with as many decimals, under one unit; `joined` puts them into words.
    std::string wires_with_unit(Length smallest, Length largest,
                                const std::function<std::string(const std::string&, const std::string&)>& joined) const;
    /// "8.45 ± 0.30"; as many decimals as either needs, or more.
    Amount toleranced(Length nominal, Length plus_minus, int least_decimals = 0) const;
    /// "4.80 ± 0.30" or "4.80 +0.50/−0.30".
    Amount toleranced(const record::LoadAtLength& load, int least_decimals = 0) const;
    LoadLimits limits(const record::LoadAtLength& load) const;

    /// "120 °C"; "20 ± 5 °C" with a tolerance.
    std::string temperature(Celsius temperature, double plus_minus = 0.0) const;

    /// "mm"; on a paper in inches "in [mm]".
    std::string unit(Unit unit) const;
    /// "mm" or "in": the unit of what comes first.
    std::string first_unit(Unit unit) const;

    bool has_inches() const { return units_ == Units::inch; }

  private:
    /// So many further decimals in inches than in metric, and no fewer than the least.
    struct InchDecimals {
        int further;
        int least;
    };
    Amount amount(Unit unit, double value, Decimals decimals, Rounding rounding, InchDecimals inch) const;
    std::string marked(std::string text) const;

    std::string mark_;
    Units units_;
};

/// Decimals needed to write a length with its tolerance exactly, at most three.
int length_decimals(Length nominal, Length plus_minus);

}  // namespace seatload::sheet
