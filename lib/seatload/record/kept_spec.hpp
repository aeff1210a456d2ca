// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/record/history.hpp>
#include <seatload/record/spec.hpp>

namespace seatload::record {

/// A revision of a spec as the library keeps it: what is ordered, and what happened to it.
struct KeptSpec {
    Spec spec;
    std::string content;  ///< the bytes of the spec itself, without its states
    std::string sha256;   ///< of the content
    History history;
    bool has_foreign_states = false;  ///< what stands below the content is not, to the byte, the history as written

    State state() const { return state_of(history); }
    /// Whether the content is not the one that was frozen.
    bool is_altered() const {
        const auto frozen = frozen_sha256(history);
        return frozen && *frozen != sha256;
    }
};

}  // namespace seatload::record
