// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/kept_spec.hpp>

namespace seatload::record {

/// What has become of a kept spec since it was approved, worked out anew.
struct Drift {
    std::vector<Moved> moved;           ///< key results that differ from those of the approval
    std::vector<std::string> causes;    ///< why, a sentence each
    std::vector<std::string> broken;    ///< limits of its own that it breaks today
    std::vector<std::string> unusable;  ///< why it cannot be worked out at all

    bool is_any() const { return !moved.empty() || !broken.empty() || !unusable.empty(); }
};

/// What has moved, and why: results are worked out again with the wire data of then, to tell what data did from what
/// formulas did. A spec that never was approved has broken limits only. Nothing is told of one that was edited since it
/// was frozen: what moves then are its own numbers, which says nothing of data and formulas.
Drift drift_of(const KeptSpec& kept, const wire::Grade& grade, const tolerance::Tables& tables,
               const std::string& program);

}  // namespace seatload::record
