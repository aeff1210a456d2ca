// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/reply.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::record {

/// The wire a maker would wind from.
struct OfferedWire {
    wire::Grade grade;
    bool is_catalogued = true;         ///< as the catalogue has it; else its strength is the maker's
    std::vector<std::string> missing;  ///< what must be known before it can be judged; then `grade` is of no use
    std::vector<std::string> remarks;
};

/// The wire of an offer, what it leaves open being as on the sheet: a grade of the catalogue by its id, or by standard
/// and grade however written ("EN 10270-1 SH"), at the offered diameter. A strength from a certificate counts where it
/// is below that of the standard, or where the standard has none; one above it is passed over, since a later lot need
/// not reach it.
OfferedWire offered_wire(const HeldWire& held, const wire::Grade& on_sheet, Length diameter,
                         const wire::Catalogue& catalogue);

}  // namespace seatload::record
