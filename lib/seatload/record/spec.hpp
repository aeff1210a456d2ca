// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/demand/requirement.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::record {

/// The quantities the maker may alter to bring the loads in (EN 15800 compensation rule, from memory).
enum class Adjustable { free_length, coils_and_wire, coils_and_diameter };

/// A load at a length, as ordered: measured cold (20 deg C) and new.
struct LoadAtLength {
    Length length;
    Force nominal;
    Force plus;   ///< upper tolerance, a positive number
    Force minus;  ///< lower tolerance, a positive number
    /// Coarsest EN 15800 grade (1, 2, 3) whose load tolerance stays inside; absent: tighter than grade 1, to be agreed.
    std::optional<int> grade;
};

/// A spring to be ordered: what is required, what is reference, what the maker may adjust.
struct Spec {
    demand::Identity identity;
    std::vector<demand::Revision> revisions;  ///< the earliest first; the last is the identity's; may be empty
    std::string title;                        ///< "Compression spring, ahead latch plunger"
    std::string alternative;                  ///< "A", "B"...; empty when it stands alone
    std::string why;                          ///< why this alternative is offered (ours, never on the maker's sheet)

    std::string wire_grade;                ///< id in the catalogue
    std::optional<wire::Grade> own_grade;  ///< the wire itself, when it is not in the catalogue
    spring::Spring spring;
    bool bore_rules = true;  ///< De is the required diameter (works in a bore); false: Di (over a rod)

    LoadAtLength seated;             ///< F1 at L1
    LoadAtLength full_travel;        ///< F2 at L2
    demand::LoadBand seated_demand;  ///< what the mechanism needs (ours; the sheet states the ordered loads)
    demand::LoadBand full_travel_demand;
    int diameter_grade = 2;    ///< EN 15800 grade of De or Di
    int squareness_grade = 2;  ///< EN 15800 grade of e1 and e2 (ground ends)
    std::vector<Adjustable> adjustable{Adjustable::free_length, Adjustable::coils_and_wire};

    demand::Space space;
    demand::Duty duty;
    demand::Surroundings surroundings;
    demand::Limits limits;
    std::vector<int> quantities;
    std::string finish;
    std::optional<demand::Certificate> certificate;  ///< of the wire; absent: the usual kind
    std::vector<std::string> notes;
};

}  // namespace seatload::record
