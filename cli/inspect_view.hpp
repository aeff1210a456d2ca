// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/inspection/forecast.hpp>
#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/record/spec.hpp>

namespace seatload::cli {

/// What is shown of an inspected lot.
struct InspectView {
    std::string file;  ///< of the samples
    const record::Spec& spec;
    const std::string& spec_sha256;
    const inspection::LotInspection& lot;
    const std::optional<inspection::Forecast>& forecast;
};

/// For people, in lines of at most `width` columns.
std::string inspect_text(const InspectView& view, int width);

/// For programs: numbers in full precision, in the unit each characteristic names.
nlohmann::ordered_json inspect_json(const InspectView& view);

}  // namespace seatload::cli
