// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::cli {

/// A reply and the file it came in.
struct ReplyView {
    std::string file;
    const record::Reply& reply;
};

/// For people, in lines of at most `width` columns.
std::string reply_text(const ReplyView& view, int width);

/// For programs: amounts are texts, so that they stay exact; what was not answered is null.
nlohmann::ordered_json reply_json(const ReplyView& view);

}  // namespace seatload::cli
