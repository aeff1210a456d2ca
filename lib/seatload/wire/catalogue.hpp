// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/wire/grade.hpp>

namespace seatload::wire {

/// A stock diameter with the name it is ordered by.
struct StockSize {
    Length diameter;
    std::string name;  ///< "0.80 mm", "gauge 32 (0.090 in)"
};

/// A named series of stock diameters, rising.
struct StockSeries {
    std::string id;     ///< "metric", "music-wire", "washburn-moen"
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

/// All grades and stock series known: those built in, with a user's additions laid over.
struct Catalogue {
    std::vector<Grade> grades;
    std::vector<StockSeries> series;
    std::vector<StockHolding> holdings;  ///< empty: anything in the series can be had

    /// The grade with this id, or null. Case is ignored.
    const Grade* find(std::string_view id) const;
    /// The ids of all grades, in catalogue order.
    std::vector<std::string> ids() const;
    const StockSeries* find_series(std::string_view id) const;
};

/// Rising stock diameters [mm] in which the grade has a strength, from the given series (or the holdings for that grade,
/// when the catalogue has any; a grade without a holding then has none).
std::vector<StockSize> stock_sizes(const Catalogue& catalogue, const Grade& grade, std::string_view series);

}  // namespace seatload::wire
