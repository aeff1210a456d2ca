// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/inspection/characteristic.hpp>
#include <seatload/inspection/samples.hpp>
#include <seatload/sheet/facts.hpp>

namespace seatload::sheet {

/// What measuring a load may be uncertain by, as the sheet prints it.
Amount allowed_uncertainty(const Facts& facts, const record::LoadAtLength& load);

/// A limit of squareness or parallelism as the sheet prints it.
Amount end_limit(const Facts& facts, Length limit);

/// The characteristics that a lot is inspected by, with the limits that the sheet prints: the numbers are read back
/// from its words, so that they are the same to the last digit. `facts` must be those of a metric paper in English.
std::vector<inspection::Characteristic> inspected(const Facts& facts);

/// The plan for loads when none is chosen: every piece where the sheet says so or the lot is small, else what it
/// offers.
inspection::PlanChoice usual_plan(const record::Spec& spec, int lot_size);

}  // namespace seatload::sheet
