// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/demand/load_band.hpp>
#include <seatload/demand/plunger.hpp>

namespace seatload::demand {

enum class LoadPlace { seated, full_travel };  ///< F1 or F2
enum class Bound { at_least, at_most };

/// One summand of a limit.
struct BudgetTerm {
    std::string symbol;  ///< "pL·A1"
    std::string words;   ///< "leak pressure on the seat"
    Force value;         ///< with its sign in the limit
    double share = 0.0;  ///< of the limit; the shares of all terms add up to 1 (0 when the limit is 0)
};

/// The value of an input at the corner that bites.
struct CornerValue {
    std::string symbol;  ///< "Ff"
    std::string words;   ///< "friction"
    std::string text;    ///< "0.3 N"
    bool is_range = false;
    bool is_high = false;  ///< the upper end of its range bites (of no meaning without a range)
};

/// One limit of a load: what it must be at least or at most for one thing to come about at every corner.
struct BudgetLimit {
    std::string_view id;     ///< "holds_leak", in JSON and tests
    std::string_view title;  ///< "stays shut against leak pressure"
    LoadPlace place = LoadPlace::seated;
    Bound bound = Bound::at_least;
    Force value;
    std::string formula;  ///< in the trade's symbols: "F1 ≥ (1+mh)·pL·A1 − Ff − pB·AB"
    std::string numbers;  ///< the same with numbers: "1.1 × 0.04 MPa × 49.27 mm² − 0.2 N"
    std::string where;    ///< what its symbols are made of, with numbers; may be empty
    std::vector<BudgetTerm> terms;
    std::vector<CornerValue> corner;
    std::string_view source;
    wire::Evidence evidence = wire::Evidence::given;  ///< the weakest of what was put in
    bool bites = false;                               ///< it makes an end of its band
};

/// What the oil does to the plunger with a certain pair of loads, over all corners.
struct PlungerBehaviour {
    std::string words;  ///< "least loads", "greatest loads", "spring given"
    SpringLoads loads;
    Interval<Stress> crack;         ///< leaves its seat
    Interval<Stress> fully_open;    ///< reaches full travel (not below crack)
    Interval<Stress> return_start;  ///< falling, leaves full travel
    Interval<Stress> reseat;        ///< falling, is home again; negative: it does not come home
    Interval<double> area_ratio;    ///< area that opens it over A1; more than the load ratio: it snaps open
    Interval<double> load_ratio;    ///< (F2 + resistance)/(F1 + resistance)
    Interval<double> least_share;   ///< eta_min: the share of pressure on the annulus with which it snaps
    Interval<double> blowdown;      ///< 1 - reseat/crack
    bool always_snaps = false;
    bool never_snaps = false;
    std::optional<Interval<Time>> cold_return;  ///< absent without a drain, or when it may never come home
};

/// Two limits that no load can keep at once.
struct Contradiction {
    std::string words;  ///< "no seated load can do both: ..."
    std::string ways_out;
    std::size_t lower = 0;  ///< in Budget::limits
    std::size_t upper = 0;
};

/// The hold-and-release budget of a plunger: the loads its spring may have.
struct Budget {
    LoadBand seated;  ///< as the limits make it
    LoadBand full_travel;
    LoadBand seated_rounded;       ///< rounded inwards, as a requirement states it
    LoadBand full_travel_rounded;  ///< a lower end that the seated load implies is left out
    std::vector<BudgetLimit> limits;
    std::vector<Contradiction> contradictions;      ///< none: some spring can do it
    std::vector<PlungerBehaviour> behaviours;       ///< at the ends of the bands, and of the spring given
    std::optional<Interval<Stress>> leak_pressure;  ///< given or worked out
    std::optional<Interval<Angle>> self_holding;    ///< flank half-angle up to which a side load cannot push it out

    bool is_possible() const { return contradictions.empty(); }
};

/// The budget of a plunger: every limit over all corners of its ranges, the bands they leave, what contradicts what,
/// and how the plunger then moves. Statics of the plunger, orifice and annular flow (textbook); inertia is left out.
Budget plunger_budget(const Plunger& plunger, const std::optional<SpringLoads>& spring = {});

/// A remark on the weakest number that was put in: "the weakest number put in is an estimate"; empty for numbers given.
std::string trust_words(wire::Evidence weakest);

/// Pressure that holds the plunger at a lift as it opens (friction against opening) [MPa], over all corners; lift 0 is
/// the seat, on which the oil sees A1, anything above sees A2 by the annulus share.
Interval<Stress> opening_pressure(const Plunger& plunger, const SpringLoads& loads, Length lift);

/// Pressure that holds the plunger at a lift as it returns (friction against returning) [MPa], over all corners.
Interval<Stress> closing_pressure(const Plunger& plunger, const SpringLoads& loads, Length lift);

}  // namespace seatload::demand
