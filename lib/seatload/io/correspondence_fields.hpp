// SPDX-License-Identifier: MIT
#pragma once

#include <type_traits>

#include <seatload/demand/correspondence.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/fields.hpp>

namespace seatload::io {

/// The keys of a correspondence, which requirement and reply share.
template <class Fields, class Letter>
void visit_correspondence(Fields& f, Letter& letter) {
    std::optional<DateText> reply_by;
    if (!letter.reply_by.empty()) reply_by = DateText{letter.reply_by};
    f.field("reply_by", reply_by, kAny, "");
    if constexpr (!std::is_const_v<Letter>) letter.reply_by = reply_by ? reply_by->iso : std::string{};
    f.field("address", letter.address, kAny, "");
    f.field("contact", letter.contact, kAny, "");
    f.field("deliver_to", letter.deliver_to, kAny, "");
}

}  // namespace seatload::io
