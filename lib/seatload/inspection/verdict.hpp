// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace seatload::inspection {

/// What is said of a characteristic or of a whole lot.
enum class Verdict { accept, reject, not_proven };

constexpr std::string_view word(Verdict verdict) {
    switch (verdict) {
        case Verdict::accept:
            return "accept";
        case Verdict::reject:
            return "reject";
        case Verdict::not_proven:
            break;
    }
    return "not proven";
}

}  // namespace seatload::inspection
