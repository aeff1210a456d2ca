// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/readings.hpp>
#include <seatload/inspection/characteristic.hpp>
#include <seatload/inspection/sampling_plan.hpp>

namespace seatload::inspection {

using Values = std::map<Kind, double>;  ///< in the unit of each kind

/// One piece of a lot, as measured.
struct Piece {
    std::string name;
    Values values;
    Values after;                               ///< measured again after it was heated or pressed solid
    std::map<Kind, bench::ScaleReading> shown;  ///< loads as the scale of a bench showed them, not yet worked out
};

/// By how many pieces the loads of a lot are judged.
struct PlanChoice {
    bool every_piece = false;
    Level level = Level::two;
    double aql = 1.0;  ///< per cent
    Severity severity = Severity::normal;
};

/// What was measured of a lot.
struct Samples {
    std::string name;
    std::string date;
    std::string maker;
    std::string number;  ///< of the part; empty: not said
    std::string revision;
    int lot_size = 0;
    std::optional<PlanChoice> plan;  ///< absent: every piece of a small lot, else what the sheet offers
    std::string fixture;
    Values expanded;                    ///< U (k = 2) of each kind that was measured
    std::map<Kind, std::string> basis;  ///< where a U comes from, when it was not stated in the file
    std::string treatment;              ///< "heat", "pressing solid": what lies between `values` and `after`
    std::string conditions;             ///< "24 h at 120 °C"
    std::vector<Piece> pieces;          ///< in the order of measuring
};

}  // namespace seatload::inspection
