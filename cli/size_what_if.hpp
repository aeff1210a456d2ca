// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/sizing/what_if.hpp>

namespace seatload::cli {

/// A requirement tried with several values of one number, and what came of it.
struct WhatIfView {
    std::string file;
    const demand::Requirement& requirement;
    const sizing::WhatIf& question;
    const std::vector<sizing::WhatIfRow>& rows;
};

/// For people: a table, one line a value, in lines of at most `width` columns where names leave room.
std::string what_if_text(const WhatIfView& view, int width);

/// The same for programs.
nlohmann::ordered_json what_if_json(const WhatIfView& view);

}  // namespace seatload::cli
