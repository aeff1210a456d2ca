// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

namespace seatload {

/// Puts copies of the elements of `more` behind those of `all`.
template <class T>
void append(std::vector<T>& all, const std::vector<T>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

}  // namespace seatload
