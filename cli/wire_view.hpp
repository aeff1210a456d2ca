// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/wire/catalogue.hpp>

namespace seatload::cli {

/// What of the catalogue is to be shown.
struct WireView {
    const wire::Catalogue& catalogue;
    const wire::Grade* grade = nullptr;  ///< null: all grades
    std::string series;                  ///< id of a series the catalogue has
    std::optional<Length> diameter;      ///< strengths at this diameter only
};

/// The view for people, in lines of at most `width` columns.
std::string wire_text(const WireView& view, int width);

/// The view for programs: JSON, keys with unit suffixes, numbers in full precision.
std::string wire_json(const WireView& view);

/// What must be said wherever load-loss guidance is shown.
inline constexpr const char* kLoadLossWarning =
    "Guidance of low confidence, to rank wires and to warn; no load may be stated on it.";

/// How a table's strength between two rows is read, in words.
std::string lookup_words(const wire::Grade& grade);

/// The bibliography entries that texts of the grade's provenance name in square brackets, in catalogue order.
std::vector<const wire::Source*> sources_of(const wire::Catalogue& catalogue, const wire::Grade& grade);

}  // namespace seatload::cli
