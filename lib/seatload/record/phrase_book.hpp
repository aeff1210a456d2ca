// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <string>

namespace seatload::record {

/// What papers say in one language: phrases by key ("figure.scale"). A phrase may hold blanks to be filled in
/// ("scale {scale}") and indices ("L_0", "n_t": what follows the underscore is set as a subscript).
struct PhraseBook {
    std::string language;  ///< ISO 639-1: "en"
    std::map<std::string, std::string, std::less<>> phrases;
};

}  // namespace seatload::record
