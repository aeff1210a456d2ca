// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/builtin.hpp>

namespace seatload::io {

/// The built-in catalogue, read once.
inline const wire::Catalogue& catalogue() {
    static const Result<wire::Catalogue> read = builtin_catalogue();
    return read.value();
}

/// "line:column message" of the first complaint, or an empty text.
inline std::string first(const Diagnostics& diagnostics) {
    if (diagnostics.empty()) return {};
    const Diagnostic& d = diagnostics.front();
    return std::to_string(d.place.line) + ':' + std::to_string(d.place.column) + ' ' + d.message;
}

/// A requirement with nothing but what must be there.
inline const std::string kLeast =
    "[space]\nseated_height = \"15 mm\"\nfull_travel_height = \"9 mm\"\n[load]\nseated = \"4.8 N .. 6.5 N\"\n";

}  // namespace seatload::io
