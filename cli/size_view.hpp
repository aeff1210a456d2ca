// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <seatload/check/evaluation.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sizing/held_seat.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/sizing/shortfall.hpp>
#include <seatload/sizing/spread.hpp>
#include <seatload/sizing/tight_limits.hpp>

namespace seatload::cli {

/// An alternative with all that is known of it.
struct Offer {
    sizing::Alternative alternative;
    check::Evaluation evaluation;
    record::Spec spec;
    std::optional<sizing::Outlook> outlook = {};  ///< what tolerances do to it
};

/// What a sizing run found.
struct SizeView {
    std::string file;
    const demand::Requirement& requirement;
    const sizing::Space& space;
    const sizing::Census& census;
    const std::vector<Offer>& offers;
    std::optional<sizing::HeldSeat> held_seat;      ///< when nothing fits, and would if the seat could not slide
    std::optional<sizing::Shortfall> shortfall;     ///< when nothing fits
    std::optional<sizing::TightLimits> tight = {};  ///< when little fits
    bool explains = true;                           ///< the columns are explained; once is enough for several
};

/// For people, in lines of at most `width` columns; `seconds` is the time the search took.
std::string size_text(const SizeView& view, double seconds, int width);

/// For programs; holds no time, so that equal inputs give equal bytes.
nlohmann::ordered_json size_json(const SizeView& view);

/// The same for a requirement whose plunger no spring can serve: nothing was looked at.
nlohmann::ordered_json contradicted_json(const std::string& file, const demand::Budget& budget);

}  // namespace seatload::cli
