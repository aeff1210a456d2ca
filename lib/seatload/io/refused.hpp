// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>

#include <seatload/core/diagnostic.hpp>
#include <seatload/units/parse.hpp>

namespace seatload::io {

/// What a form answers to a text it cannot take, as a whole.
template <class T>
units::Parsed<T> refused(DiagnosticId id, std::string message, std::string hint = {}) {
    return {std::nullopt, {id, std::move(message), std::move(hint), 0}};
}

}  // namespace seatload::io
