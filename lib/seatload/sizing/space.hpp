// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/check/numbers.hpp>
#include <seatload/sizing/axis.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::sizing {

/// A wire that may be used, with the coil diameters tried for it.
struct WireOption {
    std::size_t grade = 0;  ///< index into Space::grades
    wire::StockSize size;
    check::WireNumbers numbers;
    Axis mean_diameters;
};

/// A grade left out before any spring is looked at, and why.
struct GradeLeftOut {
    std::string grade;
    std::string reason;
};

/// Every combination a requirement allows to be looked at: wire x mean diameter x ends x total coils x free length.
struct Space {
    check::DemandNumbers demand;
    std::vector<wire::Grade> grades;
    std::vector<WireOption> wires;
    std::vector<spring::Ends> ends;
    Axis total_coils;
    Axis free_lengths;
    std::vector<GradeLeftOut> left_out;

    /// The number of combinations.
    unsigned long long size() const;
    /// The number of lines: combinations of all but the free length.
    unsigned long long lines() const;
};

/// The space of a requirement. Grades are those it names, or all of the catalogue, or its own; wire sizes those it
/// names, or all in stock. Mean diameters run over what bore, rod and an index of 3 to 25 leave, unless the grid states
/// a range.
Space search_space(const demand::Requirement& requirement, const wire::Catalogue& catalogue);

}  // namespace seatload::sizing
