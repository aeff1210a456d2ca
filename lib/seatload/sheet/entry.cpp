// SPDX-License-Identifier: MIT
#include <seatload/sheet/entry.hpp>

#include <iterator>

#include <seatload/sheet/figures.hpp>

namespace seatload::sheet {

void append(Entries& to, Entries from) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

Paragraph required_paragraph(const std::string& words) { return {words, Status::required}; }

Named kept_or_adjusted(bool adjustable, std::string name, const std::string& value) {
    return adjustable ? Named{Status::adjustable, std::move(name), reference(value)}
                      : Named{Status::required, std::move(name), value};
}

}  // namespace seatload::sheet
