// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>

#include <seatload/core/diagnostic.hpp>

namespace seatload::sheet {

/// A complaint about a paper, which has no place in a file: the one who read the file knows where its parts stood.
inline Diagnostic complaint(Severity severity, std::string message, std::string hint = {}) {
    Diagnostic out;
    out.severity = severity;
    out.message = std::move(message);
    out.hint = std::move(hint);
    return out;
}

inline Diagnostic error(std::string message, std::string hint = {}) {
    return complaint(Severity::error, std::move(message), std::move(hint));
}

}  // namespace seatload::sheet
