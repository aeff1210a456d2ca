// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <utility>

#include <seatload/core/assert.hpp>
#include <seatload/core/diagnostic.hpp>

namespace seatload {

/// A value, or the reasons why there is none. Warnings may stand beside a value.
/// Member names follow std::expected, which C++20 does not have yet.
template <class T>
class Result {
  public:
    Result(T value, Diagnostics warnings = {}) : value_(std::move(value)), diagnostics_(std::move(warnings)) {}
    Result(Diagnostics errors) : diagnostics_(std::move(errors)) {}
    Result(Diagnostic error) : diagnostics_{std::move(error)} {}

    bool has_value() const { return value_.has_value(); }
    explicit operator bool() const { return has_value(); }

    const T& value() const& {
        SEATLOAD_ASSERT(value_.has_value());
        return *value_;
    }
    T&& value() && {
        SEATLOAD_ASSERT(value_.has_value());
        return std::move(*value_);
    }
    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }

    /// The errors, or the warnings that came with the value.
    const Diagnostics& error() const { return diagnostics_; }

  private:
    std::optional<T> value_;
    Diagnostics diagnostics_;
};

}  // namespace seatload
