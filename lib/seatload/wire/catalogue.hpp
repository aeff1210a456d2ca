// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/wire/grade.hpp>

namespace seatload::wire {

/// A stock diameter with the name it is ordered by.
struct StockSize {
    Length diameter;
    std::string name;                        ///< "0.80 mm", "MW 32 (0.090 in)"
    Evidence evidence = Evidence::standard;  ///< that wire is sold in this size
};

/// A named series of stock diameters, rising.
struct StockSeries {
    std::string id;  ///< "metric", "music-wire", "washburn-moen"
    std::string title;
    std::vector<StockSize> sizes;
    std::string source;
    Evidence evidence = Evidence::standard;
};

/// What a particular winder holds, when a user's file restricts it.
struct StockHolding {
    std::string grade;
    std::vector<Length> diameters;
};

/// A diameter tolerance table that grades name.
struct ToleranceTable {
    std::string id;  ///< "EN 10270-1"
    std::string source;
    std::vector<ToleranceRow> rows;
};

/// An entry of the bibliography; texts of provenance name its key in square brackets.
struct Source {
    std::string key;
    std::string kind;
    std::string title;
};

/// All grades and stock series known: those built in, with a user's additions laid over.
struct Catalogue {
    std::vector<Grade> grades;
    std::vector<StockSeries> series;
    std::vector<StockHolding> holdings;  ///< empty: anything in the series can be had
    std::vector<ToleranceTable> tolerance_tables;
    std::vector<LoadLossGuide> load_loss_guides;
    std::vector<StressRelief> stress_reliefs;
    std::vector<Source> sources;

    /// The grade with this id, or null. Case is ignored.
    const Grade* find(std::string_view id) const;
    /// The ids of all grades, in catalogue order.
    std::vector<std::string> ids() const;
    /// What was probably meant by an id that is not known: those that contain it, the nearest, or those whose
    /// description has its words ("music wire"); empty when nothing is near, or too much.
    std::string suggestion(std::string_view unknown_id) const;
    /// The series with this id, or null. Case is ignored.
    const StockSeries* find_series(std::string_view id) const;
    /// The ids of all series, in catalogue order.
    std::vector<std::string> series_ids() const;
};

/// Rising stock diameters [mm] in which the grade has a strength, from the given series (or the holdings for that
/// grade, when the catalogue has any; a grade without a holding then has none). None when there is no such series.
std::vector<StockSize> stock_sizes(const Catalogue& catalogue, const Grade& grade, std::string_view series);

}  // namespace seatload::wire
