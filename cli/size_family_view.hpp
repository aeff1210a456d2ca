// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/sizing/near_wire.hpp>
#include <seatload/sizing/shared_conflict.hpp>
#include <seatload/sizing/shared_spring.hpp>

#include <cli/size_run.hpp>

namespace seatload::cli {

/// One of several requirements, searched.
struct FamilyMember {
    SizeRun run;
    std::optional<demand::Budget> contradicted;  ///< no spring can do what its plunger asks: it was not searched
    std::string name;                            ///< that tells it from the others: "ahead latch plunger"
    std::string stem;                            ///< of its papers
};

/// A spring for each requirement, of one wire; those not offered have no letter.
struct FamilyWire {
    std::string grade;
    Length diameter;
    sizing::Merit merit;  ///< the least of all
    std::vector<Offer> springs;
};

/// Pieces of each part ordered together, and their wire without waste.
struct FamilyLot {
    std::vector<int> pieces;
    Length wire_length;
    Mass mass;
};

/// What serves several requirements at once.
struct FamilyView {
    std::vector<FamilyMember> members;
    std::size_t wires_that_serve_all = 0;
    std::vector<FamilyWire> wires;             ///< the best of them
    std::optional<sizing::NearWire> near;      ///< when none does
    sizing::SharedCensus shared;               ///< left empty when nothing fits one of them
    std::optional<FamilyWire> shared_spring;   ///< one spring, as it is in each place
    std::vector<sizing::MemberRule> conflict;  ///< when there is none

    /// Something fits each of them.
    bool all_served() const;
};

/// Lots of the first quantity of each requirement together, of the second, and so on as far as each states one; a lot
/// of one piece each when one states none.
std::vector<FamilyLot> lots_of(const FamilyView& view, const std::vector<Offer>& springs);

/// What serves all, for people, in lines of at most `width` columns; what each requirement has of its own is told
/// before it.
std::string family_text(const FamilyView& view, int width);

/// For programs: each requirement as size_json() tells it, and what serves all.
nlohmann::ordered_json family_json(const FamilyView& view);

}  // namespace seatload::cli
