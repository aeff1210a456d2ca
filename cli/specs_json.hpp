// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <seatload/record/shelf.hpp>

namespace seatload::cli {

/// A kept revision in brief: what it is, its state, its spring and loads.
nlohmann::ordered_json revision_json(const record::Shelf& shelf, const record::KeptRevision& revision);

/// What happened to a revision, the earliest first.
nlohmann::ordered_json history_json(const record::History& history);

}  // namespace seatload::cli
